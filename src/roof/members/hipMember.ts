import { alongSlope } from "../../geometry/alongSlope.ts";
import { slopeAngle } from "../../geometry/angle.ts";
import type { Degrees } from "../../measure/degrees.ts";
import { Failure, type Result } from "../../measure/result.ts";
import type { RoofSpec } from "../frame/roofSpec.ts";
import type { MemberProblem } from "./memberProblem.ts";
import type { Corner } from "./corner.ts";
import { backing, dropOn, hipDrop, hipRun, shiftedHip, shortOfKings, shortOfRidge, type HipPlace } from "./hip.ts";
import { plumbEnd, endReach, tiltOf, type PlumbCut } from "./plumbEnd.ts";

/** One side of a hip. Lengths in one unit. */
export interface HipSide {
  /** Level distance of its face from the meeting line. */
  readonly face: number;
  /** How far this side's plane falls from the meeting line to that face. */
  readonly fall: number;
  /** By how much jacks of this side stand above its top corner. */
  readonly proud: number;
}

/** The hip of a corner as it is framed. Level distances are along its plan line from the corner's plumb line. */
export interface HipMember {
  /** Level from corner to apex. */
  readonly run: number;
  /** Level to its head on the center line of its top. */
  readonly headRun: number;
  /** Along the slope, from the corner's plumb line to the farthest point of its head within its own thickness. */
  readonly farthest: number;
  readonly near: HipSide;
  readonly far: HipSide;
  /** Plumb drop of its top. */
  readonly drop: number;
  /** Its head cut: across is level from the meeting line, positive to the far side. */
  readonly head: readonly PlumbCut[];
  readonly tilts: readonly Degrees[];
  /** Backing angles of near and far side; null unless the top is backed. */
  readonly backing: readonly [Degrees, Degrees] | null;
}

/**
 * The hip at a corner whose near side is the one along the ridge.
 *
 * Its head is found between the king commons' faces or on the ridge's face; its top is dropped, backed or shifted.
 */
export function hipMember(
  at: Corner,
  { hip, rafter, ridge, hipHead, hipTop }: Pick<RoofSpec, "hip" | "rafter" | "ridge" | "hipHead" | "hipTop">,
  nearRun: number,
): Result<HipMember, MemberProblem<"ridge fills the run" | "head past the corner">> {
  const { near, far, slope } = at;
  const half = hip.thickness / 2;
  const backed = hipTop === "backed";
  const place: HipPlace =
    hipTop === "shifted"
      ? shiftedHip(at, hip.thickness)
      : { nearFace: half, farFace: half, drop: backed ? 0 : hipDrop(at, hip.thickness) };
  const { nearFace, farFace, drop } = place;
  const run = hipRun(at, nearRun);
  const cuts =
    hipHead === "ridge"
      ? [{ at: run - shortOfRidge(at, ridge?.thickness ?? 0), per: -near.cos / near.sin }]
      : [
          { at: run - shortOfKings(near, rafter.thickness), per: near.tan },
          { at: run - shortOfKings(far, rafter.thickness), per: -far.tan },
        ];
  const head = plumbEnd(cuts, -nearFace, farFace);
  const headRun = endReach(cuts, (farFace - nearFace) / 2);
  if (!(headRun > 0))
    return new Failure({
      kind: hipHead === "ridge" ? "ridge fills the run" : "head past the corner",
      least: (run - headRun) * near.sin,
    });
  const sideOf = (face: number, fall: number): HipSide => ({
    face,
    fall,
    proud: backed ? 0 : Math.max(0, drop - fall),
  });
  return {
    run,
    headRun,
    farthest: Math.max(...[0, head.farthest].map((b) => along(at, endReach(cuts, b), backed ? b : 0))),
    near: sideOf(nearFace, dropOn(near, slope, nearFace)),
    far: sideOf(farFace, dropOn(far, slope, farFace)),
    drop,
    head: head.cuts,
    tilts: head.cuts.map(tiltOf),
    backing: backed ? [slopeAngle(backing(near, slope)), slopeAngle(backing(far, slope))] : null,
  };
}

/** Along the hip's slope for a level run; a backed top lies lower the farther across, and so ends less far along. */
function along({ near, far, slope }: Corner, level: number, across: number): number {
  const secant = alongSlope(slope);
  const lower = dropOn(across < 0 ? near : far, slope, Math.abs(across));
  return level * secant - (lower * slope) / secant;
}
