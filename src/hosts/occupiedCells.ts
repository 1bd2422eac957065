import { address } from "./address.ts";
import { cellsToWrite } from "./cellsToWrite.ts";
import type { BlockCells } from "./stepCells.ts";

/**
 * The addresses of the filled cells that blocks would write over: each once, by rows, the sheets in the blocks' order.
 *
 * @param isFilled whether anything is seen in the cell i rows below and j columns beside a block's corner, a spilled value included: writing there would block
 * the other spill.
 */
export function occupiedCells(
  blocks: readonly BlockCells[],
  isFilled: (block: BlockCells, i: number, j: number) => boolean,
): string[] {
  const filled = blocks.flatMap((block) =>
    cellsToWrite(block).flatMap((cell) =>
      isFilled(block, cell.i, cell.j) ? [{ sheet: block.area.sheet, ...cell }] : [],
    ),
  );
  const sheets = [...new Set(blocks.map(({ area }) => area.sheet))];
  filled.sort((a, b) => sheets.indexOf(a.sheet) - sheets.indexOf(b.sheet) || a.row - b.row || a.column - b.column);
  return [...new Set(filled.map(({ sheet, row, column }) => address(sheet, row, column)))];
}
