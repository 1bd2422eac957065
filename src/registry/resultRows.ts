import type { Cell, Output } from "./worksheetFunction.ts";

/** A result as the rows of texts that cells show; one value is one row of one cell. */
export function resultRows(result: Output): readonly (readonly string[])[] {
  return typeof result === "object" ? result.map((row) => row.map(shown)) : [[shown(result)]];
}

function shown(cell: Cell): string {
  return typeof cell === "boolean" ? String(cell).toUpperCase() : String(cell);
}
