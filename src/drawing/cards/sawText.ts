import { angleText } from "../canvas/shown.ts";
import type { Words } from "../canvas/words.ts";

/** Degrees: many portable saws tilt no further (common practice, no source). */
const MOST = 45;

/**
 * A tilt as it is set on the saw, in degrees; past what many saws have, with what to do instead.
 *
 * @example
 * sawText(56.309932, WORDS) // => "56.31° (past most saws: cut from both faces)"
 */
export function sawText(tilt: number, words: Words): string {
  const shown = angleText(tilt);
  return parseFloat(shown) > MOST ? `${shown} ${words.card.pastSaws}` : shown;
}
