import { cosine } from "../../geometry/angle.ts";
import { degrees } from "../../measure/degrees.ts";
import type { Unit } from "../../measure/unit.ts";

/** The saw that cards and cautions mean: portable, with a 7 1/4 in blade (184 mm). It tilts to 45 degrees, and there goes through 1 3/4 in (common practice, no source). */
export const SAW = { tilt: 45, through: { in: 1.75, mm: 44 } } as const;

/** Degrees: what the last bits of a double add to 45. */
const NONE = 1e-6;

/**
 * Whether that saw goes through a board in one pass.
 *
 * Tilted, the blade has the thickness over the cosine of the tilt to go through.
 *
 * @param tilt degrees from square.
 *
 * @example
 * sawReaches(45, 1.5, "in") // => true
 * sawReaches(45, 2, "in") // => false
 * sawReaches(56.31, 1.5, "in") // => false
 */
export function sawReaches(tilt: number, thickness: number, unit: Unit): boolean {
  const most = SAW.through[unit] * (cosine(degrees(tilt)) / cosine(degrees(SAW.tilt)));
  return tilt <= SAW.tilt + NONE && thickness <= most * (1 + NONE);
}
