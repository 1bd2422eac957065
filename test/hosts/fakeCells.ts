import type { FakeBook } from "./fakeBook.ts";
import { excelError, type FakeCell, type FakeSheet } from "./fakeSheet.ts";

/** An area of one sheet. */
export type Place = { row: number; column: number; rows: number; columns: number };

/** Refuses a write that Excel would. */
export function refuseLocked(app: FakeBook, sheet: FakeSheet): void {
  if (sheet.isProtected || app.broken(sheet.name)) throw excelError("AccessDenied", sheet.name);
}

/** No fill reads as white with the pattern None. */
export function looksOf({ bold, italic, size, color, fill }: FakeCell): unknown {
  return {
    format: {
      font: { bold, italic, size, color },
      fill: fill ? { color: fill, pattern: "Solid" } : { color: "#FFFFFF", pattern: "None" },
    },
  };
}

/** An entity reads as an error that nobody typed (`basicType` and `basicValue` of Excel.EntityCellValue and its like). */
export function valueOf({ value, rich }: FakeCell): FakeCell["value"] {
  return rich === "Error" ? "#VALUE!" : value;
}

/** A cell without a formula gives its value instead. */
export function formulaOf(app: FakeBook, sheet: FakeSheet, row: number, column: number): FakeCell["formula"] {
  const cell = sheet.peek(row, column);
  const { anchor } = cell;
  if (!anchor || (anchor.row === row && anchor.column === column)) return cell.rich ? valueOf(cell) : cell.formula;
  return app.spilledFormulas === "parent" ? sheet.peek(anchor.row, anchor.column).formula : cell.value;
}

/** The type that Excel gives for a cell. */
export function typeOf({ value, isError, rich }: FakeCell): string {
  if (rich) return rich;
  if (isError) return "Error";
  return value === ""
    ? "Empty"
    : { number: "Double", boolean: "Boolean", string: "String" }[typeof value as "number" | "boolean" | "string"];
}

/** The area that holds everything filled. */
export function used(sheet: FakeSheet, valuesOnly: boolean): Place | null {
  const keys = [...sheet.cells]
    .filter(([, cell]) => cell.formula !== "" || cell.value !== "" || (!valuesOnly && cell.format !== "General"))
    .map(([key]) => key.split(",").map(Number) as [number, number]);
  if (!keys.length) return null;
  const top = keys.reduce((least, [row]) => Math.min(least, row), Infinity);
  const left = keys.reduce((least, [, column]) => Math.min(least, column), Infinity);
  return {
    row: top,
    column: left,
    rows: keys.reduce((most, [row]) => Math.max(most, row), 0) - top + 1,
    columns: keys.reduce((most, [, column]) => Math.max(most, column), 0) - left + 1,
  };
}

/** Grows until a blank row or column, or the sheet's edge, is all around. */
export function region(sheet: FakeSheet, { row, column, rows, columns }: Place): Place {
  let [top, left, bottom, right] = [row, column, row + rows - 1, column + columns - 1];
  const filled = (r: number, c: number) => sheet.peek(r, c).formula !== "" || sheet.peek(r, c).value !== "";
  const any = (r0: number, r1: number, c0: number, c1: number) => {
    for (let r = Math.max(0, r0); r <= r1; r++)
      for (let c = Math.max(0, c0); c <= c1; c++) if (filled(r, c)) return true;
    return false;
  };
  for (;;) {
    if (top > 0 && any(top - 1, top - 1, left - 1, right + 1)) top--;
    else if (left > 0 && any(top - 1, bottom + 1, left - 1, left - 1)) left--;
    else if (any(bottom + 1, bottom + 1, left - 1, right + 1)) bottom++;
    else if (any(top - 1, bottom + 1, right + 1, right + 1)) right++;
    else return { row: top, column: left, rows: bottom - top + 1, columns: right - left + 1 };
  }
}

/** Whether all, some (null) or none of the rows or columns of an area are hidden. */
export function hiddenIn(hidden: ReadonlySet<number>, from: number, count: number): boolean | null {
  const all = Array.from({ length: count }, (_, i) => hidden.has(from + i));
  return all.every((one) => one === all[0]) ? all[0]! : null;
}

/** Merged cells in an area. */
export function mergedIn({ merged }: FakeSheet, { row, column, rows, columns }: Place): string[] {
  return [...merged].filter((at) => {
    const [r, c] = at.split(",").map(Number) as [number, number];
    return r >= row && r < row + rows && c >= column && c < column + columns;
  });
}

/** A1 and its like. */
export function a1(row: number, column: number): string {
  let letters = "";
  for (let c = column; c >= 0; c = Math.floor(c / 26) - 1) letters = String.fromCharCode(65 + (c % 26)) + letters;
  return letters + (row + 1);
}

/** The cells that the formula at a place spills into, its own included; null where it spills nothing. */
export function spillRange(sheet: FakeSheet, { row, column }: Place): Place | null {
  const { anchor } = sheet.peek(row, column);
  if (!anchor || anchor.row !== row || anchor.column !== column) return null;
  const mine = (i: number, j: number) => {
    const other = sheet.peek(row + i, column + j).anchor;
    return other?.row === row && other.column === column;
  };
  let [rows, columns] = [1, 1];
  while (mine(rows, 0)) rows++;
  while (mine(0, columns)) columns++;
  return { row, column, rows, columns };
}
