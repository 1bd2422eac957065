import type { BlockCells, CellToWrite } from "./stepCells.ts";

/** One cell that a block writes. */
export interface PlacedCell {
  readonly cell: CellToWrite;
  /** Its row and column in the block. */
  readonly i: number;
  readonly j: number;
  /** Its row and column in the sheet. */
  readonly row: number;
  readonly column: number;
}

/** Every cell that a block writes, by rows; those that it leaves alone are not among them. */
export function cellsToWrite({ area, cells }: BlockCells): PlacedCell[] {
  return cells.flatMap((line, i) =>
    line.flatMap((cell, j) => (cell ? [{ cell, i, j, row: area.row + i, column: area.column + j }] : [])),
  );
}
