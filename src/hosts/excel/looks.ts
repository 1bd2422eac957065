import type { Layer } from "./layers.ts";

/** How the cells of a layer looked and how wide its columns were, as far as a step changes either. */
export interface Looks {
  readonly layer: Layer;
  readonly cells: readonly (readonly Excel.CellProperties[])[] | null;
  /** In Excel's unit, by column of the layer. */
  readonly widths: readonly (number | null)[];
}

/** Reads the looks that a step is about to change. */
export async function looks(context: Excel.RequestContext, all: readonly Layer[]): Promise<Looks[]> {
  const asked = all.map((layer) => {
    const sheet = context.workbook.worksheets.getItem(layer.sheet);
    const range = sheet.getRangeByIndexes(layer.row, layer.column, layer.cells.length, layer.cells[0]!.length);
    const styled = layer.cells.some((line) => line.some((cell) => cell?.style));
    const cells = styled
      ? range.getCellProperties({
          format: { fill: { color: true, pattern: true }, font: { bold: true, italic: true, size: true, color: true } },
        })
      : null;
    const columns = layer.widths.map((width, j) =>
      width === null ? null : sheet.getRangeByIndexes(0, layer.column + j, 1, 1).load("format/columnWidth"),
    );
    return { layer, cells, columns };
  });
  await context.sync();
  return asked.map(({ layer, cells, columns }) => ({
    layer,
    cells: cells?.value ?? null,
    widths: columns.map((column) => column?.format.columnWidth ?? null),
  }));
}

/** Queues the writing back of looks that were read before. */
export function giveLooksBack(context: Excel.RequestContext, { layer, cells, widths }: Looks): void {
  const sheet = context.workbook.worksheets.getItem(layer.sheet);
  for (const [j, width] of widths.entries())
    if (width !== null) sheet.getRangeByIndexes(0, layer.column + j, 1, 1).getEntireColumn().format.columnWidth = width;
  if (!cells) return;
  const range = sheet.getRangeByIndexes(layer.row, layer.column, layer.cells.length, layer.cells[0]!.length);
  for (const [i, line] of layer.cells.entries())
    for (const [j, cell] of line.entries()) {
      const { fill, font } = cells[i]![j]!.format ?? {};
      if (!cell?.style || !font) continue;
      const { format } = range.getCell(i, j);
      Object.assign(
        format.font,
        Object.fromEntries(Object.entries(font).filter(([, value]) => value !== null && value !== undefined)),
      );
      // A cell without a fill reads as white; painting it white would hide the grid.
      if (!fill?.color || !fill.pattern || fill.pattern === "None") format.fill.clear();
      else format.fill.color = fill.color;
    }
}
