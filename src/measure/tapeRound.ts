import { halfUp } from "./halfUp.ts";

/** The smallest division of a tape, as the fraction of an inch that it is: 16 for sixteenths. */
export type TapeDivision = 2 | 4 | 8 | 16 | 32 | 64;

/**
 * Inches to the nearest mark of a tape; half way goes up, towards positive infinity for negative lengths too.
 *
 * Exact: a double times a power of two loses nothing, and {@link halfUp} neither. From 2^52 on every double is whole already.
 *
 * @example
 * tapeRound(53.3183) // => 53.3125
 * tapeRound(-0.03125) // => 0
 */
export function tapeRound(inches: number, smallest: TapeDivision = 16): number {
  return Math.abs(inches) < 2 ** 52 ? halfUp(inches * smallest) / smallest : inches;
}
