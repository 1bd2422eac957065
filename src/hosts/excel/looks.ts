import { cellsToWrite, type PlacedCell } from "../cellsToWrite.ts";
import type { Area } from "../host.ts";
import type { BlockCells } from "../stepCells.ts";
import { bandRange, batches, rangeOf } from "./batches.ts";

/** How the cells looked that a block gives a style, and how wide its columns were. */
export interface Looks {
  readonly styled: readonly { readonly row: number; readonly column: number; readonly look: Excel.CellProperties }[];
  /** In Excel's unit, by the sheet's columns. */
  readonly widths: readonly { readonly column: number; readonly width: number }[];
}

/** What the looks of a cell weigh in an answer. */
const LOOK_BYTES = 150;
/** What giving a run of cells its looks weighs in a request: three objects, six settings. */
export const RUN_BYTES = 2_200;

/** Reads the looks that blocks are about to change, block by block. */
export async function looks(context: Excel.RequestContext, blocks: readonly BlockCells[]): Promise<Looks[]> {
  const widths = blocks.map(({ area, widths: asked }) =>
    asked.map(({ column }) => ({ column, range: columnOf(context, area.sheet, column).load("format/columnWidth") })),
  );
  await context.sync();
  const found = blocks.map((_, k) => ({
    styled: [] as { row: number; column: number; look: Excel.CellProperties }[],
    widths: widths[k]!.map(({ column, range }) => ({ column, width: range.format.columnWidth })),
  }));
  const parts = blocks.flatMap((block, k) =>
    styledParts(block).map((cells) => ({ k, cells, area: around(block.area.sheet, cells) })),
  );
  for (const group of batches(parts, ({ area }) => area.columns * LOOK_BYTES)) {
    const asked = group.map((band) => ({
      band,
      properties: bandRange(context, band).getCellProperties({
        format: { fill: { color: true, pattern: true }, font: { bold: true, italic: true, size: true, color: true } },
      }),
    }));
    await context.sync();
    for (const { band, properties } of asked) {
      const { k, cells, area } = band.of;
      const top = area.row + band.from;
      for (const { row, column } of cells)
        if (row >= top && row < top + band.rows)
          found[k]!.styled.push({ row, column, look: properties.value[row - top]![column - area.column]! });
    }
  }
  return found;
}

/** The styled cells of a block, those of neighboring rows together: most tables have a heading, and nothing else is asked for. */
function styledParts(block: BlockCells): PlacedCell[][] {
  const parts: PlacedCell[][] = [];
  for (const cell of cellsToWrite(block))
    if (cell.cell.style) {
      const last = parts.at(-1);
      if (last && cell.row - last.at(-1)!.row <= 1) last.push(cell);
      else parts.push([cell]);
    }
  return parts;
}

/** The smallest area that holds cells. */
function around(sheet: string, cells: readonly PlacedCell[]): Area {
  const rows = cells.map(({ row }) => row);
  const columns = cells.map(({ column }) => column);
  const least = (all: readonly number[]) => all.reduce((a, b) => Math.min(a, b));
  const most = (all: readonly number[]) => all.reduce((a, b) => Math.max(a, b));
  const [row, column] = [least(rows), least(columns)];
  return { sheet, row, column, rows: most(rows) - row + 1, columns: most(columns) - column + 1 };
}

/** One cell of a column, by which its width is read and set. */
export function columnOf(context: Excel.RequestContext, sheet: string, column: number): Excel.Range {
  return rangeOf(context, { sheet, row: 0, column, rows: 1, columns: 1 });
}

/** Writes looks back that were read before, by sheet; neighbors that looked alike together. */
export async function giveLooksBack(
  context: Excel.RequestContext,
  all: readonly { readonly sheet: string; readonly looks: Looks }[],
): Promise<void> {
  for (const { sheet, looks: back } of all)
    for (const { column, width } of back.widths)
      columnOf(context, sheet, column).getEntireColumn().format.columnWidth = width;
  const runs = all.flatMap(({ sheet, looks: back }) => runsOf(sheet, back));
  for (const group of batches(runs, () => RUN_BYTES)) {
    for (const { of } of group) giveLook(rangeOf(context, of.area), of.look);
    await context.sync();
  }
  await context.sync();
}

function runsOf(sheet: string, { styled }: Looks): { area: Area; look: Excel.CellProperties }[] {
  const runs: { area: { -readonly [key in keyof Area]: Area[key] }; look: Excel.CellProperties }[] = [];
  for (const { row, column, look } of styled) {
    const last = runs.at(-1);
    const beside = last && last.area.row === row && last.area.column + last.area.columns === column;
    if (beside && JSON.stringify(last.look) === JSON.stringify(look)) last.area.columns++;
    else runs.push({ area: { sheet, row, column, rows: 1, columns: 1 }, look });
  }
  return runs;
}

function giveLook({ format }: Excel.Range, look: Excel.CellProperties): void {
  const { fill, font } = look.format ?? {};
  if (!font) return;
  Object.assign(
    format.font,
    Object.fromEntries(Object.entries(font).filter(([, value]) => value !== null && value !== undefined)),
  );
  // A cell without a fill reads as white; painting it white would hide the grid.
  if (!fill?.color || !fill.pattern || fill.pattern === "None") format.fill.clear();
  else format.fill.color = fill.color;
}
