import { alongSlope } from "../../geometry/alongSlope.ts";
import { Failure, type Result } from "../../measure/result.ts";
import type { MemberProblem } from "./memberProblem.ts";
import { plumbDepthOf, seatOf } from "./commonRafter.ts";

/** How a tail ends: cut plumb, square to the slope, or plumb for a fascia and then level for a soffit. */
export type TailCut = "plumb" | "square" | "level";

/** A rafter's tail: its pitch as rise over run, the level overhang of its top edge, its depth and its height above plate. */
export interface TailShape {
  readonly pitch: number;
  readonly overhang: number;
  readonly depth: number;
  readonly heel: number;
  readonly cut: TailCut;
  /** Plumb depth of the cut above a level soffit; null for the other cuts. */
  readonly fascia: number | null;
}

/** What a tail comes to, in the unit of its lengths. */
export interface Tail {
  /** Board that it takes down the slope from the plumb line over the plate line. */
  readonly board: number;
  /** How far its lowest point hangs below the plate's top. */
  readonly below: number;
}

type TailProblem = MemberProblem<
  | "heel above depth"
  | "square tail cuts the seat"
  | "fascia missing"
  | "fascia not used"
  | "fascia too deep"
  | "fascia above the plate"
>;

/**
 * The board that a tail takes, and how low it hangs; whatever the cut, its top edge is overhang / cos A long.
 *
 * Down the slope from the top edge's tip the lower corner of the end lies: D tan A further for a plumb cut, which is
 * D / cos A tall; not at all for a square one, which is D cos A tall (as far as it stays outside the plate line, where the
 * notch ends it) and leans inward; p sin A for a plumb cut of depth p. From there a level cut climbs the board again and
 * takes nothing. With no overhang the seat's corner is the low end: heel sin A down the slope, level with the plate.
 *
 * @returns a reason: "heel above depth"; "square tail cuts the seat" where its cut would cross the plate line above the
 * plate (under heel sin A cos A of overhang); "fascia missing" and "fascia not used"; and those of {@link soffitCut}.
 *
 * @example
 * tailOf({ pitch: 0.75, overhang: 16, depth: 8, heel: 7, cut: "plumb", fascia: null }) // => { board: 26, below: 15 }
 * tailOf({ pitch: 0.75, overhang: 16, depth: 8, heel: 7, cut: "square", fascia: null }) // => { board: 20, below: 11.4 }
 * tailOf({ pitch: 0.75, overhang: 16, depth: 8, heel: 7, cut: "level", fascia: 5 }) // => { board: 23, below: 10 }
 */
export function tailOf({ pitch, overhang, depth, heel, cut, fascia }: TailShape): Result<Tail, TailProblem> {
  const seat = seatOf(pitch, depth, heel);
  if (seat instanceof Failure) return seat;
  const along = alongSlope(pitch);
  if (cut !== "level" && fascia !== null) return new Failure({ kind: "fascia not used" });
  if (cut === "square") {
    const least = (heel * pitch) / (along * along);
    if (overhang < least) return new Failure({ kind: "square tail cuts the seat", least });
    return { board: overhang * along, below: overhang * pitch + Math.min(depth / along, overhang / pitch) - heel };
  }
  if (cut === "level") {
    if (fascia === null) return new Failure({ kind: "fascia missing" });
    const soffit = soffitCut({ pitch, overhang, depth, fascia });
    if (soffit instanceof Failure) return soffit;
    if (fascia < heel - overhang * pitch)
      return new Failure({ kind: "fascia above the plate", least: heel - overhang * pitch });
  }
  if (overhang === 0) return { board: (heel * pitch) / along, below: 0 };
  const end = fascia ?? plumbDepthOf(pitch, depth);
  return { board: overhang * along + (end * pitch) / along, below: overhang * pitch + end - heel };
}

/**
 * Length of a soffit's level cut, from the foot of the tail's plumb cut in to the underside, or to the plate line.
 *
 * The plumb cut leaves D / cos A - p of the rafter's plumb depth under the level line; the underside climbs that much in
 * (D / cos A - p) / tan A. A short overhang ends before it: the cut then stops at the notch, plumb under the plate line.
 *
 * @returns a reason "fascia too deep" when the plumb cut leaves nothing to cut level.
 *
 * @example
 * soffitCut({ pitch: 0.75, overhang: 16, depth: 8, fascia: 5.5 }) // => 6
 * soffitCut({ pitch: 0.75, overhang: 4, depth: 8, fascia: 5.5 }) // => 4
 */
export function soffitCut({
  pitch,
  overhang,
  depth,
  fascia,
}: Pick<TailShape, "pitch" | "overhang" | "depth"> & { readonly fascia: number }): Result<
  number,
  MemberProblem<"fascia too deep">
> {
  const plumbDepth = plumbDepthOf(pitch, depth);
  return fascia < plumbDepth
    ? Math.min(overhang, (plumbDepth - fascia) / pitch)
    : new Failure({ kind: "fascia too deep", most: plumbDepth });
}

/**
 * Overhang that brings the fascia of the plane around the corner to the level of this one's.
 *
 * Both planes have one height above plate, so both fascias must fall alike: overhang times pitch on either side.
 *
 * @example
 * levelOverhang(0.5, 16, 0.75) // => 32 / 3
 */
export function levelOverhang(pitch: number, overhang: number, otherPitch: number): number {
  // In this order equal pitches give back the same overhang to the last bit.
  return overhang * (pitch / otherPitch);
}
