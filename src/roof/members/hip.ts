import { alongSlope } from "../../geometry/alongSlope.ts";
import { Failure, type Result } from "../../measure/result.ts";
import type { MemberProblem } from "./memberProblem.ts";
import type { Corner, CornerSide } from "./corner.ts";

/**
 * Level run of the hip for the level run of the near side's common, corner to apex.
 *
 * @example
 * hipRun(corner(0.5, 0.5, degrees(90)), 12) // => 12 * Math.SQRT2
 */
export function hipRun({ near }: Corner, run: number): number {
  return run / near.sin;
}

/** Length along the hip for a level distance along it. Lengths in one unit. */
export function alongHip({ slope }: Corner, level: number): number {
  return level * alongSlope(slope);
}

/**
 * How far short of the apex a hip's center line meets the near face of this side's king common, level along the hip.
 *
 * That face stands half the common's thickness off the apex. Between two king commons the larger of both sides governs.
 *
 * @example
 * shortOfKings(corner(0.5, 0.5, degrees(90)).near, 1.5) // => 0.75 * Math.SQRT2
 */
export function shortOfKings({ cos }: CornerSide, commonThickness: number): number {
  return commonThickness / 2 / cos;
}

/**
 * How far short of the apex a hip's center line meets the ridge's face, level along the hip.
 *
 * The ridge is parallel to the near plate, so half its thickness comes off the near run.
 *
 * @example
 * shortOfRidge(corner(0.5, 0.5, degrees(90)), 1.5) // => 0.75 * Math.SQRT2
 */
export function shortOfRidge({ near }: Corner, ridgeThickness: number): number {
  return ridgeThickness / 2 / near.sin;
}

/** Level distance from corner to the hip's head between king commons, on its center line. */
export function hipRunToKing(
  at: Corner,
  run: number,
  commonThickness: number,
): Result<number, MemberProblem<"head past the corner">> {
  const short = Math.max(shortOfKings(at.near, commonThickness), shortOfKings(at.far, commonThickness));
  const level = hipRun(at, run) - short;
  return level > 0 ? level : new Failure({ kind: "head past the corner", least: short * at.near.sin });
}

/** Level distance from corner to the hip's head on the ridge's face, on its center line. */
export function hipRunToRidge(
  at: Corner,
  run: number,
  ridgeThickness: number,
): Result<number, MemberProblem<"ridge fills the run">> {
  const level = hipRun(at, run) - shortOfRidge(at, ridgeThickness);
  return level > 0 ? level : new Failure({ kind: "ridge fills the run", least: ridgeThickness / 2 });
}

/**
 * Plumb drop that puts a top corner of a square-topped hip into this side's plane, its face standing `face` from the meeting line.
 *
 * Across the hip the plane falls by the hip's slope over the tangent of the plan angle.
 */
export function dropOn(side: CornerSide, slope: number, face: number): number {
  return (face * slope) / side.tan;
}

/**
 * Plumb drop of a square-topped hip centered on the meeting line: the larger side's, so that no corner stands above a plane.
 *
 * @example
 * hipDrop(corner(0.5, 0.5, degrees(90)), 1.5) // => 0.75 * 0.5 * Math.SQRT1_2
 */
export function hipDrop({ near, far, slope }: Corner, hipThickness: number): number {
  return Math.max(dropOn(near, slope, hipThickness / 2), dropOn(far, slope, hipThickness / 2));
}

/** Where the two faces of a hip stand, level from the meeting line, and how far its square top is dropped. */
export interface HipPlace {
  readonly nearFace: number;
  readonly farFace: number;
  readonly drop: number;
}

/**
 * A hip shifted sideways until both of its top corners lie in their planes.
 *
 * Both drops must be alike: the faces stand off the meeting line as the tangents of the plan angles.
 */
export function shiftedHip({ near, far, slope }: Corner, hipThickness: number): HipPlace {
  const nearFace = (hipThickness * near.tan) / (near.tan + far.tan);
  return { nearFace, farFace: hipThickness - nearFace, drop: dropOn(near, slope, nearFace) };
}

/**
 * Tangent of the backing angle on this side: the bevel of the hip's top to this side's plane, from square across.
 *
 * The sine of the hip's slope over the tangent of the plan angle.
 */
export function backing(side: CornerSide, slope: number): number {
  return slope / alongSlope(slope) / side.tan;
}

/**
 * Where a jack's center meets the hip's near face: level distance along the hip from the corner, squared across to its center line.
 *
 * The near face stands `face` off the meeting line, which brings the mark back by face times tan f; measured on the
 * center line every jack would sit wrong by that much. A foot that stands on a valley meets the face above it: give `face` below 0, and the mark comes later by as much.
 */
export function hipMarkRun(side: CornerSide, offset: number, face: number): number {
  return offset / side.cos - face * side.tan;
}
