import { cleanText } from "../measure/cleanText.ts";

/** Degrees of a typed angle, with or without its sign; not-a-number for any other text. */
export function readAngle(text: string): number {
  const clean = cleanText(text);
  const parts = clean === null ? null : /^(\d{1,3}(?:\.\d{0,15})?) ?(?:°|º|deg\.?|degrees?)?$/.exec(clean);
  return parts ? Number(parts[1]) : NaN;
}
