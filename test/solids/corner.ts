import type { Half } from "./half.ts";
import { beyond } from "./half.ts";
import { frameOf } from "./frame.ts";
import type { Frame } from "./frame.ts";
import { add, cross, dot, leftOf, scale } from "./vector.ts";
import type { Vec } from "./vector.ts";

/** One side of a corner: its plate line, the way its commons run, and its roof plane. */
export interface Side {
  /** Along the plate line, away from the corner. */
  readonly plate: Vec;
  /** Level, square to the plate line, into the building. */
  readonly inward: Vec;
  /** Rise over run. */
  readonly pitch: number;
  /** Everything above the roof plane. */
  readonly above: Half;
}

/** Two roof planes over the corner of two plate lines. */
export interface RoofCorner {
  readonly at: Vec;
  readonly heel: number;
  readonly sides: readonly [Side, Side];
  /** The line in which the planes meet, from the point plumb over the corner. */
  readonly meeting: Frame;
}

/** What a corner is built from: slopes as rise over run, the angle between the plate lines in degrees, the height above plate. */
export interface CornerPlan {
  readonly pitches: readonly [number, number];
  readonly angle: number;
  readonly heel: number;
}

/**
 * A corner at the origin with its first plate line along x and its second one to the left of that.
 *
 * Both roof planes rise from `heel` over their plate lines, so they meet in a line through the point at `heel` over the corner.
 */
export function roofCorner({ pitches, angle, heel }: CornerPlan): RoofCorner {
  const turn = (angle * Math.PI) / 180;
  const second: Vec = [Math.cos(turn), Math.sin(turn), 0];
  return cornerOf([0, 0, 0], [1, 0, 0], second, pitches, heel);
}

/** A corner anywhere: the second plate line turns left from the first. */
export function cornerOf(
  at: Vec,
  first: Vec,
  second: Vec,
  pitches: readonly [number, number],
  heel: number,
): RoofCorner {
  const over: Vec = add(at, [0, 0, heel]);
  const side = (plate: Vec, inward: Vec, pitch: number): Side => ({
    plate,
    inward,
    pitch,
    above: beyond(add([0, 0, 1], scale(inward, -pitch)), over),
  });
  const one = side(first, leftOf(first), pitches[0]);
  const two = side(second, scale(leftOf(second), -1), pitches[1]);
  const line = cross(one.above.normal, two.above.normal);
  return { at, heel, sides: [one, two], meeting: frameOf(over, line[2] < 0 ? scale(line, -1) : line) };
}

/** True when jacks from both plate lines reach the meeting line: it leans away from neither plate line. `margin` keeps clear of the limit. */
export const hasHip = ({ sides, meeting }: RoofCorner, margin = 0.05): boolean =>
  sides.every(({ plate, inward }) => dot(meeting.along, plate) > margin && dot(meeting.along, inward) > margin);
