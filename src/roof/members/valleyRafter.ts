import { Failure, type Result } from "../../measure/result.ts";
import { hipRun, hipRunToRidge } from "./hip.ts";
import type { MemberProblem } from "./memberProblem.ts";
import type { Corner, CornerSide } from "./corner.ts";
import type { PlumbCut } from "./plumbEnd.ts";
import { crippleRun } from "./valley.ts";

/**
 * The head of a supporting valley on the main ridge's face; the near side is the main plane, and across is positive to it.
 *
 * The board stands under the line where the planes meet, and the ridge is parallel to the near plate: the head is longer on the far face.
 *
 * @returns a reason "ridge fills the run" with the run that must be passed.
 */
export function supportingHead(
  at: Corner,
  run: number,
  ridgeThickness: number,
): Result<PlumbCut, MemberProblem<"ridge fills the run">> {
  const level = hipRunToRidge(at, run, ridgeThickness);
  return level instanceof Failure ? level : { at: level, per: -1 / at.near.tan };
}

/**
 * The head of a shortened valley on the side of the supporting one; the near side is the main plane, and across is positive to it.
 *
 * Run is level from the main plate line to where the two valleys cross. Both inner corners are alike, so the valleys cross at twice the near plan angle, and
 * half the supporting valley's thickness comes off over the sine of that: square only where it is 90 degrees.
 *
 * @returns a reason "valley vanishes" with the run that must be passed.
 */
export function shortenedHead(
  at: Corner,
  run: number,
  valleyThickness: number,
): Result<PlumbCut, MemberProblem<"valley vanishes">> {
  const { sin, cos } = at.near;
  const twice = 2 * sin * cos;
  const level = hipRun(at, run) - valleyThickness / 2 / twice;
  return level > 0
    ? { at: level, per: -(cos * cos - sin * sin) / twice }
    : new Failure({ kind: "valley vanishes", least: valleyThickness / 4 / cos });
}

/**
 * Level runs of a valley cripple, in the main plane from the shortened valley up to the supporting one, on its long side and its short side.
 *
 * Both ends slant the same way, so the sides differ by twice the thickness over a jack's. Distance is the offset from the supporting valley's inner corner less
 * that from the shortened valley's, along the plate line; both inner corners are alike.
 *
 * @returns a reason "valley cripple vanishes" with the least distance.
 */
export function valleyCrippleRuns(
  side: CornerSide,
  distance: number,
  valleyThickness: number,
  crippleThickness: number,
): Result<{ long: number; short: number }, MemberProblem<"valley cripple vanishes">> {
  const center = crippleRun(side, distance, valleyThickness, valleyThickness);
  const slant = crippleThickness * side.tan;
  return !(center instanceof Failure) && center > slant
    ? { long: center + slant, short: center - slant }
    : new Failure({ kind: "valley cripple vanishes", least: valleyThickness / side.sin + crippleThickness });
}
