import type { Degrees } from "../../src/measure/degrees.ts";
import { Failure, type AnyProblem, type Result } from "../../src/measure/result.ts";
import type { MemberProblem } from "../../src/roof/members/memberProblem.ts";
import { cornerAngle, otherPitch } from "../../src/registry/parameters.ts";
import { corner, type Corner } from "../../src/roof/members/corner.ts";

/** The last two parameters of every function of a corner. */
export const otherSide = [otherPitch(), cornerAngle()] as const;

/**
 * Works at a corner whose second pitch may be left out: the same pitch then, by the same formulas.
 *
 * Hands the core's reason on when the planes make no hip.
 */
export function atCorner<T>(
  pitch: number,
  other: number | null,
  angle: Degrees,
  work: (at: Corner) => T,
): Result<T, MemberProblem<"no hip">> {
  const at = corner(pitch, other ?? pitch, angle);
  return at instanceof Failure ? at : work(at);
}

/** Works on with a value of the core, or hands its reason on. (Not named "then": a module that exports that looks like a promise to import().) */
export function andThen<T, P extends AnyProblem, U>(value: Result<T, P>, work: (value: T) => U): Result<U, P> {
  return value instanceof Failure ? value : work(value);
}
