import type { Area } from "../host.ts";

/** Most bytes that a request, or what it asks for, is meant to weigh: a tenth of what Excel on the web takes (5 MB, read in its public documents). */
const MOST_BYTES = 450_000;

/** What a cell weighs in an answer with its formula, value, type and format, nearly: 17 digits twice, and words. */
const READ_BYTES = 80;

/** Whole rows of an area, light enough for one request. */
export interface Band<T extends { readonly area: Area }> {
  readonly of: T;
  readonly from: number;
  readonly rows: number;
  readonly cells: number;
}

/**
 * Areas in pieces, grouped so that each group fits one request and small areas share one.
 *
 * @param bytes what a row of an area weighs in the request or in its answer, the first being 0.
 */
export function batches<T extends { readonly area: Area }>(
  all: readonly T[],
  bytes: (of: T, row: number) => number = ({ area }) => area.columns * READ_BYTES,
): Band<T>[][] {
  const groups: Band<T>[][] = [];
  let room = 0;
  for (const of of all) {
    let band: { of: T; from: number; rows: number; cells: number } | null = null;
    for (let row = 0; row < of.area.rows; row++) {
      const weight = bytes(of, row);
      if (weight > room || !groups.length) {
        groups.push([]);
        room = MOST_BYTES;
        band = null;
      }
      if (!band) groups.at(-1)!.push((band = { of, from: row, rows: 0, cells: 0 }));
      band.rows++;
      band.cells += of.area.columns;
      room -= weight;
    }
  }
  return groups;
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
