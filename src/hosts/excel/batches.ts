import { MOST_CELLS, bands, type Band, type Layer } from "./layers.ts";

/** The pieces of all layers, grouped so that each group fits one request and small layers share one. */
export function batches(all: readonly Layer[]): Band[][] {
  const groups: Band[][] = [];
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
