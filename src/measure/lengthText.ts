import { halfUp } from "./halfUp.ts";
import type { TapeDivision } from "./tapeRound.ts";
import { tapeText } from "./tapeText.ts";
import type { Unit } from "./unit.ts";

/**
 * A length for people: tape text for inches, whole millimeters (half up), and up to 3 decimals where there is no unit.
 *
 * @example
 * lengthText(112.625, "in") // => "9' 4 5/8\""
 * lengthText(2860.5, "mm") // => "2861 mm"
 * lengthText(53.31830281, null) // => "53.318"
 */
export function lengthText(value: number, unit: Unit | null, smallest?: TapeDivision): string {
  if (unit === "in") return tapeText(value, smallest);
  if (unit === "mm") return `${halfUp(value)} mm`;
  return String(Number(value.toFixed(3)));
}
