import { Refusal } from "./refusal.ts";
import type { Input } from "./worksheetFunction.ts";

/** The refusal of what was typed for an argument or a row: its name stands in front. */
export function refuse(name: string, words: string): Refusal {
  return new Refusal("#VALUE!", `${name}: ${words}`);
}

/** The refusal of an empty cell. */
export function missing(name: string, example: string): Refusal {
  return refuse(name, `nothing was given. Type ${example}.`);
}

/** What to do about a comma, whichever of its two uses was meant. */
export const COMMA = "Type a decimal point instead of a decimal comma, and leave out a comma between thousands.";

/** Whether a text of a number was refused for its comma. Looks at the first characters only. */
export function hasComma(cell: Input): boolean {
  return typeof cell === "string" && /\d,\d/.test(cell.slice(0, 64));
}
