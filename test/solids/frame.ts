import { add, cross, dot, leftOf, plan, scale, sub, unit } from "./vector.ts";
import type { Vec } from "./vector.ts";

/** How a member lies: a point of its top center line, and its own three directions. */
export interface Frame {
  readonly at: Vec;
  /** Up the slope, along the top edge. */
  readonly along: Vec;
  /** Level, to the left for someone who looks up the slope. */
  readonly left: Vec;
  /** Square to the top edge, away from the board. */
  readonly top: Vec;
}

/** The frame of a member through a point, given a step along it. */
export function frameOf(at: Vec, step: Vec): Frame {
  const along = unit(step);
  const left = unit(leftOf(plan(step)));
  return { at, along, left, top: cross(along, left) };
}

export const moved = (frame: Frame, by: Vec): Frame => ({ ...frame, at: add(frame.at, by) });

/** The direction of the member seen from above, of length 1. */
export const heading = (frame: Frame): Vec => unit(plan(frame.along));

/** A point as the member sees it: along, left, top. */
export function seenFrom(frame: Frame, point: Vec): Vec {
  const p = sub(point, frame.at);
  return [dot(p, frame.along), dot(p, frame.left), dot(p, frame.top)];
}

/** The point of space for along, left, top. */
export const placed = (frame: Frame, [a, l, t]: Vec): Vec =>
  add(add(frame.at, scale(frame.along, a)), add(scale(frame.left, l), scale(frame.top, t)));
