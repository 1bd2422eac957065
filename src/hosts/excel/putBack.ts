import { batches } from "./batches.ts";
import { bandRange, type Standing } from "./contents.ts";
import type { Band, Layer } from "./layers.ts";
import { giveLooksBack, type Looks } from "./looks.ts";

/** What a step needs to be undone. */
export interface Undo {
  readonly all: readonly Layer[];
  /** The layers on sheets that stood there before, and what was in them. */
  readonly old: readonly Layer[];
  readonly before: readonly Standing[][][];
  readonly looks: readonly Looks[];
  /** Sheets made by the step. */
  readonly made: { readonly id: string; readonly name: string }[];
  /** What stood in all layers after the step. */
  after: readonly Standing[][][];
}

/**
 * Puts back what stood there before a step: the sheets it made go, the cells it wrote get their contents, formats and looks again.
 *
 * A sheet that the user has removed since is left out. Excel keeps one visible sheet at least: when no other is left, the made one is emptied instead.
 */
export async function putBack(context: Excel.RequestContext, undo: Undo): Promise<void> {
  const { worksheets } = context.workbook;
  worksheets.load("items/name,items/id,items/visibility");
  await context.sync();
  const there = new Set(worksheets.items.map(({ name }) => name.toLowerCase()));
  const others = worksheets.items.some(
    ({ id, visibility }) => visibility === "Visible" && !undo.made.some((made) => made.id === id),
  );
  for (const { id } of worksheets.items) {
    if (!undo.made.some((made) => made.id === id)) continue;
    if (others) worksheets.getItem(id).delete();
    else worksheets.getItem(id).getRange().clear();
  }
  await context.sync();
  for (const group of batches(undo.old.filter(({ sheet }) => there.has(sheet.toLowerCase())))) {
    for (const band of group) contentsBack(context, band, undo);
    await context.sync();
  }
  for (const look of undo.looks) if (there.has(look.layer.sheet.toLowerCase())) giveLooksBack(context, look);
  await context.sync();
}

function contentsBack(context: Excel.RequestContext, band: Band, undo: Undo): void {
  const { layer, from, rows } = band;
  const range = bandRange(context, band);
  const before = undo.before[undo.old.indexOf(layer)]!.slice(from, from + rows);
  const ifPlanned = <T>(i: number, j: number, value: T) => (layer.cells[from + i]![j] ? value : null);
  range.numberFormat = before.map((line, i) => line.map(({ format }, j) => ifPlanned(i, j, format)));
  range.formulas = before.map((line, i) => line.map(({ content }, j) => ifPlanned(i, j, content)));
}
