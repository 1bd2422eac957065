import type { Place } from "../../src/registry/refusal.ts";

/** Where a problem lies, as its message begins: a row of a roof block by its label alone. */
export function placeText({ argument, row, wing, heading, value }: Place): string {
  if (typeof row === "string") return wing === undefined ? row : `Wing ${wing}, ${row}`;
  return `${argument}${row === undefined ? "" : `, row ${row}`}${value === undefined ? "" : `, value ${value}`}${heading === undefined ? "" : `: ${heading}`}`;
}
