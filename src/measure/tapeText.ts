import Fraction from "fraction.js";
import { tapeRound } from "./tapeRound.ts";
import type { TapeDivision } from "./tapeRound.ts";

/**
 * Inches as read on a tape, in feet, inches and a fraction in lowest terms: 9' 4 5/8".
 *
 * Rounded once, by {@link tapeRound}. Under a foot the feet are left out; past a foot the whole inches are kept even when
 * they are 0 (8' 0", 8' 0 3/16"), so that none can be taken for left out. A negative length has one minus in front of it all. Finite numbers only; others come back as JavaScript names them.
 *
 * @example
 * tapeText(112.625) // => "9' 4 5/8\""
 * tapeText(-0.25) // => "-1/4\""
 */
export function tapeText(inches: number, smallest: TapeDivision = 16): string {
  const rounded = tapeRound(inches, smallest);
  if (!Number.isFinite(rounded)) return String(rounded);
  const length = Math.abs(rounded);
  const rest = length % 12;
  const feet = (length - rest) / 12;
  const inchesText = new Fraction(rest * smallest, smallest).toFraction(true);
  const footText = feet === 0 ? "" : rest > 0 && rest < 1 ? `${feet}' 0 ` : `${feet}' `;
  return `${rounded < 0 ? "-" : ""}${footText}${inchesText}"`;
}
