import { cosine, sine } from "../../geometry/angle.ts";
import { meetingLine } from "../../geometry/meetingLine.ts";
import type { Degrees } from "../../measure/degrees.ts";
import { Failure, type Result } from "../../measure/result.ts";
import type { MemberProblem } from "./memberProblem.ts";

/** What one side of a corner needs to know about the line in which its plane meets the other. */
export interface CornerSide {
  /** Rise over run of this side's plane. */
  readonly pitch: number;
  /** Tangent, sine and cosine of the plan angle f between this side's plate line and the meeting line. */
  readonly tan: number;
  readonly sin: number;
  readonly cos: number;
}

/** A corner of the plate, where two roof planes meet in a hip or a valley. */
export interface Corner {
  /** The side whose pitch was named first. */
  readonly near: CornerSide;
  readonly far: CornerSide;
  /** Rise over its own run of the meeting line. */
  readonly slope: number;
}

/** Meeting lines nearer to square across a plate line than this are: 6 and 12 in 12 at 120 degrees miss it by the last bit of a cosine only. */
const PARALLEL = 1e-12;

/**
 * The corner of two roof planes: pitches as rise over run, and the angle between the plate lines in degrees.
 *
 * The near plate runs along x and the far plate at the corner angle from it; the meeting line of the two planes gives
 * every angle of hip, valley and jack. There is a hip only where both plan angles stay under 90 degrees, that is where
 * each pitch is more than the other times minus the cosine of the corner.
 *
 * @returns a reason "no hip" with the rises in 12, the corner, and the least rise in 12 the flatter side would need.
 *
 * @example
 * corner(0.5, 0.5, degrees(90)).near.tan // => 1
 * corner(9 / 12, 1, degrees(90)).near.tan // => 4 / 3
 */
export function corner(nearPitch: number, farPitch: number, angle: Degrees): Result<Corner, MemberProblem<"no hip">> {
  const cosC = cosine(angle);
  const sinC = sine(angle);
  // Two planes in space never lie parallel here, and the line runs inward: the corner is less than 180 degrees.
  const { x, y } = meetingLine({ x: farPitch * sinC, y: -farPitch * cosC }, { x: 0, y: nearPitch })!;
  const across = farPitch + nearPitch * cosC;
  const least = PARALLEL * Math.max(nearPitch, farPitch);
  if (!(x > least) || !(across > least)) return noHip(nearPitch, farPitch, angle);
  const length = Math.sqrt(x * x + y * y);
  const farSine = nearPitch * sinC;
  return {
    near: { pitch: nearPitch, tan: y / x, sin: y / length, cos: x / length },
    far: { pitch: farPitch, tan: farSine / across, sin: farSine / length, cos: across / length },
    slope: (nearPitch * y) / length,
  };
}

function noHip(near: number, far: number, angle: Degrees): Failure<MemberProblem<"no hip">> {
  const limit = -cosine(angle) * Math.max(near, far);
  return new Failure({ kind: "no hip", pitch: near * 12, otherPitch: far * 12, corner: angle, least: limit * 12 });
}

/** The same corner seen from its other side. */
export function turned({ near, far, slope }: Corner): Corner {
  return { near: far, far: near, slope };
}
