import type { ICellData, IRange, Nullable, Worksheet } from "@univerjs/core";
import { BooleanNumber } from "@univerjs/core";
import { ERROR_TYPE_SET, FormulaDataModel } from "@univerjs/engine-formula";
import type { Book, BookCell, BookSheet, Line, Look } from "../../xlsx/book.ts";
import { areaOf } from "./areas.ts";
import { cells } from "./cells.ts";
import type { EmbeddedSheet } from "./runningSheet.ts";
import { keptIn } from "./workbookTexts.ts";
import { originOf } from "./followedLines.ts";
import { liveParts } from "./live/liveParts.ts";
import { lookOf } from "./lookStyle.ts";
import { knownNames } from "./names.ts";
import { isOwnName, printOf } from "./printSetup.ts";

/** The sheets as they stand, as a book; what a book has no place for is named in `left`. Everything has been calculated before. */
export function bookOf(sheet: EmbeddedSheet, title: string): { readonly book: Book; readonly left: readonly string[] } {
  const left = new Set<string>();
  const sheets = sheet.workbook
    .getWorkbook()
    .getSheets()
    .map((worksheet) => sheetOf(sheet, worksheet, left));
  const { all, ofBook } = knownNames(sheet);
  if (all.filter(isOwnName).length > ofBook.filter(isOwnName).length) left.add("names that one sheet has for itself");
  const kept = keptIn(sheet.workbook.getWorkbook());
  return {
    book: { title, sheets, ...(ofBook.length > 0 && { names: ofBook }), ...(Object.keys(kept).length > 0 && { kept }) },
    left: [...left],
  };
}

function sheetOf(sheet: EmbeddedSheet, worksheet: Worksheet, left: Set<string>): BookSheet {
  const { freeze, mergeData, columnData, rowData, tabColor } = worksheet.getConfig();
  const columns = linesOf(columnData, "w");
  const heights = new Map(linesOf(rowData, "h").flatMap((line, row) => (line ? [[row, line] as const] : [])));
  const print = printOf(sheet, worksheet);
  const from = originOf(worksheet);
  const live = liveParts(sheet);
  const inputRules = live.inputRules?.of(worksheet, left) ?? [];
  const valueRules = live.valueRules?.of(worksheet, left) ?? [];
  const notes = live.notes?.of(worksheet, left) ?? [];
  const links = live.links?.of(worksheet, left) ?? [];
  const filters = live.filters?.of(worksheet, left) ?? [];
  for (const { area } of filters)
    for (let row = area.row + 1; row < area.row + area.rows; row++)
      if (worksheet.getRowFiltered(row)) heights.set(row, { ...heights.get(row), hidden: true });
  return {
    name: worksheet.getName(),
    rows: rowsOf(sheet, worksheet, left),
    ...(columns.length > 0 && { columns }),
    ...(heights.size > 0 && { heights }),
    ...(mergeData.length > 0 && { merges: mergeData.map(areaOf) }),
    ...(freeze.ySplit > 0 && { frozenRows: freeze.ySplit }),
    ...(freeze.xSplit > 0 && { frozenColumns: freeze.xSplit }),
    ...(worksheet.isSheetHidden() === BooleanNumber.TRUE && { hidden: true }),
    ...(tabColor && { tab: tabColor }),
    ...(print && { print }),
    ...(inputRules.length > 0 && { inputRules }),
    ...(valueRules.length > 0 && { valueRules }),
    ...(notes.length > 0 && { notes }),
    ...(links.length > 0 && { links }),
    ...(filters.length > 0 && { filters }),
    ...(from && { from }),
  };
}

type Lines = Record<number, { w?: number; h?: number; ia?: BooleanNumber; hd?: BooleanNumber } | undefined>;

/** Widths or heights that are not as usual. A height that the sheet chose for itself is left to whoever opens the file. */
function linesOf(data: unknown, size: "w" | "h"): (Line | null)[] {
  const lines: (Line | null)[] = [];
  for (const [key, one] of Object.entries((data ?? {}) as Lines)) {
    const own = size === "h" && one?.ia !== BooleanNumber.FALSE ? undefined : one?.[size];
    const hidden = one?.hd === BooleanNumber.TRUE;
    if (own !== undefined || hidden)
      lines[Number(key)] = { ...(own !== undefined && { size: own }), ...(hidden && { hidden }) };
  }
  return Array.from(lines, (line) => line ?? null);
}

function rowsOf(sheet: EmbeddedSheet, worksheet: Worksheet, left: Set<string>): (BookCell | null)[][] {
  const { univer, workbook } = sheet;
  const at = cells(sheet, worksheet);
  const styles = workbook.getWorkbook().getStyles();
  const model = univer.__getInjector().get(FormulaDataModel);
  const spills = (model.getArrayFormulaRange()[workbook.getId()]?.[worksheet.getSheetId()] ?? {}) as Record<
    number,
    Record<number, IRange | null> | null
  >;
  const matrix = worksheet.getCellMatrix();
  const rows: (BookCell | null)[][] = [];
  const ranges = Object.values(spills).flatMap((columns) =>
    Object.values(columns ?? {}).filter((range): range is IRange => range !== null),
  );
  const byRow: IRange[][] = [];
  for (const range of ranges)
    for (let row = range.startRow; row <= range.endRow; row++) (byRow[row] ??= []).push(range);
  const spilledAt = (row: number, column: number) =>
    byRow[row]?.some(({ startColumn, endColumn }) => column >= startColumn && column <= endColumn) ?? false;
  // Most cells share a few styles.
  const looks = new Map<string, Look | null>();
  const lookAt = (cell: Nullable<ICellData>) => {
    const style = cell?.s;
    if (!style) return null;
    if (typeof style !== "string") return lookOf(styles.getStyleByCell(cell), left);
    const known = looks.get(style);
    if (known !== undefined) return known;
    const look = lookOf(styles.getStyleByCell(cell), left);
    looks.set(style, look);
    return look;
  };
  const put = (row: number, column: number, cell: Nullable<ICellData>) => {
    // A text with a link has one format for all of it.
    if ((cell?.p?.body?.textRuns?.length ?? 0) > (cell?.p?.body?.customRanges?.length ? 1 : 0))
      left.add("formats of single words in a cell");
    const { formula, value } = at.at(row, column, cell);
    const look = lookAt(cell);
    const range = spills[row]?.[column];
    if (formula === null && value === "" && !look) return;
    if (formula === null && typeof value === "string" && ERROR_TYPE_SET.has(value as never) && cell?.v === value)
      left.add("errors typed as text (they become errors)");
    (rows[row] ??= [])[column] = {
      // A formula's empty text is a result like any other.
      value: value === "" && formula === null ? null : value,
      ...(formula !== null && { formula }),
      ...(formula !== null &&
        range && {
          spill: { rows: range.endRow - range.startRow + 1, columns: range.endColumn - range.startColumn + 1 },
        }),
      ...(formula === null && value !== "" && spilledAt(row, column) && { spilled: true as const }),
      ...(look && { look }),
    };
  };
  matrix.forValue(put);
  // Cells that only a spill fills have no place in the matrix.
  for (const range of ranges)
    for (let row = range.startRow; row <= range.endRow; row++)
      for (let column = range.startColumn; column <= range.endColumn; column++)
        put(row, column, matrix.getValue(row, column));
  return Array.from(rows, (row) => Array.from(row ?? [], (cell) => cell ?? null));
}
