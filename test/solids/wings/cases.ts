import { rise } from "../cases.ts";
import type { WingedPlan } from "./plan.ts";

/** The main roof of the worked figures: 24 by 40 feet at 6 in 12, all boards 1 1/2 in thick. */
export const main: WingedPlan = {
  span: 288,
  length: 480,
  pitch: rise(6),
  endPitch: rise(6),
  ends: ["hip", "hip"],
  spacing: 24,
  overhang: 16,
  rafter: { thickness: 1.5, depth: 5.5 },
  hip: { thickness: 1.5, depth: 7.25 },
  ridge: { thickness: 1.5, depth: 7.25 },
  valley: { thickness: 1.5, depth: 7.25 },
  heel: 4.4,
  setOutFrom: "king common",
  hipTop: "dropped",
  hipHead: "king commons",
  wings: [],
};

const feet = (ft: number, inches = 0): number => 12 * ft + inches;

export const wingedCases: Readonly<Record<string, WingedPlan>> = {
  "a T with a lower ridge": {
    ...main,
    wings: [{ wall: "front", from: feet(12, 6), out: feet(10), span: feet(16), end: "gable" }],
  },
  "a T at two pitches, long valley right": {
    ...main,
    span: feet(25),
    length: feet(45),
    pitch: rise(8),
    endPitch: rise(8),
    wings: [
      {
        wall: "front",
        from: feet(14),
        out: feet(12),
        span: feet(18),
        end: "hip",
        pitch: rise(6),
        endPitch: rise(9),
        longValley: "right",
      },
    ],
  },
  "a T with level ridges": {
    ...main,
    wings: [{ wall: "front", from: feet(8), out: feet(10), span: feet(24), end: "gable" }],
  },
  "an L, flush left, lower ridge": {
    ...main,
    wings: [{ wall: "front", from: "flush left", out: feet(12), span: feet(16), end: "hip" }],
  },
  "an L with level ridges, flush right at the back": {
    ...main,
    wings: [{ wall: "back", from: "flush right", out: feet(14), span: feet(24), end: "hip" }],
  },
  "a wing at the back, hipped": {
    ...main,
    wings: [{ wall: "back", from: feet(10), out: feet(8), span: feet(14), end: "hip" }],
  },
  "a U, flush both ways": {
    ...main,
    length: feet(56),
    wings: [
      { wall: "front", from: "flush left", out: feet(12), span: feet(14), end: "hip" },
      { wall: "front", from: "flush right", out: feet(16), span: feet(18), end: "gable" },
    ],
  },
  "two gabled wings on one side": {
    ...main,
    wings: [
      { wall: "front", from: feet(4), out: feet(6), span: feet(12), end: "gable" },
      { wall: "front", from: feet(24), out: feet(6), span: feet(12), end: "gable" },
    ],
  },
  "a cross of unlike wings": {
    ...main,
    setOutFrom: "corner",
    wings: [
      { wall: "front", from: feet(13), out: feet(9), span: feet(14), end: "hip" },
      { wall: "back", from: feet(10), out: feet(8), span: feet(14), end: "hip" },
    ],
  },
  "a steep wing whose apex is inside, backed hips": {
    ...main,
    length: feet(50),
    hipTop: "backed",
    wings: [
      { wall: "back", from: feet(16), out: feet(4), span: feet(14), end: "hip", pitch: rise(8), endPitch: rise(8) },
    ],
  },
  "steeper ends, shifted hips, thick boards": {
    ...main,
    length: feet(48),
    endPitch: rise(9),
    hipTop: "shifted",
    ridge: { thickness: 2.25, depth: 9.25 },
    valley: { thickness: 3, depth: 7.25 },
    hip: { thickness: 3, depth: 7.25 },
    wings: [{ wall: "front", from: feet(17), out: feet(11), span: feet(15), end: "hip", endPitch: rise(9) }],
  },
  "hips on the ridge, one end a gable": {
    ...main,
    ends: ["hip", "gable"],
    hipHead: "ridge",
    ridge: { thickness: 2.25, depth: 9.25 },
    wings: [{ wall: "front", from: feet(15), out: feet(10), span: feet(16), end: "hip" }],
  },
  "metric, no overhang": {
    ...main,
    span: 7200 / 25.4,
    length: 13000 / 25.4,
    spacing: 600 / 25.4,
    overhang: 0,
    rafter: { thickness: 38 / 25.4, depth: 140 / 25.4 },
    wings: [{ wall: "front", from: 4100 / 25.4, out: 3000 / 25.4, span: 4800 / 25.4, end: "hip" }],
  },
};
