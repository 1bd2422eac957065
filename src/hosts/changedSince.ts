import { address } from "./address.ts";
import { cellsToWrite } from "./cellsToWrite.ts";
import type { BlockCells } from "./stepCells.ts";

/** What stands in the cells of an area, told so that equal contents are equal by ===; a spilled value counts as an empty cell. */
export type Contents = readonly (readonly (string | number | boolean)[])[];

/** A block that was written: its cells then, and where its sheet is still there, its sheet's name and its cells now. */
export interface WrittenBlock {
  readonly block: BlockCells;
  readonly after: Contents;
  readonly now: { readonly sheet: string; readonly contents: Contents } | null;
}

/** A sheet that the step made and that is still there, with all its filled cells. */
export interface MadeSheet {
  readonly sheet: string;
  readonly filled: readonly { readonly row: number; readonly column: number }[];
}

/**
 * The addresses of cells that were edited since a step was written, each once.
 *
 * Written cells that hold something else now, and whatever else stands on a sheet that the step made: it would be lost with the sheet.
 */
export function changedSince(blocks: readonly WrittenBlock[], made: readonly MadeSheet[]): string[] {
  const edited = new Set<string>();
  const written = new Set<string>();
  for (const { block, after, now } of blocks) {
    if (!now) continue;
    for (const { i, j, row, column } of cellsToWrite(block)) {
      const at = address(now.sheet, row, column);
      written.add(at);
      if (now.contents[i]![j] !== after[i]![j]) edited.add(at);
    }
  }
  for (const { sheet, filled } of made)
    for (const { row, column } of filled) {
      const at = address(sheet, row, column);
      if (!written.has(at)) edited.add(at);
    }
  return [...edited];
}
