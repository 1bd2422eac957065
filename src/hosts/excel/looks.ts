import { cellsToWrite } from "../cellsToWrite.ts";
import type { Area } from "../host.ts";
import type { BlockCells } from "../stepCells.ts";
import { rangeOf } from "./batches.ts";

/** How the cells looked that a block gives a style, and how wide its columns were. */
export interface Looks {
  readonly styled: readonly { readonly row: number; readonly column: number; readonly look: Excel.CellProperties }[];
  /** In Excel's unit, by the sheet's columns. */
  readonly widths: readonly { readonly column: number; readonly width: number }[];
}

/** Reads the looks that blocks are about to change, block by block. */
export async function looks(context: Excel.RequestContext, blocks: readonly BlockCells[]): Promise<Looks[]> {
  const asked = blocks.map((block) => {
    const cells = cellsToWrite(block).filter(({ cell }) => cell.style);
    const area = around(block.area.sheet, cells);
    const properties =
      area &&
      rangeOf(context, area).getCellProperties({
        format: { fill: { color: true, pattern: true }, font: { bold: true, italic: true, size: true, color: true } },
      });
    const columns = block.widths.map(({ column }) => ({
      column,
      range: columnOf(context, block.area.sheet, column).load("format/columnWidth"),
    }));
    return { cells, area, properties, columns };
  });
  await context.sync();
  return asked.map(({ cells, area, properties, columns }) => ({
    styled: cells.map(({ row, column }) => ({
      row,
      column,
      look: properties!.value[row - area!.row]![column - area!.column]!,
    })),
    widths: columns.map(({ column, range }) => ({ column, width: range.format.columnWidth })),
  }));
}

/** The smallest area that holds cells, or null where there are none. */
function around(sheet: string, cells: readonly { readonly row: number; readonly column: number }[]): Area | null {
  if (!cells.length) return null;
  const [top, bottom, left, right] = cells.reduce(
    ([t, b, l, r], { row, column }) => [Math.min(t, row), Math.max(b, row), Math.min(l, column), Math.max(r, column)],
    [Infinity, 0, Infinity, 0] as [number, number, number, number],
  );
  return { sheet, row: top, column: left, rows: bottom - top + 1, columns: right - left + 1 };
}

/** One cell of a column, by which its width is read and set. */
export function columnOf(context: Excel.RequestContext, sheet: string, column: number): Excel.Range {
  return rangeOf(context, { sheet, row: 0, column, rows: 1, columns: 1 });
}

/** Queues the writing back of looks that were read before. */
export function giveLooksBack(context: Excel.RequestContext, sheet: string, { styled, widths }: Looks): void {
  for (const { column, width } of widths) columnOf(context, sheet, column).getEntireColumn().format.columnWidth = width;
  for (const { row, column, look } of styled) {
    const { fill, font } = look.format ?? {};
    if (!font) continue;
    const { format } = rangeOf(context, { sheet, row, column, rows: 1, columns: 1 });
    Object.assign(
      format.font,
      Object.fromEntries(Object.entries(font).filter(([, value]) => value !== null && value !== undefined)),
    );
    // A cell without a fill reads as white; painting it white would hide the grid.
    if (!fill?.color || !fill.pattern || fill.pattern === "None") format.fill.clear();
    else format.fill.color = fill.color;
  }
}
