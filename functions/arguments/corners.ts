import type { Degrees } from "../../src/measure/degrees.ts";
import { Failure, type AnyProblem, type Result } from "../../src/measure/result.ts";
import type { MemberProblem } from "../../src/roof/members/memberProblem.ts";
import { cornerAngle, otherPitch } from "../../src/registry/parameters.ts";
import { corner, type Corner } from "../../src/roof/members/corner.ts";

/** The last two parameters of every function of a corner. */
export const otherSide = [otherPitch(), cornerAngle()] as const;

/** What every function of a corner is given. */
export interface CornerGiven {
  readonly pitch: number;
  readonly otherPitch: number | null;
  readonly corner: Degrees;
}

/** Works at a corner; a second pitch that was left out is the same pitch. */
export function atCorner<T>(
  { pitch, otherPitch: other, corner: angle }: CornerGiven,
  work: (at: Corner) => T,
): Result<T, MemberProblem<"no hip">> {
  const at = corner(pitch, other ?? pitch, angle);
  return at instanceof Failure ? at : work(at);
}

/** Works on with a value of the core, or hands its reason on. (Not named "then": a module that exports that looks like a promise to import().) */
export function andThen<T, P extends AnyProblem, U>(value: Result<T, P>, work: (value: T) => U): Result<U, P> {
  return value instanceof Failure ? value : work(value);
}
