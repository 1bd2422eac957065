import { bareNumber } from "../../measure/bareNumber.ts";

/** What is typed, as a cell holds it: a bare number as a number, so that the sheet can reckon with it; all else as typed. */
export function typedCell(text: string): number | string {
  const clean = text.trim();
  return bareNumber(clean) ?? clean;
}
