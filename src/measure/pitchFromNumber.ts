import { Reason } from "./reason.ts";

/**
 * Rise over run of a pitch given as a bare number: the rise in 12, from 1 to 24.
 *
 * Less is what a sheet makes of 6:12 (a time) or of 50 %, more is what it makes of 6/12 (a date) or an angle in degrees; none is guessed at.
 *
 * @returns a Reason tagged "pitch below 1", "pitch above 24" or "not a pitch".
 *
 * @example
 * pitchFromNumber(6) // => 0.5
 * pitchFromNumber(0.25) // => new Reason("pitch below 1", { value: 0.25 })
 */
export function pitchFromNumber(value: number): number | Reason {
  return value >= 1 && value <= 24 ? value / 12 : refused(value);
}

function refused(value: number): Reason {
  if (!Number.isFinite(value)) return new Reason("not a pitch", { text: String(value) });
  return new Reason(value < 1 ? "pitch below 1" : "pitch above 24", { value });
}
