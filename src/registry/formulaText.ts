import { NAMESPACE, type Cell, type Example, type WorksheetFunction } from "./worksheetFunction.ts";

/** An example as typed in a sheet: `=RAFTER.JACKLEN("6/12", 48)`; a block in braces, its empty cells as "". */
export function formulaText({ name }: Pick<WorksheetFunction, "name">, { cells }: Pick<Example, "cells">): string {
  return `=${NAMESPACE}.${name}(${cells.map((cell) => (typeof cell === "object" ? blockText(cell) : cellText(cell))).join(", ")})`;
}

function blockText(rows: readonly (readonly (Cell | null)[])[]): string {
  return `{${rows.map((row) => row.map((cell) => cellText(cell ?? "")).join(",")).join(";")}}`;
}

/** A quote inside a text is typed twice: `"8' 7 3/16"""`. */
function cellText(cell: Cell): string {
  if (typeof cell === "string") return `"${cell.replaceAll('"', '""')}"`;
  return typeof cell === "boolean" ? String(cell).toUpperCase() : String(cell);
}
