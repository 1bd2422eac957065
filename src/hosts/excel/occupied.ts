import type { WriteStep } from "../host.ts";
import { occupiedCells } from "../occupiedCells.ts";
import { stepCells } from "../stepCells.ts";
import { contents } from "./contents.ts";
import { inExcel } from "./inExcel.ts";
import { sheetNames } from "./sheets.ts";

/** The filled cells that a step would write over. */
export function occupied(step: WriteStep): Promise<readonly string[]> {
  return inExcel(async (context) => {
    const names = await sheetNames(context);
    const blocks = stepCells(step, names).blocks.filter(({ area }) => names.includes(area.sheet));
    const now = await contents(
      context,
      blocks.map(({ area }) => area),
    );
    const found = new Map(blocks.map((block, k) => [block, now[k]!]));
    return occupiedCells(blocks, (block, i, j) => {
      const { empty, spilled } = found.get(block)![i]![j]!;
      return !empty || spilled;
    });
  });
}
