import type { ICellData, IColumnData, IRowData, IStyleData, IWorksheetData } from "@univerjs/core";
import { BooleanNumber, CellValueType, generateRandomId } from "@univerjs/core";
import type { BookCell, BookSheet, Rectangle } from "../../xlsx/book.ts";
import { rowsFilteredOut } from "../../xlsx/filteredRows.ts";
import { rangeOf } from "./areas.ts";
import { columnMarks, originMark, rowMarks } from "./followedLines.ts";
import { linkText } from "./linkText.ts";
import type { LiveParts } from "./live/livePart.ts";
import { styleOf } from "./lookStyle.ts";

/** What of a book's sheet the embedded sheet keeps for the file only. */
export const PRINT_KEY = "longpoint:print";

// An opened sheet has room to go on.
const LEAST_ROWS = 200;
const LEAST_COLUMNS = 26;
const SPARE = 20;

/** A book's sheet as the embedded sheet's own data. Formulas come without their results: the sheet calculates them. */
export function sheetData(sheet: BookSheet, live: Readonly<LiveParts> = {}): Partial<IWorksheetData> & { id: string } {
  const {
    name,
    rows,
    columns = [],
    heights,
    merges = [],
    frozenRows = 0,
    frozenColumns = 0,
    hidden,
    print,
    tab,
    from,
    links = [],
  } = sheet;
  const id = generateRandomId();
  const cellData: Record<number, Record<number, ICellData>> = {};
  rows.forEach((row, i) => row.forEach((cell, j) => cell && ((cellData[i] ??= {})[j] = dataOf(cell, id))));
  for (const { row, column, to } of live.links ? links : []) {
    const cell = cellData[row]?.[column];
    if (typeof cell?.v === "string") cell.p = linkText(cell.v, to, (cell.s ?? {}) as IStyleData);
  }
  const last = (of: (merge: Rectangle) => number) => merges.reduce((most, merge) => Math.max(most, of(merge)), 0);
  const rowCount = Math.max(
    LEAST_ROWS,
    rows.length + SPARE,
    last((m) => m.row + m.rows),
  );
  const columnCount = Math.max(
    LEAST_COLUMNS,
    columns.length,
    last((m) => m.column + m.columns),
    rows.reduce((most, row) => Math.max(most, row.length + 2), 0),
  );
  const origin = from && { ...from, marked: from.marked ?? { rows: rowCount, columns: columnCount } };
  const columnData = columnMarks(origin) as Record<number, IColumnData>;
  columns.forEach((line, i) => {
    if (line)
      columnData[i] = {
        ...columnData[i],
        ...(line.size !== undefined && { w: line.size }),
        ...(line.hidden && { hd: BooleanNumber.TRUE }),
      };
  });
  const filteredOut = new Set(live.filters ? rowsFilteredOut(sheet) : []);
  const rowData = rowMarks(origin) as Record<number, IRowData>;
  for (const [i, line] of heights ?? [])
    rowData[i] = {
      ...rowData[i],
      ...(line.size !== undefined && { h: line.size, ia: BooleanNumber.FALSE }),
      ...(line.hidden && !filteredOut.has(i) && { hd: BooleanNumber.TRUE }),
    };
  return {
    id,
    name,
    cellData,
    rowCount,
    columnCount,
    columnData,
    rowData,
    mergeData: merges.map(rangeOf),
    hidden: hidden ? BooleanNumber.TRUE : BooleanNumber.FALSE,
    ...(frozenRows + frozenColumns > 0 && {
      freeze: {
        xSplit: frozenColumns,
        ySplit: frozenRows,
        startRow: frozenRows || -1,
        startColumn: frozenColumns || -1,
      },
    }),
    ...(tab && { tabColor: tab }),
    ...((print || origin) && {
      custom: { ...(print && { [PRINT_KEY]: print }), ...(origin && originMark(origin, id)) },
    }),
  };
}

function dataOf({ value, formula, shared, spilled, look }: BookCell, sheet: string): ICellData {
  const s = look ? { s: styleOf(look) } : {};
  // A shared formula's id is its sheet's own; a second opened file must not meet it.
  const si = shared === undefined ? {} : { si: `${sheet}/${shared}` };
  if (formula !== undefined || shared !== undefined)
    return { ...(formula !== undefined && { f: formula }), ...si, ...s };
  // A value of its own would stand in the spill's way.
  if (value === null || spilled) return s;
  if (typeof value === "boolean") return { v: value ? 1 : 0, t: CellValueType.BOOLEAN, ...s };
  return { v: value, t: typeof value === "number" ? CellValueType.NUMBER : CellValueType.STRING, ...s };
}
