import type { Input } from "./worksheetFunction.ts";

/** Hosts hand over blank cells as undefined, null or empty text; all are blank here. */
export function isBlank(cell: Input): boolean {
  return cell === undefined || cell === null || cell === "";
}

/** Whether a text of a number was refused for its comma. Looks at the first characters only. */
export function hasComma(cell: Input): boolean {
  return typeof cell === "string" && /\d,\d/.test(cell.slice(0, 64));
}
