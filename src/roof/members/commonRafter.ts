import { alongSlope } from "../../geometry/alongSlope.ts";
import { Failure, type Result } from "../../measure/result.ts";
import type { MemberProblem } from "./memberProblem.ts";

/**
 * Length of a common from the plumb line over the plate line to the ridge's face, along its top edge.
 *
 * Half the ridge stands in the run. Pitch as rise over run; lengths in one unit.
 *
 * @example
 * commonLength(0.75, 96, 0) // => 120
 */
export function commonLength(
  pitch: number,
  run: number,
  ridgeThickness: number,
): Result<number, MemberProblem<"ridge fills the run">> {
  const level = run - ridgeThickness / 2;
  return level > 0
    ? level * alongSlope(pitch)
    : new Failure({ kind: "ridge fills the run", least: ridgeThickness / 2 });
}

/**
 * Height above plate: plumb from the plate's top to the rafter's top edge, over the plate line.
 *
 * A seat of the given level width cut into a rafter of the given depth leaves depth / cos A - seat tan A.
 *
 * @example
 * heelOf(0.75, 8, 4) // => 7
 */
export function heelOf(
  pitch: number,
  depth: number,
  seat: number,
): Result<number, MemberProblem<"seat takes the heel">> {
  const heel = depth * alongSlope(pitch) - seat * pitch;
  return heel > 0 ? heel : new Failure({ kind: "seat takes the heel", most: (depth * alongSlope(pitch)) / pitch });
}

/**
 * Level width of the seat that a rafter of this depth has when it stands this high above the plate.
 *
 * @returns a reason "heel above depth" when nothing is left to notch: the heel must be less than the plumb depth.
 *
 * @example
 * seatOf(0.75, 8, 7) // => 4
 */
export function seatOf(pitch: number, depth: number, heel: number): Result<number, MemberProblem<"heel above depth">> {
  const plumbDepth = plumbDepthOf(pitch, depth);
  return heel < plumbDepth ? (plumbDepth - heel) / pitch : new Failure({ kind: "heel above depth", most: plumbDepth });
}

/**
 * Depth of the notch over the plate, square to the slope: D - heel cos A.
 *
 * Its inner corner is the plate's outer top edge, one heel plumb below the top edge and so heel cos A square below it.
 *
 * @returns the reason of {@link seatOf}.
 *
 * @example
 * notchOf(0.75, 8, 7) // => 2.4
 */
export function notchOf(pitch: number, depth: number, heel: number): Result<number, MemberProblem<"heel above depth">> {
  const seat = seatOf(pitch, depth, heel);
  return seat instanceof Failure ? seat : notchOfSeat(pitch, seat);
}

/**
 * Depth of the notch that a level seat of this width makes, square to the slope: seat sin A.
 *
 * @example
 * notchOfSeat(0.75, 4) // => 2.4
 */
export function notchOfSeat(pitch: number, seat: number): number {
  return (seat * pitch) / alongSlope(pitch);
}

/**
 * Depth of a plumb-cut end: depth / cos A.
 *
 * @example
 * plumbDepthOf(0.75, 8) // => 10
 */
export function plumbDepthOf(pitch: number, depth: number): number {
  return depth * alongSlope(pitch);
}

/**
 * The shortest straight board that holds a rafter with a level run to its long point, its tail included.
 *
 * Plumb cuts at both ends lean by depth times tan A. With no overhang the tail is gone and the seat's corner, one heel
 * plumb below the top edge, is the low end instead; so a tail shorter than what the heel takes never counts for more.
 * Lengths in one unit; the run is to the long point.
 *
 * @example
 * shortestBoard({ pitch: 0.75, run: 80, overhang: 16, depth: 8, heel: 7 }) // => 126
 * shortestBoard({ pitch: 0.75, run: 80, overhang: 0, depth: 8, heel: 5 }) // => 103
 */
export function shortestBoard({
  pitch,
  run,
  overhang,
  depth,
  heel,
}: {
  pitch: number;
  run: number;
  overhang: number;
  depth: number;
  heel: number;
}): number {
  const along = alongSlope(pitch);
  return overhang > 0 ? (run + overhang) * along + depth * pitch : run * along + (heel * pitch) / along;
}
