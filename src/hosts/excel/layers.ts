import type { BlockLayout, CellLayout, WriteStep } from "../host.ts";

/** A rectangle of one sheet that a step writes; null leaves a cell alone. */
export interface Layer {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly cells: readonly (readonly (CellLayout | null)[])[];
  /** The area of a formula's spill: it is emptied, and what a sheet shows there later is not an edit. */
  readonly spill: boolean;
  readonly widths: readonly (number | null)[];
  readonly frozenRows: number;
}

/** The rectangles of a step in the order they are written: of each block the area of its spill, then the block. */
export function layers(step: WriteStep): Layer[] {
  return step.blocks.flatMap((block) =>
    block.spill ? [spillLayer(block, block.spill), blockLayer(block)] : [blockLayer(block)],
  );
}

function blockLayer(block: BlockLayout): Layer {
  const { sheet, row, column, spill, widths = [], frozenRows = 0 } = block;
  // A cell of the block that stands in the spill, such as its formula, has the spill's format unless it brings its own.
  const formatAt = (i: number, j: number) =>
    spill && i >= spill.row && i < spill.row + spill.rows
      ? (spill.formats?.[j - spill.column] ?? undefined)
      : undefined;
  const cells = block.cells.map((line, i) =>
    line.map((cell, j) => cell && { ...cell, format: cell.format ?? formatAt(i, j) ?? "General" }),
  );
  return { sheet, row, column, cells, spill: false, widths, frozenRows };
}

function spillLayer(block: BlockLayout, spill: NonNullable<BlockLayout["spill"]>): Layer {
  const line = Array.from({ length: spill.columns }, (_, j): CellLayout => ({
    content: "",
    format: spill.formats?.[j] ?? "General",
  }));
  const cells = Array.from({ length: spill.rows }, () => line);
  return {
    sheet: block.sheet,
    row: block.row + spill.row,
    column: block.column + spill.column,
    cells,
    spill: true,
    widths: [],
    frozenRows: 0,
  };
}

/** Most cells in one request: Excel on the web takes 5 MB (read in its public documents), and a long formula has some hundred bytes. */
export const MOST_CELLS = 10_000;

/** A piece of a layer, of whole rows, that fits one request. */
export interface Band {
  readonly layer: Layer;
  readonly from: number;
  readonly rows: number;
  readonly cells: number;
}

/** A layer in pieces that each fit one request. */
export function bands(layer: Layer): Band[] {
  const columns = layer.cells[0]!.length;
  const most = Math.max(1, Math.floor(MOST_CELLS / columns));
  const count = Math.ceil(layer.cells.length / most);
  return Array.from({ length: count }, (_, k) => {
    const rows = Math.min(most, layer.cells.length - k * most);
    return { layer, from: k * most, rows, cells: rows * columns };
  });
}
