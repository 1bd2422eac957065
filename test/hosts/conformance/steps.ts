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

/** A jack schedule as the pane writes it: a block of labels and values, and a formula that spills beside it. */
export const schedule = (rows: number): WriteStep =>
  step(
    block(
      0,
      0,
      [
        ["Span", 288],
        ["Pitch", 6],
      ],
      { sheet: "Jacks", newSheet: true },
    ),
    block(0, 3, [["=RAFTER.JACKTABLE(A1:B2)"]], {
      sheet: "Jacks",
      newSheet: true,
      spill: { row: 0, column: 0, rows, columns: 13 },
    }),
  );
