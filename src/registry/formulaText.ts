import { NAMESPACE, type Cell, type Example, type WorksheetFunction } from "./worksheetFunction.ts";

/** An example as typed in a sheet: `=RAFTER.JACKLEN("6/12", 48)`. */
export function formulaText({ name }: Pick<WorksheetFunction, "name">, { cells }: Pick<Example, "cells">): string {
  return `=${NAMESPACE}.${name}(${cells.map(argumentText).join(", ")})`;
}

/** One argument as typed in a formula: text in quotes, a block in braces, its empty cells as "". */
export function argumentText(argument: Example["cells"][number]): string {
  return typeof argument === "object"
    ? `{${argument.map((row) => row.map((cell) => cellText(cell ?? "")).join(",")).join(";")}}`
    : cellText(argument);
}

/** A quote inside a text is typed twice: `"9' 4 5/8"""`. */
function cellText(cell: Cell): string {
  return typeof cell === "string" ? `"${cell.replaceAll('"', '""')}"` : String(cell).toUpperCase();
}
