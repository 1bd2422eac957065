import type { Area } from "../host.ts";

/** Most cells in one request: Excel on the web takes 5 MB (read in its public documents), and a long formula has some hundred bytes. */
export const MOST_CELLS = 10_000;

/** Whole rows of an area, few enough for one request. */
export interface Band<T extends { readonly area: Area }> {
  readonly of: T;
  readonly from: number;
  readonly rows: number;
  readonly cells: number;
}

/** Areas in pieces, grouped so that each group fits one request and small areas share one. */
export function batches<T extends { readonly area: Area }>(all: readonly T[]): Band<T>[][] {
  const groups: Band<T>[][] = [];
  let room = 0;
  for (const band of all.flatMap(bands)) {
    if (band.cells > room) {
      groups.push([]);
      room = MOST_CELLS;
    }
    groups.at(-1)!.push(band);
    room -= band.cells;
  }
  return groups;
}

function bands<T extends { readonly area: Area }>(of: T): Band<T>[] {
  const { rows, columns } = of.area;
  const most = Math.max(1, Math.floor(MOST_CELLS / columns));
  return Array.from({ length: Math.ceil(rows / most) }, (_, k) => {
    const count = Math.min(most, rows - k * most);
    return { of, from: k * most, rows: count, cells: count * columns };
  });
}

/** The range of a piece. */
export function bandRange<T extends { readonly area: Area }>(
  context: Excel.RequestContext,
  { of: { area }, from, rows }: Band<T>,
): Excel.Range {
  return rangeOf(context, { ...area, row: area.row + from, rows });
}

/** The range of an area; its sheet may be given by name or by Excel's id. */
export function rangeOf(context: Excel.RequestContext, { sheet, row, column, rows, columns }: Area): Excel.Range {
  return context.workbook.worksheets.getItem(sheet).getRangeByIndexes(row, column, rows, columns);
}
