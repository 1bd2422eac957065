import { alongSlope } from "../geometry/alongSlope.ts";
import { directionAngle, slopeAngle } from "../geometry/angle.ts";
import type { Degrees } from "../measure/degrees.ts";
import { Reason } from "../measure/reason.ts";
import type { Corner } from "./corner.ts";
import { backing, dropOn, hipDrop, hipRun, hipRunToKing, hipRunToRidge, shiftedHip } from "./hip.ts";
import type { RoofSpec } from "./roofSpec.ts";

/** The hip of a corner as it is framed. Level distances are along its plan line from the corner's plumb line. */
export interface HipMember {
  /** Level from corner to apex. */
  readonly run: number;
  /** Level to its head on the top's centre line, and to the farthest point that the head has within the hip's thickness. */
  readonly headRun: number;
  readonly farthestRun: number;
  /** Level distances of its two faces from the meeting line. */
  readonly mainFace: number;
  readonly endFace: number;
  /** Plumb drop of its top, and by how much jacks of each side stand above its top corner. */
  readonly drop: number;
  readonly mainProud: number;
  readonly endProud: number;
  /** How far below the meeting line its top arris stands at each face: what a jack's plane is measured from there. */
  readonly mainFall: number;
  readonly endFall: number;
  readonly tilts: readonly Degrees[];
  /** Backing angles of main and end side; null unless the top is backed. */
  readonly backing: readonly [Degrees, Degrees] | null;
}

/**
 * The hip at a corner whose near side is the main side.
 *
 * Its head is found between the king commons' faces or on the ridge's face; its top is dropped, backed or shifted.
 */
export function hipMember(at: Corner, { hip, rafter, ridge, hipHead, hipTop }: RoofSpec, mainRun: number): HipMember | Reason {
  const headRun = hipHead === "ridge" ? hipRunToRidge(at, mainRun, ridge?.thickness ?? 0) : hipRunToKing(at, mainRun, rafter.thickness);
  if (headRun instanceof Reason) return headRun;
  const { near, far, slope } = at;
  const half = hip.thickness / 2;
  const place = hipTop === "shifted" ? shiftedHip(at, hip.thickness) : { nearFace: half, farFace: half, drop: hipTop === "backed" ? 0 : hipDrop(at, hip.thickness) };
  const mainFall = dropOn(near, slope, place.nearFace);
  const endFall = dropOn(far, slope, place.farFace);
  const backed = hipTop === "backed";
  return {
    run: hipRun(at, mainRun),
    headRun,
    farthestRun: hipHead === "ridge" ? headRun + (place.nearFace * near.cos) / near.sin : hipRun(at, mainRun) - setBack(at, rafter.thickness, place.nearFace, place.farFace),
    mainFace: place.nearFace,
    endFace: place.farFace,
    drop: place.drop,
    mainProud: backed ? 0 : Math.max(0, place.drop - mainFall),
    endProud: backed ? 0 : Math.max(0, place.drop - endFall),
    mainFall,
    endFall,
    tilts: hipHead === "ridge" ? [directionAngle(near.sin, near.cos)] : [directionAngle(near.cos, near.sin), directionAngle(far.cos, far.sin)],
    backing: backed ? [slopeAngle(backing(near, slope)), slopeAngle(backing(far, slope))] : null,
  };
}

/**
 * How far short of the apex the farthest point of a head between king commons lies, within the hip's two faces.
 *
 * The two cheeks meet in a plumb edge; it lies off the centre line where the pitches differ, and past a face it is cut away.
 */
function setBack({ near, far }: Corner, commonThickness: number, nearFace: number, farFace: number): number {
  const half = commonThickness / 2;
  const whole = near.sin * far.cos + near.cos * far.sin;
  const aside = (half * (far.cos - near.cos)) / whole; // towards the end side, where positive
  const v = Math.min(Math.max(aside, -nearFace), farFace);
  return Math.max((half - v * near.sin) / near.cos, (half + v * far.sin) / far.cos);
}

/** Along the slope of the hip for a level distance along it. */
export function hipLength(at: Corner, level: number): number {
  return level * alongSlope(at.slope);
}
