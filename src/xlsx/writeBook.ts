import type {
  AutoFilter,
  Cell,
  CellValue,
  DataValidation,
  HeaderFooter,
  NamedRange,
  PageSetup,
  PaperSize,
  WriteSheet,
} from "hucre";
import { rangeRef, writeXlsx } from "hucre/xlsx";
import type { Book, BookCell, BookSheet, Filter, InputRule, Print } from "./book.ts";
import { placeOf, storedIn } from "./carry/inputRules.ts";
import { rgb, styleOf } from "./fileLook.ts";
import { POINT_PIXELS, WIDTH_PIXELS } from "./fileUnits.ts";
import { propertiesOf } from "./keptTexts.ts";
import { sheetPrefix } from "./sheetPrefix.ts";
import { storedFormula } from "./storedFormula.ts";

// Nothing is told about when and where a file was made, so the same book gives the same bytes.
const NO_DAY = new Date(Date.UTC(2000, 0, 1));

/** The book as the bytes of an .xlsx file. */
export function writeBook({ title, sheets, names = [], kept = {} }: Book): Promise<Uint8Array> {
  return writeXlsx({
    sheets: sheets.map(sheetOf),
    namedRanges: [
      ...names.map(({ name, formula }) => ({ name, range: storedFormula(formula) })),
      ...sheets.flatMap(({ name, print }) => printNames(name, print)),
    ],
    properties: { title, created: NO_DAY, modified: NO_DAY, custom: propertiesOf(kept) },
    // The spilled table's first sheet may be hidden; a file opens on one that is seen.
    activeSheet: Math.max(
      0,
      sheets.findIndex(({ hidden }) => !hidden),
    ),
  });
}

function sheetOf(sheet: BookSheet): WriteSheet {
  const cells = new Map<string, Partial<Cell>>();
  sheet.rows.forEach((row, i) => row.forEach((cell, j) => cell && cells.set(`${i},${j}`, cellOf(cell, i, j))));
  for (const { row, column, text } of sheet.notes ?? [])
    cells.set(`${row},${column}`, { value: null, ...cells.get(`${row},${column}`), comment: { text } });
  for (const { row, column, to } of sheet.links ?? [])
    cells.set(`${row},${column}`, { value: null, ...cells.get(`${row},${column}`), hyperlink: { target: to } });
  const { columns, heights, merges, frozenRows = 0, frozenColumns = 0, hidden, print, tab } = sheet;
  return {
    name: sheet.name,
    rows: [],
    cells,
    ...(columns && {
      columns: columns.map((line) => ({
        ...(line?.size !== undefined && { width: line.size / WIDTH_PIXELS }),
        ...(line?.hidden && { hidden: true }),
      })),
    }),
    ...(heights && {
      rowDefs: new Map(
        [...heights].map(([row, line]) => [
          row,
          {
            ...(line.size !== undefined && { height: line.size / POINT_PIXELS }),
            ...(line.hidden && { hidden: true }),
          },
        ]),
      ),
    }),
    ...(merges && {
      merges: merges.map((m) => ({
        startRow: m.row,
        startCol: m.column,
        endRow: m.row + m.rows - 1,
        endCol: m.column + m.columns - 1,
      })),
    }),
    ...(frozenRows + frozenColumns > 0 && { freezePane: { rows: frozenRows, columns: frozenColumns } }),
    ...(sheet.filters?.[0] && { autoFilter: filterOf(sheet.filters[0]) }),
    ...(sheet.inputRules && { dataValidations: sheet.inputRules.flatMap(validationsOf) }),
    ...(hidden && { hidden }),
    ...(tab && { view: { tabColor: rgb(tab) } }),
    ...(print && {
      pageSetup: pageOf(print),
      ...((print.header || print.footer) && { headerFooter: marginTexts(print) }),
    }),
  };
}

/** What a new file can have of a filter: its cells, and the values that it lets through. */
function filterOf({ area, columns }: Filter): AutoFilter {
  return {
    range: placeOf(area),
    columns: columns.flatMap(({ column, values }) =>
      values ? [{ colIndex: column - area.column, filters: [...values] }] : [],
    ),
  };
}

function cellOf({ value, formula, spill, look }: BookCell, row: number, column: number): Partial<Cell> {
  const style = look && styleOf(look);
  if (formula === undefined) return { value, ...(style && { style }) };
  const area =
    spill && spill.rows * spill.columns > 1
      ? {
          formulaType: "array" as const,
          formulaDynamic: true,
          formulaRef: rangeRef(row, column, row + spill.rows - 1, column + spill.columns - 1),
        }
      : {};
  return {
    formula: storedFormula(formula),
    ...(value !== null && { formulaResult: value as CellValue }),
    ...area,
    ...(style && { style }),
  };
}

function validationsOf({ areas, kind, operator, first, second, blank, error, hint }: InputRule): DataValidation[] {
  return areas.map((area) => ({
    type: kind,
    range: placeOf(area),
    ...(operator && { operator: operator as NonNullable<DataValidation["operator"]> }),
    ...(first !== undefined && { formula1: storedIn(kind, first) }),
    ...(second !== undefined && { formula2: storedIn(kind, second) }),
    allowBlank: blank ?? false,
    showErrorMessage: error !== undefined,
    ...(error && { errorStyle: error.style, errorTitle: error.title ?? "", errorMessage: error.text ?? "" }),
    ...(hint && { showInputMessage: true, inputTitle: hint.title ?? "", inputMessage: hint.text ?? "" }),
  }));
}

function pageOf({ landscape, paper, fit }: Print): PageSetup {
  return {
    orientation: landscape ? "landscape" : "portrait",
    ...(paper && { paperSize: paper as PaperSize }),
    ...(fit && { fitToPage: true, fitToWidth: fit.across, fitToHeight: fit.down }),
  };
}

function marginTexts({ header, footer }: Print): HeaderFooter {
  return { ...(header && { oddHeader: header }), ...(footer && { oddFooter: footer }) };
}

// Written as names: the writer's own setting leaves the sheet's name unquoted, and a file with a blank in it is broken then.
function printNames(sheet: string, print: Print | undefined): NamedRange[] {
  const there = sheetPrefix(sheet);
  return [
    ...(print?.area ? [{ name: "_xlnm.Print_Area", range: there + print.area, scope: sheet }] : []),
    ...(print?.titleRows ? [{ name: "_xlnm.Print_Titles", range: there + print.titleRows, scope: sheet }] : []),
  ];
}
