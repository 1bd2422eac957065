import { CELL_STYLES } from "../cellStyles.ts";
import { address } from "../address.ts";
import { checkStep } from "../checkStep.ts";
import type { Area, CellLayout, WriteStep, Written } from "../host.ts";
import { batches } from "./batches.ts";
import { bandRange, contents } from "./contents.ts";
import { inExcel } from "./inExcel.ts";
import { layers, type Band, type Layer } from "./layers.ts";
import { looks } from "./looks.ts";
import { POINTS_PER_PIXEL } from "./pointsPerPixel.ts";
import { putBack, type Undo } from "./putBack.ts";
import { refuseProtected, sheetNames } from "./sheets.ts";
import { keepUndo } from "./takeBack.ts";

/**
 * Writes a step: all of it or nothing.
 *
 * Excel has no transaction, so what stands there is read first, and put back when the step is stopped or a part of it fails. Excel's own undo has
 * one step for each request: one for each new sheet, one for every MOST_CELLS cells. Its mergeUndoGroup would make it one, but has failed on no more than
 * 1600 formulas (office-js issue 6491), and takeBack does not need it.
 */
export async function write(
  step: WriteStep,
  { signal, progress }: { signal?: AbortSignal; progress?: (done: number, of: number) => void } = {},
): Promise<Written> {
  signal?.throwIfAborted();
  const all = layers(step);
  const undo = await inExcel((context) => lookFirst(context, step, all));
  try {
    await inExcel(async (context) => {
      await makeSheets(context, step, undo);
      await fill(context, all, signal, progress);
      undo.after = await contents(context, all);
    });
  } catch (error) {
    await inExcel((context) => putBack(context, undo)).catch((cause: unknown) => {
      throw new Error(
        `${(error as Error).message} What was written by then could not all be put back: look at ${all.map(({ sheet }) => sheet).join(", ")}.`,
        { cause },
      );
    });
    throw error;
  }
  return keepUndo({ title: step.title, areas: all.map(areaOf) }, undo);
}

/** Refuses what cannot be written or could not be put back; gives what stands there now. */
async function lookFirst(context: Excel.RequestContext, step: WriteStep, all: readonly Layer[]): Promise<Undo> {
  const names = await sheetNames(context);
  const bad = checkStep(step, names);
  if (bad) throw new Error(bad);
  const made = new Set(step.blocks.filter(({ newSheet }) => newSheet).map(({ sheet }) => sheet.toLowerCase()));
  const old = all.filter(({ sheet }) => !made.has(sheet.toLowerCase()));
  await refuseProtected(
    context,
    old.map(({ sheet }) => sheet),
  );
  const before = await contents(context, old);
  for (const [k, layer] of old.entries())
    for (const [i, line] of before[k]!.entries())
      for (const [j, cell] of line.entries())
        if (cell.rich && layer.cells[i]![j])
          throw new Error(
            `${address(layer.sheet, layer.row + i, layer.column + j)} holds a linked data type or a picture, which could not be put back. Choose another place.`,
          );
  return { all, old, before, looks: await looks(context, old), made: [], after: [] };
}

async function makeSheets(context: Excel.RequestContext, step: WriteStep, undo: Undo): Promise<void> {
  const made = new Map(step.blocks.filter(({ newSheet }) => newSheet).map(({ sheet }) => [sheet.toLowerCase(), sheet]));
  if (!made.size) return;
  for (const name of made.values()) {
    const sheet = context.workbook.worksheets.add(name).load("id,name");
    await context.sync();
    undo.made.push({ id: sheet.id, name: sheet.name });
  }
}

async function fill(
  context: Excel.RequestContext,
  all: readonly Layer[],
  signal?: AbortSignal,
  progress?: (done: number, of: number) => void,
): Promise<void> {
  const groups = batches(all);
  const of = groups.flat().reduce((sum, { cells }) => sum + cells, 0);
  let done = 0;
  for (const group of groups) {
    signal?.throwIfAborted();
    for (const band of group) fillBand(context, band);
    // The last request also carries the layout, so that nothing is left to fail after the last word of progress.
    if (group === groups.at(-1)) for (const layer of all) layOut(context, layer);
    await context.sync();
    done += group.reduce((sum, { cells }) => sum + cells, 0);
    progress?.(done, of);
  }
}

function fillBand(context: Excel.RequestContext, band: Band): void {
  const { layer, from, rows } = band;
  const range = bandRange(context, band);
  const cells = layer.cells.slice(from, from + rows);
  // Formats first: a formula written into a cell that is formatted as text would stay text.
  range.numberFormat = cells.map((line) => line.map((cell) => cell && (cell.format ?? "General")));
  range.formulas = cells.map((line) => line.map((cell) => cell && toExcel(cell.content)));
  for (const [i, line] of cells.entries()) paint(range, i, line);
}

/** Text goes in behind an apostrophe, or Excel would read 6/12 as a date; the apostrophe is not part of the text. */
function toExcel(content: string | number): string | number {
  return typeof content === "number" || content === "" || content.startsWith("=") ? content : `'${content}`;
}

/** Styles of one row, neighbours of one style together. */
function paint(range: Excel.Range, i: number, line: readonly (CellLayout | null)[]): void {
  for (let j = 0, end; j < line.length; j = end) {
    const style = line[j]?.style;
    for (end = j + 1; end < line.length && line[end]?.style === style;) end++;
    if (!style) continue;
    const { bold, italic, size, color, fill } = CELL_STYLES[style];
    const { format } = range.getCell(i, j).getResizedRange(0, end - j - 1);
    if (bold !== undefined) format.font.bold = bold;
    if (italic !== undefined) format.font.italic = italic;
    if (size !== undefined) format.font.size = size;
    if (color !== undefined) format.font.color = color;
    if (fill !== undefined) format.fill.color = fill;
  }
}

function layOut(context: Excel.RequestContext, layer: Layer): void {
  const sheet = context.workbook.worksheets.getItem(layer.sheet);
  for (const [j, width] of layer.widths.entries())
    if (width !== null)
      sheet.getRangeByIndexes(0, layer.column + j, 1, 1).getEntireColumn().format.columnWidth =
        width * POINTS_PER_PIXEL;
  if (layer.frozenRows) sheet.freezePanes.freezeRows(layer.frozenRows);
}

function areaOf({ sheet, row, column, cells }: Layer): Area {
  return { sheet, row, column, rows: cells.length, columns: cells[0]!.length };
}
