import type { Contents } from "../changedSince.ts";
import type { BlockCells } from "../stepCells.ts";
import { bandRange, batches } from "./batches.ts";
import { gridBytes } from "./gridBytes.ts";
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
  /** What stood in each block after the step; until that was read, what was written. */
  after: readonly Contents[];
  /** A putting back has begun: a cell may hold what stood there before, which is no edit of the user's. */
  begun: boolean;
  /** The workbook calculates only when it is told to. */
  readonly manual?: boolean;
  /** Ids of the sheets that were there before. */
  readonly known: ReadonlySet<string>;
  /** New sheets that may have been added though Excel's answer never came: the name they then have, and the one that blocks have for them. */
  sought: readonly { readonly found: string; readonly sheet: string }[];
}

/** Notes a sheet as made by the step. */
export function noteMade(undo: Undo, name: string, id: string): void {
  undo.made.push(id);
  for (const block of undo.blocks) if (block.area.sheet === name) undo.sheetIds.set(block, id);
}

/** Looks for the sheets that were added without an answer: they are there by name, and were not before. */
export function findSought(undo: Undo, there: readonly { readonly id: string; readonly name: string }[]): void {
  for (const { id, name } of there) {
    const sought = undo.sought.find(({ found }) => found === name);
    if (sought && !undo.known.has(id) && !undo.made.includes(id)) noteMade(undo, sought.sheet, id);
  }
  undo.sought = [];
}

/**
 * Puts back what stood there before a step: the sheets it made go, the cells it wrote get their contents, formats and looks again. Done half, it can be done again.
 *
 * A sheet that the user has removed since is left out. Excel keeps one visible sheet at least: when no other is left, the made one is emptied instead.
 */
export async function putBack(context: Excel.RequestContext, undo: Undo): Promise<void> {
  const { worksheets } = context.workbook;
  const there = await sheets(context);
  findSought(undo, there);
  undo.begun = true;
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
    return before && sheet !== undefined && !undo.made.includes(sheet)
      ? [{ block, ...before, sheet, area: { ...block.area, sheet } }]
      : [];
  });
  const cellsOf = ({ block, contents }: (typeof old)[number], i: number) =>
    contents[i]!.map((cell, j) => (block.cells[i]![j] ? cell : null));
  for (const group of batches(old, (of, row) => gridBytes(cellsOf(of, row)))) {
    for (const band of group) {
      const range = bandRange(context, band);
      const cells = Array.from({ length: band.rows }, (_, i) => cellsOf(band.of, band.from + i));
      range.numberFormat = cells.map((line) => line.map((cell) => cell && cell.format));
      range.formulas = cells.map((line) => line.map((cell) => cell && cell.content));
    }
    await context.sync();
  }
  await giveLooksBack(context, old);
}
