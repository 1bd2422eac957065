import type { Area, BlockLayout, CellLayout, HostCell, WriteStep } from "../../../src/hosts/host.ts";

export const SHEET = "Sheet1";
export const EMPTY: HostCell = { formula: null, value: "", format: "General" };

/** A cell to write. */
export const cell = (content: string | number, format?: string): CellLayout =>
  format === undefined ? { content } : { content, format };
/** A block of contents at a place of Sheet1; null leaves a cell alone. */
export const block = (
  row: number,
  column: number,
  rows: readonly (readonly (string | number | null)[])[],
  more: Partial<BlockLayout> = {},
): BlockLayout => ({
  sheet: SHEET,
  row,
  column,
  cells: rows.map((r) => r.map((c) => (c === null ? null : cell(c)))),
  ...more,
});
/** A step of blocks. */
export const step = (...blocks: BlockLayout[]): WriteStep => ({ title: "Fill the sheet", blocks });
/** An area of Sheet1. */
export const area = (row: number, column: number, rows = 1, columns = 1, sheet = SHEET): Area => ({
  sheet,
  row,
  column,
  rows,
  columns,
});
