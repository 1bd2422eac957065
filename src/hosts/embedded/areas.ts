import type { IRange } from "@univerjs/core";
import type { Rectangle } from "../../xlsx/book.ts";

/** An area as the sheet's own data name it. */
export function rangeOf({ row, column, rows, columns }: Rectangle): IRange {
  return { startRow: row, endRow: row + rows - 1, startColumn: column, endColumn: column + columns - 1 };
}

/** Whether two ranges have a cell in common. */
export function meets(a: IRange, b: IRange): boolean {
  return (
    a.startRow <= b.endRow && a.endRow >= b.startRow && a.startColumn <= b.endColumn && a.endColumn >= b.startColumn
  );
}

/** The sheet's own range as an area; its sheet aside. */
export function areaOf({ startRow, endRow, startColumn, endColumn }: IRange): Rectangle {
  return { row: startRow, column: startColumn, rows: endRow - startRow + 1, columns: endColumn - startColumn + 1 };
}
