import { angleText } from "../canvas/shown.ts";
import type { Words } from "../canvas/words.ts";

/** Degrees: many portable saws tilt no further (common practice, no source). */
const MOST = 45;

/**
 * A tilt as it is set on the saw, in degrees; past what many saws have, also the one that makes the same cut from the square face.
 *
 * @example
 * sawText(56.309932, WORDS) // => "56.31° (or 33.69° from the square face)"
 */
export function sawText(tilt: number, words: Words): string {
  const shown = angleText(tilt);
  return parseFloat(shown) > MOST ? `${shown} ${words.card.fromSquare(angleText(90 - tilt))}` : shown;
}
