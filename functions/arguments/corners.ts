import type { Degrees } from "../../src/measure/degrees.ts";
import { Reason } from "../../src/measure/reason.ts";
import { cornerAngle, otherPitch } from "../../src/registry/parameters.ts";
import { corner, type Corner } from "../../src/roof/members/corner.ts";

/** The last two parameters of every function of a corner. */
export const otherSide = [otherPitch(), cornerAngle()] as const;

/**
 * Works at a corner whose second pitch may be left out: the same pitch then, by the same formulas.
 *
 * Hands the core's reason on when the planes make no hip.
 */
export function atCorner<T>(pitch: number, other: number | null, angle: Degrees, work: (at: Corner) => T): T | Reason {
  const at = corner(pitch, other ?? pitch, angle);
  return at instanceof Reason ? at : work(at);
}

/** Works on with a value of the core, or hands its reason on. (Not named "then": a module that exports that looks like a promise to import().) */
export function andThen<T, U>(value: T | Reason, work: (value: T) => U): U | Reason {
  return value instanceof Reason ? value : work(value);
}
