import { plumbDepthOf } from "../members/commonRafter.ts";
import type { CornerSide } from "../members/corner.ts";
import { Failure } from "../../measure/result.ts";
import type { HipCorner } from "./bearers.ts";
import type { FrameProblem } from "./frameProblem.ts";
import type { RoofSpec } from "./roofSpec.ts";

/** How far hips on the ridge reach along its face, so far off its line, on the inner side of the apex. */
export const hipsReach = ({ at: { near }, member }: HipCorner, ridgeFace: number): number =>
  member.near.face / near.sin - (ridgeFace * near.cos) / near.sin;

/** A hip that ends above the plate; null where it reaches it. */
export function hipTooShallow(
  { at, member }: HipCorner,
  { hip: { depth } }: RoofSpec,
  heel: number,
): Failure<FrameProblem> | null {
  const [own, need] = [plumbDepthOf(at.slope, depth), heel - member.drop];
  return own <= need
    ? new Failure({ kind: "hip does not reach the plate", at: "hip", least: need * (depth / own) })
    : null;
}

/** How far apart along a plate line a hip's corner and a valley's must be for the two boards to keep clear of each other from the fascia, `overhang` out, to `run` in. */
export function hipBesideValley(
  { at: { near: hip }, member }: HipCorner,
  valley: CornerSide,
  thickness: number,
  overhang: number,
  run: number,
): number {
  const boards = Math.max(member.near.face, member.far.face) / hip.sin + thickness / 2 / valley.sin;
  const over = 1 / hip.tan - 1 / valley.tan;
  return boards + Math.max(-overhang * over, 0, run * over);
}
