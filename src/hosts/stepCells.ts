import { checkStep } from "./checkStep.ts";
import type { Area, BlockLayout, CellLayout, WriteStep } from "./host.ts";

/** One cell that a block writes, "" for one that a formula will spill into. */
export type CellToWrite = CellLayout & { readonly format: string };

/** All that a block writes, in one area of a sheet; null leaves a cell alone. */
export interface BlockCells {
  readonly area: Area;
  readonly cells: readonly (readonly (CellToWrite | null)[])[];
  /** In pixels, by the sheet's columns. */
  readonly widths: readonly { readonly column: number; readonly width: number }[];
}

/** A step as every host writes it. */
export interface StepCells {
  readonly newSheets: readonly { readonly name: string; readonly frozenRows: number }[];
  readonly blocks: readonly BlockCells[];
}

/**
 * What a step comes to in a workbook with these sheets. Sheets have the names that they have there, whatever capitals the step has.
 *
 * @throws in words for people when it cannot be written: before the first cell changes.
 */
export function stepCells(step: WriteStep, sheets: readonly string[]): StepCells {
  const wrong = checkStep(step, sheets);
  if (wrong) throw new Error(wrong);
  const newSheets = new Map<string, { name: string; frozenRows: number }>();
  for (const { newSheet, sheet, frozenRows = 0 } of step.blocks) {
    const made = newSheets.get(sheet.toLowerCase());
    if (made) made.frozenRows = Math.max(made.frozenRows, frozenRows);
    else if (newSheet) newSheets.set(sheet.toLowerCase(), { name: sheet, frozenRows });
  }
  const names = new Map(
    [...sheets, ...[...newSheets.values()].map(({ name }) => name)].map((name) => [name.toLowerCase(), name]),
  );
  return {
    newSheets: [...newSheets.values()],
    blocks: step.blocks.map((block) => blockCells(block, names.get(block.sheet.toLowerCase())!)),
  };
}

/** The block's own cells and the area of its spill share one area. A cell of the block that stands in the spill has the spill's format unless it brings its own. */
function blockCells({ row, column, cells, spill, widths = [] }: BlockLayout, sheet: string): BlockCells {
  const top = Math.min(0, spill?.row ?? 0);
  const left = Math.min(0, spill?.column ?? 0);
  const rows = Math.max(cells.length, spill ? spill.row + spill.rows : 0) - top;
  const columns = Math.max(cells[0]!.length, spill ? spill.column + spill.columns : 0) - left;
  const cellAt = (i: number, j: number): CellToWrite | null => {
    const own = cells[i]?.[j];
    const spilled = spill && inside(spill, i, j) ? { format: spill.formats?.[j - spill.column] ?? "General" } : null;
    if (own) return { ...own, format: own.format ?? spilled?.format ?? "General" };
    return spilled && { content: "", ...spilled };
  };
  return {
    area: { sheet, row: row + top, column: column + left, rows, columns },
    cells: Array.from({ length: rows }, (_, i) =>
      Array.from({ length: columns }, (__, j) => cellAt(top + i, left + j)),
    ),
    widths: widths.flatMap((width, j) => (width === null ? [] : [{ column: column + j, width }])),
  };
}

function inside(spill: NonNullable<BlockLayout["spill"]>, row: number, column: number): boolean {
  return (
    row >= spill.row && row < spill.row + spill.rows && column >= spill.column && column < spill.column + spill.columns
  );
}
