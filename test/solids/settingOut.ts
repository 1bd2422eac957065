import { apexOf } from "./apex.ts";
import { cornerOf } from "./corner.ts";
import type { RoofCorner, Side } from "./corner.ts";
import { inside, rafterFrame, tail } from "./rafter.ts";
import { member } from "./member.ts";
import { ON } from "./measure.ts";
import { dot, sub } from "./vector.ts";
import type { RoofPlan } from "./roofPlan.ts";
import type { Shop } from "./shop.ts";

export type SideName = "Main" | "End";

/** Where a rafter stands: on a side of a corner, at an offset from it. */
export interface Place {
  readonly corner: RoofCorner;
  readonly which: 0 | 1;
  readonly side: SideName;
  readonly offset: number;
}

export const sideOf = ({ corner, which }: Place): Side => corner.sides[which];

/** The corners of the plates; the near main plate runs from the first corner to the second. */
export interface Corners {
  readonly all: readonly [RoofCorner, RoofCorner, RoofCorner, RoofCorner];
  /** Those with a hip. */
  readonly hips: readonly RoofCorner[];
}

export function cornersOf({ span, length, pitch, endPitch, heel, ends }: RoofPlan): Corners {
  const [main, end] = [pitch.slope, endPitch.slope];
  const a = cornerOf([0, 0, 0], [1, 0, 0], [0, 1, 0], [main, end], heel);
  const b = cornerOf([length, 0, 0], [0, 1, 0], [-1, 0, 0], [end, main], heel);
  const c = cornerOf([length, span, 0], [-1, 0, 0], [0, -1, 0], [main, end], heel);
  const d = cornerOf([0, span, 0], [0, -1, 0], [1, 0, 0], [end, main], heel);
  return { all: [a, b, c, d], hips: ends === "hip and gable" ? [a, d] : [a, b, c, d] };
}

/** Which side of a corner lies along the main plate: they alternate from corner to corner. */
export const mainOf = ({ sides }: RoofCorner): 0 | 1 => (Math.abs(sides[0].plate[0]) > 0.5 ? 0 : 1);

/** A place on the main or end side of a corner. */
export function place(corner: RoofCorner, side: SideName, offset: number): Place {
  const main = mainOf(corner);
  return { corner, side, offset, which: side === "Main" ? main : main === 0 ? 1 : 0 };
}

/** How far the apex lies up the ridge from the end plate: where the meeting line comes over the middle of the span. */
export const apexOffset = (shop: Shop, { all: [a] }: Corners, span: number): number => apexOf(shop, a, span / 2)[0];

/** The level seat that a rafter of this side gets, read off one: how far in its underside comes up through the plate's top. */
export function seatOn(shop: Shop, at: Place, { rafter }: RoofPlan): number {
  const side = sideOf(at);
  const trial = member(shop, rafterFrame(at.corner, side, 0), rafter, {
    ...tail(at.corner, [side], [12]),
    ends: [
      inside(at.corner, side, 12),
      { normal: [-side.inward[0], -side.inward[1], 0], offset: -dot(side.inward, at.corner.at) - 100 },
    ],
  });
  return Math.max(
    ...shop
      .corners(trial.solid)
      .filter((c) => Math.abs(c[2]) < ON)
      .map((c) => dot(side.inward, sub(c, at.corner.at))),
  );
}

/** Where jacks may stand on a plate whose king common is at this offset: before asking whether their heads clear their seats. */
export function jackPlaces({ setOutFrom, spacing, rafter: { thickness } }: RoofPlan, king: number): number[] {
  const count = Math.ceil(king / spacing) + 1;
  const steps = Array.from({ length: count }, (_, i) => i + 1);
  if (setOutFrom === "king common") return steps.map((k) => king - k * spacing).filter((offset) => offset > 0);
  // A clear thickness between the faces of the last jack and the king common.
  return steps.map((k) => k * spacing).filter((offset) => offset + thickness / 2 + thickness <= king - thickness / 2);
}
