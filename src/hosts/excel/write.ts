import { CELL_STYLES } from "../cellStyles.ts";
import { address } from "../address.ts";
import { cellsToWrite } from "../cellsToWrite.ts";
import type { CellLayout, Host, WriteStep } from "../host.ts";
import { stepCells, type BlockCells, type StepCells } from "../stepCells.ts";
import { allOrNothing } from "./allOrNothing.ts";
import { bandRange, batches, type Band } from "./batches.ts";
import { contents } from "./contents.ts";
import { inExcel } from "./inExcel.ts";
import { gridBytes } from "./gridBytes.ts";
import { columnOf, looks, RUN_BYTES } from "./looks.ts";
import { POINTS_PER_PIXEL } from "./pointsPerPixel.ts";
import { noteMade, type Undo } from "./putBack.ts";
import { refusePlace } from "./refusePlace.ts";
import { refuseProtected, sheets } from "./sheets.ts";

/**
 * Writes a step: all of it or nothing. Gives what it takes to undo it.
 *
 * Excel has no transaction, so what stands there is read first, and put back when the step is stopped or a part of it fails. Excel's own undo has
 * one step for each request: one for each new sheet, one for every request of cells. Its mergeUndoGroup would make it one, but has failed on no more than
 * 1600 formulas (office-js issue 6491), and takeBack does not need it.
 *
 * @throws NotPutBack where something was left.
 */
export async function write(step: WriteStep, { signal, progress }: Parameters<Host["write"]>[1] = {}): Promise<Undo> {
  signal?.throwIfAborted();
  const { toWrite, undo } = await inExcel((context) => lookFirst(context, step));
  const sought = toWrite.newSheets.map(({ name }) => ({ found: name, sheet: name }));
  return allOrNothing(undo, sought, async (context) => {
    await makeSheets(context, toWrite, undo);
    await fill(context, toWrite, signal, progress);
    const after = await contents(
      context,
      toWrite.blocks.map(({ area }) => area),
    );
    undo.after = after.map((lines) => lines.map((line) => line.map(({ content }) => content)));
  });
}

/** Refuses what cannot be written or could not be put back; reads what stands there now. */
async function lookFirst(context: Excel.RequestContext, step: WriteStep): Promise<{ toWrite: StepCells; undo: Undo }> {
  const there = await sheets(context);
  const toWrite = stepCells(
    step,
    there.map(({ name }) => name),
  );
  const idOf = ({ area }: BlockCells) => there.find(({ name }) => name === area.sheet)?.id;
  const old = toWrite.blocks.filter((block) => idOf(block) !== undefined);
  const areas = old.map(({ area }) => area);
  await refuseProtected(
    context,
    areas.map(({ sheet }) => sheet),
  );
  await refusePlace(context, areas);
  const { application } = context.workbook;
  application.load("calculationMode");
  await context.sync();
  const stood = await contents(context, areas);
  for (const [k, block] of old.entries())
    for (const { i, j, row, column } of cellsToWrite(block))
      if (stood[k]![i]![j]!.rich)
        throw new Error(
          `${address(block.area.sheet, row, column)} holds a linked data type or a picture, which could not be put back. Choose another place.`,
        );
  const looked = await looks(context, old);
  const undo: Undo = {
    blocks: toWrite.blocks,
    before: toWrite.blocks.map((block) => {
      const k = old.indexOf(block);
      return k < 0 ? null : { contents: stood[k]!, looks: looked[k]! };
    }),
    sheetIds: new Map(old.map((block) => [block, idOf(block)!])),
    made: [],
    after: toWrite.blocks.map(({ cells }) =>
      cells.map((line) => line.map((cell) => (cell ? toExcel(cell.content) : ""))),
    ),
    begun: false,
    manual: application.calculationMode === "Manual",
    known: new Set(there.map(({ id }) => id)),
    sought: [],
  };
  return { toWrite, undo };
}

async function makeSheets(context: Excel.RequestContext, { newSheets }: StepCells, undo: Undo): Promise<void> {
  for (const { name, frozenRows } of newSheets) {
    const sheet = context.workbook.worksheets.add(name).load("id");
    await context.sync();
    noteMade(undo, name, sheet.id);
    if (frozenRows > 0) sheet.freezePanes.freezeRows(frozenRows);
  }
}

async function fill(
  context: Excel.RequestContext,
  { blocks }: StepCells,
  signal?: AbortSignal,
  progress?: (done: number, of: number) => void,
): Promise<void> {
  const groups = batches(blocks, ({ cells }, row) => gridBytes(cells[row]!) + runsIn(cells[row]!).length * RUN_BYTES);
  const of = groups.flat().reduce((sum, { cells }) => sum + cells, 0);
  let done = 0;
  for (const group of groups) {
    signal?.throwIfAborted();
    for (const band of group) fillBand(context, band);
    // The last request also carries the widths, so that nothing is left to fail after the last word of progress.
    if (group === groups.at(-1)) for (const block of blocks) setWidths(context, block);
    await context.sync();
    done += group.reduce((sum, { cells }) => sum + cells, 0);
    progress?.(done, of);
  }
}

function fillBand(context: Excel.RequestContext, band: Band<BlockCells>): void {
  const range = bandRange(context, band);
  const cells = band.of.cells.slice(band.from, band.from + band.rows);
  // Formats first: a formula written into a cell that is formatted as text would stay text.
  range.numberFormat = cells.map((line) => line.map((cell) => cell && cell.format));
  range.formulas = cells.map((line) => line.map((cell) => cell && toExcel(cell.content)));
  for (const [i, line] of cells.entries()) paint(range, i, line);
}

/** Text goes in behind an apostrophe, or Excel would read 6/12 as a date; the apostrophe is not part of the text. */
function toExcel(content: string | number): string | number {
  return typeof content === "number" || content === "" || content.startsWith("=") ? content : `'${content}`;
}

/** Neighbors of one style in a row. */
function runsIn(
  line: readonly (CellLayout | null)[],
): { from: number; to: number; style: NonNullable<CellLayout["style"]> }[] {
  const runs = [];
  for (let j = 0, end; j < line.length; j = end) {
    const style = line[j]?.style;
    for (end = j + 1; end < line.length && line[end]?.style === style;) end++;
    if (style) runs.push({ from: j, to: end, style });
  }
  return runs;
}

function paint(range: Excel.Range, i: number, line: readonly (CellLayout | null)[]): void {
  for (const { from, to, style } of runsIn(line)) {
    const { bold, italic, size, color, fill } = CELL_STYLES[style];
    const { format } = range
      .getCell(i, from)
      .untrack()
      .getResizedRange(0, to - from - 1)
      .untrack();
    if (bold !== undefined) format.font.bold = bold;
    if (italic !== undefined) format.font.italic = italic;
    if (size !== undefined) format.font.size = size;
    if (color !== undefined) format.font.color = color;
    if (fill !== undefined) format.fill.color = fill;
  }
}

function setWidths(context: Excel.RequestContext, { area, widths }: BlockCells): void {
  for (const { column, width } of widths)
    columnOf(context, area.sheet, column).getEntireColumn().format.columnWidth = width * POINTS_PER_PIXEL;
}
