import { bareNumber } from "../measure/bareNumber.ts";
import { cleanText } from "../measure/cleanText.ts";

/** Degrees of a typed angle, with or without its sign; not-a-number for any other text. */
export function readAngle(text: string): number {
  const bare = cleanText(text)?.replace(/ ?(?:°|º|deg\.?|degrees?)$/, "") ?? "";
  return bare.includes("e") ? NaN : (bareNumber(bare) ?? NaN);
}
