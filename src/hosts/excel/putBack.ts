import type { Contents } from "../changedSince.ts";
import type { BlockCells } from "../stepCells.ts";
import { bandRange, batches } from "./batches.ts";
import type { Standing } from "./contents.ts";
import { giveLooksBack, type Looks } from "./looks.ts";
import { sheets } from "./sheets.ts";

/** What a step needs to be undone. */
export interface Undo {
  readonly blocks: readonly BlockCells[];
  /** By block, where its sheet stood there before: what was in its area, and how it looked. */
  readonly before: readonly ({ readonly contents: Standing[][]; readonly looks: Looks } | null)[];
  /** Excel's id of each block's sheet: the user may give it another name. Of those made, once they are. */
  readonly sheetIds: Map<BlockCells, string>;
  /** Ids of the sheets made by the step. */
  readonly made: string[];
  /** What stood in each block after the step. */
  after: readonly Contents[];
}

/**
 * Puts back what stood there before a step: the sheets it made go, the cells it wrote get their contents, formats and looks again.
 *
 * A sheet that the user has removed since is left out. Excel keeps one visible sheet at least: when no other is left, the made one is emptied instead.
 */
export async function putBack(context: Excel.RequestContext, undo: Undo): Promise<void> {
  const { worksheets } = context.workbook;
  const there = await sheets(context);
  const others = there.some(({ id, visible }) => visible && !undo.made.includes(id));
  for (const { id } of there) {
    if (!undo.made.includes(id)) continue;
    if (others) worksheets.getItem(id).delete();
    else worksheets.getItem(id).getRange().clear();
  }
  await context.sync();
  const old = undo.blocks.flatMap((block, k) => {
    const sheet = there.find(({ id }) => id === undo.sheetIds.get(block))?.id;
    const before = undo.before[k];
    return before && sheet !== undefined ? [{ block, ...before, sheet, area: { ...block.area, sheet } }] : [];
  });
  for (const group of batches(old)) {
    for (const band of group) {
      const { block, contents } = band.of;
      const range = bandRange(context, band);
      const grid = <T>(of: (cell: Standing) => T) =>
        contents
          .slice(band.from, band.from + band.rows)
          .map((line, i) => line.map((cell, j) => (block.cells[band.from + i]![j] ? of(cell) : null)));
      range.numberFormat = grid(({ format }) => format);
      range.formulas = grid(({ content }) => content);
    }
    await context.sync();
  }
  for (const { sheet, looks } of old) giveLooksBack(context, sheet, looks);
  await context.sync();
}
