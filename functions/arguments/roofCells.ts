import type { Row } from "./roofBlock.ts";

/** A roof block as cells, for an example: a row for each label, in the order given. */
export function roofCells(rows: Partial<Record<Row, string | number>>): [string, string | number][] {
  return Object.entries(rows);
}
