/**
 * Length along a slope for each unit of level run: the secant of its angle.
 *
 * By Pythagoras on a run of 1 and a rise of the slope; no angle is taken, so nothing is lost.
 *
 * @example
 * alongSlope(0.75) // => 1.25
 */
export function alongSlope(riseOverRun: number): number {
  return Math.sqrt(1 + riseOverRun * riseOverRun);
}
