import { beyond } from "./half.ts";
import type { Half } from "./half.ts";
import { frameOf } from "./frame.ts";
import type { Frame } from "./frame.ts";
import { add, dot, scale, UP } from "./vector.ts";
import type { RoofCorner, Side } from "./corner.ts";
import type { Cuts } from "./member.ts";
import type { Vec } from "./vector.ts";

/** The top line of a common or jack of a side whose center stands at an offset along the plate line. */
export const rafterFrame = ({ at, heel }: RoofCorner, { plate, inward, pitch }: Side, offset: number): Frame =>
  frameOf(add(add(at, scale(plate, offset)), [0, 0, heel]), add(inward, [0, 0, pitch]));

/** Everything inside a plate line, or inside a line parallel to it at some distance outside. */
export const inside = ({ at }: RoofCorner, { inward }: Side, outside = 0): Half =>
  beyond(inward, add(at, scale(inward, -outside)));

const abovePlate = ({ at }: RoofCorner): Half => beyond(UP, at);
const belowPlate = ({ at }: RoofCorner): Half => beyond(scale(UP, -1), at);

/**
 * Tail and seat of a rafter that crosses the plate lines of the sides given, with the overhang of each.
 *
 * Without overhang the plumb cut is flush with the plate's outer edge and the wood above the plate is all there is.
 */
export function tail(corner: RoofCorner, sides: readonly Side[], overhangs: readonly number[]): Cuts {
  const ends = sides.map((side, i) => inside(corner, side, overhangs[i]!));
  if (overhangs.every((overhang) => overhang === 0)) return { ends: [...ends, abovePlate(corner)] };
  return { ends, seat: [belowPlate(corner), ...sides.map((side) => inside(corner, side))] };
}

/** The plane over a solid's farthest corner in a direction: its face on that side, everything outside it in front. */
export const faceTowards = (direction: Vec, corners: readonly Vec[]): Half => ({
  normal: direction,
  offset: Math.max(...corners.map((c) => dot(direction, c))),
});
