import { rise, slopeDegrees } from "./cases.ts";
import { chance, seed } from "./chance.ts";
import { hasHip } from "./corner.ts";
import { apexOffset, cornersOf } from "./settingOut.ts";
import type { RoofPlan } from "./roofPlan.ts";
import type { Shop } from "./shop.ts";

/** A roof of 24 by 36 feet at 6 in 12, the usual one. */
export const regular: RoofPlan = {
  span: 288,
  length: 432,
  pitch: rise(6),
  endPitch: rise(6),
  ends: "hip and hip",
  spacing: 24,
  overhang: 16,
  rafter: { thickness: 1.5, depth: 5.5 },
  hip: { thickness: 1.5, depth: 7.25 },
  ridge: { thickness: 1.5, depth: 7.25 },
  heel: 4.4,
  setOutFrom: "king common",
  hipTop: "dropped",
  hipHead: "king commons",
};

/** Roofs of every kind that a block can describe. */
export const roofCases: Readonly<Record<string, RoofPlan>> = {
  regular,
  "regular, set out from the corner, thick ridge": {
    ...regular,
    setOutFrom: "corner",
    length: 440,
    spacing: 22.5,
    ridge: { thickness: 2.25, depth: 9.25 },
  },
  "regular, backed hips": { ...regular, hipTop: "backed" },
  "regular, no overhang": { ...regular, overhang: 0 },
  "regular, hips too shallow for the jacks": { ...regular, hip: { thickness: 1.5, depth: 5.5 } },
  "no ridge between the commons": { ...regular, ridge: null },
  "square pyramid": { ...regular, span: 240, length: 240, ridge: null },
  "square pyramid whose block still names a ridge": { ...regular, span: 240, length: 240 },
  "pyramid of two pitches": { ...regular, length: 192, endPitch: rise(9), ridge: null, spacing: 16 },
  "steeper ends": { ...regular, endPitch: rise(9) },
  "steeper ends, shifted hips": { ...regular, endPitch: rise(9), hipTop: "shifted" },
  "steeper ends, backed hips": { ...regular, endPitch: rise(9), hipTop: "backed" },
  "steeper ends, no overhang, shallow hips": {
    ...regular,
    endPitch: rise(9),
    overhang: 0,
    hip: { thickness: 1.5, depth: 5.5 },
  },
  "much steeper ends, one cheek on thick king commons": {
    ...regular,
    endPitch: rise(12),
    rafter: { thickness: 3, depth: 5.5 },
    hip: { thickness: 1.5, depth: 9.25 },
    spacing: 16,
  },
  "flatter ends": { ...regular, endPitch: rise(4.5), length: 600, heel: 4.2 },
  "flatter ends, shifted hips": { ...regular, endPitch: rise(4.5), length: 600, heel: 4.2, hipTop: "shifted" },
  "an end overhang of its own": { ...regular, endOverhang: 12 },
  "an end overhang of its own at two pitches": { ...regular, endPitch: rise(9), endOverhang: 10.5 },
  "hips on the ridge": { ...regular, hipHead: "ridge" },
  "hips on the ridge, steeper ends": {
    ...regular,
    hipHead: "ridge",
    endPitch: rise(9),
    ridge: { thickness: 3, depth: 9.25 },
  },
  "hips on the ridge, shifted": { ...regular, hipHead: "ridge", endPitch: rise(9), hipTop: "shifted" },
  "one end a gable": { ...regular, ends: "hip and gable", overhang: 0 },
  "one end a gable, steeper hip end": {
    ...regular,
    ends: "hip and gable",
    endPitch: rise(8),
    hip: { thickness: 3, depth: 9.25 },
  },
  "one end a gable, hips on the ridge": { ...regular, ends: "hip and gable", hipHead: "ridge" },
};

/** Roofs by chance, the same for the same seed and stream; the seed is printed so that a find can be had again. */
export function fuzzedRoofs(shop: Shop, count: number, stream: number): RoofPlan[] {
  process.stdout.write(`${count} roofs by chance, LONGPOINT_SEED=${seed}, stream ${stream}\n`);
  const next = chance(seed + stream);
  const between = (low: number, high: number): number => low + (high - low) * next();
  const oneOf = <T>(...all: readonly T[]): T => all[Math.floor(next() * all.length)]!;
  const plans: RoofPlan[] = [];
  while (plans.length < count) {
    const depth = between(5.5, 9.25);
    const thickness = oneOf(1.5, 1.25, between(1, 2.5));
    const pitch = oneOf(rise(between(3, 14)), slopeDegrees(between(15, 45)));
    const hipHead = oneOf("king commons", "king commons", "ridge");
    const draft: RoofPlan = {
      span: between(170, 400),
      length: 0,
      pitch,
      endPitch: oneOf(pitch, rise(between(3.5, 13))),
      ends: oneOf("hip and hip", "hip and hip", "hip and gable"),
      spacing: oneOf(12, 16, 19.2, 24, between(12, 30)),
      overhang: oneOf(0, between(4, 24)),
      rafter: { thickness, depth },
      hip: { thickness: oneOf(1.5, between(1, 3.5)), depth: depth + between(0, 4) },
      ridge:
        hipHead === "ridge" || next() < 0.8 ? { thickness: oneOf(1.5, between(thickness, 3.5)), depth: 11.25 } : null,
      heel: depth * between(0.55, 0.95),
      setOutFrom: oneOf("king common", "corner"),
      hipTop: oneOf("dropped", "backed", "shifted"),
      hipHead,
    };
    const corners = cornersOf(draft);
    if (!hasHip(corners.all[0], 0.25)) continue;
    const apex = apexOffset(shop, corners, draft.span);
    // Room for jacks on both sides, and a roof that is no tower.
    if (apex < 70 || apex > 500) continue;
    const pyramid = hipHead === "king commons" && draft.ends === "hip and hip" && next() < 0.15;
    plans.push({ ...draft, length: pyramid ? 2 * apex : 2 * apex + between(20, 240) });
  }
  return plans;
}
