import { Failure, type Result } from "../../measure/result.ts";
import type { MemberProblem } from "./memberProblem.ts";
import type { CornerSide } from "./corner.ts";

/**
 * Level runs of a valley jack from the ridge's face down to the valley's face: on its long side and on its short side.
 *
 * Its long point is at the foot, on the side nearer the inner corner. Offset is along the plate line from the inner corner.
 *
 * @returns a reason "jack wider than offset"; "valley jack vanishes" with the largest offset that leaves a short side; or "no valley jack fits" with the
 * run that is needed before any offset does.
 */
export function valleyJackRuns(
  side: CornerSide,
  offset: number,
  run: number,
  valleyThickness: number,
  jackThickness: number,
  ridgeThickness: number,
): Result<
  { long: number; short: number },
  MemberProblem<"no valley jack fits" | "jack wider than offset" | "valley jack vanishes">
> {
  const faces = ridgeThickness / 2 + valleyThickness / 2 / side.cos;
  const center = run - faces - offset * side.tan;
  const half = (jackThickness * side.tan) / 2;
  if (run <= faces + 3 * half) return new Failure({ kind: "no valley jack fits", least: faces + 3 * half });
  if (jackThickness > offset)
    return new Failure({ kind: "jack wider than offset", thickness: jackThickness, offset, least: jackThickness });
  if (!(center > half))
    return new Failure({ kind: "valley jack vanishes", most: offset + (center - half) / side.tan, offset });
  return { long: center + half, short: center - half };
}

/**
 * Level run of a cripple between a parallel hip and valley, the same on both of its faces.
 *
 * Hip and valley stand a distance X apart along the plate, and each takes half its thickness along the cripple.
 *
 * @returns a reason "cripple vanishes" with the least distance.
 */
export function crippleRun(
  side: CornerSide,
  distance: number,
  hipThickness: number,
  valleyThickness: number,
): Result<number, MemberProblem<"cripple vanishes">> {
  const run = distance * side.tan - (hipThickness + valleyThickness) / 2 / side.cos;
  return run > 0
    ? run
    : new Failure({ kind: "cripple vanishes", least: (hipThickness + valleyThickness) / 2 / side.sin });
}
