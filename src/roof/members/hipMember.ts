import { alongSlope } from "../../geometry/alongSlope.ts";
import { directionAngle, slopeAngle } from "../../geometry/angle.ts";
import type { Degrees } from "../../measure/degrees.ts";
import { Failure, type Result } from "../../measure/result.ts";
import type { MemberProblem } from "./memberProblem.ts";
import type { Corner } from "./corner.ts";
import { backing, dropOn, hipDrop, hipRun, shiftedHip, shortOfKings, shortOfRidge, type HipPlace } from "./hip.ts";
import type { RoofSpec } from "../frame/roofSpec.ts";

/** The hip of a corner as it is framed. Level distances are along its plan line from the corner's plumb line. */
export interface HipMember {
  /** Level from corner to apex. */
  readonly run: number;
  /** Level to its head on the centre line of its top. */
  readonly headRun: number;
  /** Along the slope, from the corner's plumb line to the farthest point of its head within its own thickness. */
  readonly farthest: number;
  /** Level distances of its two faces from the meeting line. */
  readonly mainFace: number;
  readonly endFace: number;
  /** Plumb drop of its top, and by how much jacks of each side stand above its top corner. */
  readonly drop: number;
  readonly mainProud: number;
  readonly endProud: number;
  /** How far each side's plane falls from the meeting line to the hip's face. */
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
export function hipMember(
  at: Corner,
  { hip, rafter, ridge, hipHead, hipTop }: Pick<RoofSpec, "hip" | "rafter" | "ridge" | "hipHead" | "hipTop">,
  mainRun: number,
): Result<HipMember, MemberProblem<"ridge fills the run" | "head past the corner">> {
  const { near, far, slope } = at;
  const half = hip.thickness / 2;
  const place =
    hipTop === "shifted"
      ? shiftedHip(at, hip.thickness)
      : { nearFace: half, farFace: half, drop: hipTop === "backed" ? 0 : hipDrop(at, hip.thickness) };
  const head =
    hipHead === "ridge" ? ridgeHead(at, ridge?.thickness ?? 0, place) : kingHead(at, rafter.thickness, place);
  const run = hipRun(at, mainRun);
  const short = head.shortOf((place.farFace - place.nearFace) / 2);
  const headRun = run - short;
  if (!(headRun > 0))
    return new Failure({
      kind: hipHead === "ridge" ? "ridge fills the run" : "head past the corner",
      least: short * near.sin,
    });
  const mainFall = dropOn(near, slope, place.nearFace);
  const endFall = dropOn(far, slope, place.farFace);
  const backed = hipTop === "backed";
  return {
    run,
    headRun,
    farthest: Math.max(...[0, head.farthest].map((b) => along(at, run - head.shortOf(b), backed ? b : 0))),
    mainFace: place.nearFace,
    endFace: place.farFace,
    drop: place.drop,
    mainProud: backed ? 0 : Math.max(0, place.drop - mainFall),
    endProud: backed ? 0 : Math.max(0, place.drop - endFall),
    mainFall,
    endFall,
    tilts: head.tilts,
    backing: backed ? [slopeAngle(backing(near, slope)), slopeAngle(backing(far, slope))] : null,
  };
}

/** A head cut: how far short of the apex it ends at a level distance b across from the meeting line, positive to the end side. */
interface Head {
  shortOf(b: number): number;
  /** Where across it reaches farthest, within the hip's faces. */
  readonly farthest: number;
  readonly tilts: readonly Degrees[];
}

function ridgeHead(at: Corner, ridgeThickness: number, { nearFace }: HipPlace): Head {
  return {
    shortOf: (b) => shortOfRidge(at, ridgeThickness, b),
    farthest: -nearFace,
    tilts: [directionAngle(at.near.sin, at.near.cos)],
  };
}

/**
 * Two cheeks against the king commons meet in a plumb edge, off the centre line where the pitches differ.
 *
 * Past a face of the hip the edge is cut away, and one cheek is all there is: that of the larger plan angle.
 */
function kingHead(at: Corner, commonThickness: number, { nearFace, farFace }: HipPlace): Head {
  const { near, far } = at;
  const edge = ((commonThickness / 2) * (far.cos - near.cos)) / (near.sin * far.cos + near.cos * far.sin);
  const tilts = [directionAngle(near.cos, near.sin), directionAngle(far.cos, far.sin)];
  return {
    shortOf: (b) => shortOfKings(at, commonThickness, b),
    farthest: Math.min(Math.max(edge, -nearFace), farFace),
    tilts: edge <= -nearFace ? tilts.slice(1) : edge >= farFace ? tilts.slice(0, 1) : tilts,
  };
}

/** Along the hip's slope for a level run; a backed top lies lower the farther across, and so ends less far along. */
function along({ near, far, slope }: Corner, level: number, across: number): number {
  const secant = alongSlope(slope);
  const lower = dropOn(across < 0 ? near : far, slope, Math.abs(across));
  return level * secant - (lower * slope) / secant;
}
