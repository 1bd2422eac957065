import { Failure, type Result } from "./result.ts";
import type { ReadingProblem } from "./readingProblem.ts";

type BarePitchProblem = ReadingProblem<"pitch below 1" | "pitch above 24" | "not a pitch">;

/**
 * Rise over run of a pitch given as a bare number: the rise in 12, from 1 to 24.
 *
 * Less is what a sheet makes of 6:12 (a time) or of 50 %, more is what it makes of 6/12 (a date) or an angle in degrees; none is guessed at.
 *
 * @example
 * pitchFromNumber(6) // => 0.5
 * pitchFromNumber(0.25) // => new Failure({ kind: "pitch below 1" })
 */
export function pitchFromNumber(value: number): Result<number, BarePitchProblem> {
  return value >= 1 && value <= 24 ? value / 12 : refused(value);
}

function refused(value: number): Failure<BarePitchProblem> {
  if (!Number.isFinite(value)) return new Failure({ kind: "not a pitch" });
  return new Failure({ kind: value < 1 ? "pitch below 1" : "pitch above 24" });
}
