import { slopeAngle } from "../src/geometry/angle.ts";
import { Failure } from "../src/measure/result.ts";
import { length, pitch } from "../src/registry/parameters.ts";
import { worksheetFunction } from "../src/registry/worksheetFunction.ts";
import {
  alongHip,
  backing,
  hipDrop,
  hipMarkRun,
  hipRun,
  hipRunToKing,
  hipRunToRidge,
} from "../src/roof/members/hip.ts";
import { atCorner, otherSide, andThen } from "./arguments/corners.ts";
import { refused } from "./arguments/refused.ts";

const family = "hip";
export const sidePitch = pitch("pitch", "Pitch of the roof plane on this side of the hip.");
export const run = length("run", "Run of this side's common: level, from the plate line to the center of the ridge.", {
  example: ["144", `12'`],
});
export const hipThickness = length("hipThickness", "Thickness of the hip.", { example: "1.5" });
export const heel = length("heel", "Height above plate of the commons.", { example: "4.4" });

export const hipRunFunction = worksheetFunction({
  name: "HIPRUN",
  family,
  summary: "Level run of the hip, or of the valley, for the run of this side's common.",
  parameters: [sidePitch, run, ...otherSide],
  result: "value",
  returns: "the run from corner to apex, in the unit of run.",
  examples: [
    {
      cells: [8, `15'`],
      result: 254.52,
      tolerance: 0.06,
      source: "NAVEDTRA 14044, ch. 2: run 15 ft, hip run 21.21 ft",
    },
    { cells: [6, 12], result: 16.97, source: "NAVEDTRA 14044, ch. 2: unit run of the hip 16.97" },
    {
      cells: ["45°", `9'`, "32.7352°"],
      result: 199.7,
      source: "Hodgson, ABC of the Steel Square: runs 9 ft and 14 ft, hip run 16.64 ft",
      tolerance: 0.06,
    },
  ],
  refuses: refused("no hip"),
  compute: (given) => atCorner(given, (at) => hipRun(at, given.run)),
});

export const hipLen = worksheetFunction({
  name: "HIPLEN",
  family,
  summary: "Line length of the hip, or of the valley, from the corner to the apex.",
  parameters: [sidePitch, run, ...otherSide],
  result: "value",
  returns: "the length along the hip, in the unit of run.",
  examples: [
    {
      cells: [8, `15'`],
      result: 281.4,
      tolerance: 0.07,
      source: "NAVEDTRA 14044, ch. 2: hip 23.45 ft for a run of 21.21 ft and a rise of 10 ft",
    },
    { cells: [8, 12], result: 18.76, source: "NAVEDTRA 14044, ch. 2: unit length of the hip, unit rise 8" },
    {
      cells: [6, 12],
      result: 18,
      source: "Radford's Cyclopedia of Construction, vol. 3: hip 18 in per foot of common run, rise 6",
    },
  ],
  refuses: refused("no hip"),
  compute: (given) => atCorner(given, (at) => alongHip(at, hipRun(at, given.run))),
});

export const hipDeg = worksheetFunction({
  name: "HIPDEG",
  family,
  summary: "Slope of the hip, or of the valley, from level.",
  parameters: [sidePitch, ...otherSide],
  result: "value",
  returns: "degrees.",
  examples: [
    {
      cells: [6],
      result: 19.4712,
      source: "Radford's Cyclopedia of Construction, vol. 3: hip cut on 17 and 6 (exactly 6 over 12 root 2)",
    },
    { cells: [9, 12], result: 30.9638 },
  ],
  refuses: refused("no hip"),
  compute: (given) => atCorner(given, (at) => slopeAngle(at.slope)),
});

export const hipRise = worksheetFunction({
  name: "HIPRISE",
  family,
  summary: "Rise of the hip, or of the valley, in 12 of its own run.",
  parameters: [sidePitch, ...otherSide],
  result: "value",
  returns: "rise in 12 of the hip's run.",
  examples: [
    {
      cells: [6],
      result: 4.2426,
      source: "Radford's Cyclopedia of Construction, vol. 3: 6 in the hip's 16.97 (printed 17)",
    },
    { cells: [9, 12], result: 7.2, source: "3-4-5 triangle: 9 x 4/5" },
  ],
  refuses: refused("no hip"),
  compute: (given) => atCorner(given, (at) => at.slope * 12),
});

export const hipToKing = worksheetFunction({
  name: "HIPTOKING",
  family,
  summary: "Length of a hip along its top center line, from the corner's plumb line to its head between king commons.",
  parameters: [
    sidePitch,
    run,
    length("commonThickness", "Thickness of the king commons.", { example: "1.5" }),
    ...otherSide,
  ],
  result: "value",
  returns:
    "the length along the hip, in the unit of run: shortened by half the king common's thickness along the hip's plan angle.",
  examples: [
    {
      cells: [6, 144, 1.5],
      result: 214.875,
      source:
        "NAVEDTRA 14044, ch. 2: shortened half the 45-degree thickness of the common; 18 in per foot (Radford): 216 - 0.75 x 18 / 12",
    },
    { cells: [9, 144, 1.5, 12], result: 208.4565 },
  ],
  refuses: refused("no hip", "head past the corner"),
  compute: (given) =>
    atCorner(given, (at) => andThen(hipRunToKing(at, given.run, given.commonThickness), (plan) => alongHip(at, plan))),
});

export const hipToRidge = worksheetFunction({
  name: "HIPTORIDGE",
  family,
  summary: "Length of a hip along its top center line, from the corner's plumb line to its head on the ridge's face.",
  parameters: [
    sidePitch,
    run,
    length("ridgeThickness", "Thickness of the ridge.", { zero: true, example: "1.5" }),
    ...otherSide,
  ],
  result: "value",
  returns: "the length along the hip, in the unit of run; the ridge is parallel to this side's plate.",
  examples: [
    {
      cells: [6, 144, 1.5],
      result: 214.875,
      source:
        "NAVEDTRA 14044, ch. 2: shortened half the 45-degree thickness of the ridge; 18 in per foot (Radford): 216 - 0.75 x 18 / 12",
    },
    { cells: [9, 144, 1.5, 12], result: 208.821 },
  ],
  refuses: refused("no hip", "ridge fills the run"),
  compute: (given) =>
    atCorner(given, (at) => andThen(hipRunToRidge(at, given.run, given.ridgeThickness), (plan) => alongHip(at, plan))),
});

export const hipDropFunction = worksheetFunction({
  name: "HIPDROP",
  family,
  summary: "How far a square-topped hip is lowered so that its top corners touch the roof planes.",
  parameters: [sidePitch, hipThickness, ...otherSide],
  result: "value",
  returns:
    "the plumb drop of a hip centered on the meeting line, in the unit of hipThickness; at two pitches the larger side's.",
  examples: [
    {
      cells: [12, 1.5],
      result: 0.5303,
      source:
        "half the 45-degree thickness (NAVEDTRA 14044, ch. 2: run 16.97 in 12) at the hip's slope of 12 in 16.97: 0.75 x 12 / 16.97",
    },
    { cells: [6, 1.5, 12], result: 0.6708 },
  ],
  refuses: refused("no hip"),
  compute: (given) => atCorner(given, (at) => hipDrop(at, given.hipThickness)),
});

export const hipHeel = worksheetFunction({
  name: "HIPHEEL",
  family,
  summary: "Height above plate of a dropped hip on its center line, over the corner.",
  parameters: [sidePitch, heel, hipThickness, ...otherSide],
  result: "value",
  returns: "the height, in the unit of heel: the commons' less the drop.",
  examples: [
    {
      cells: [12, 5, 1.5],
      result: 4.4697,
      source: "the drop at 12 in 12 from 12 over 16.97 (NAVEDTRA 14044, ch. 2): 5 - 0.75 x 12 / 16.97",
    },
    { cells: [6, 4.3992, 1.5], result: 4.134 },
  ],
  refuses: refused("no hip", "drop takes the heel"),
  compute: (given) =>
    atCorner(given, (at) => {
      const left = given.heel - hipDrop(at, given.hipThickness);
      return left > 0 ? left : new Failure({ kind: "drop takes the heel", least: hipDrop(at, given.hipThickness) });
    }),
});

export const hipBack = worksheetFunction({
  name: "HIPBACK",
  family,
  summary: "Backing angle of the hip on this pitch's side: the bevel of its top to the roof plane.",
  parameters: [sidePitch, ...otherSide],
  result: "value",
  returns: "degrees, from square across the hip's top.",
  examples: [
    {
      cells: [6],
      result: 18.4349,
      source: "Radford's Cyclopedia of Construction, vol. 3: backing by 18 on the tongue and 6 on the blade",
    },
    { cells: [9, 12], result: 21.1002 },
  ],
  refuses: refused("no hip"),
  compute: (given) => atCorner(given, (at) => slopeAngle(backing(at.near, at.slope))),
});

export const hipMark = worksheetFunction({
  name: "HIPMARK",
  family,
  summary:
    "Where a jack's center meets the near face of the hip, along the hip's top from the corner's plumb line squared across.",
  parameters: [
    sidePitch,
    length("offset", "Level distance along the plate line from the corner to the jack's center.", { example: "48" }),
    hipThickness,
    ...otherSide,
  ],
  result: "value",
  returns: "the distance along the hip, in the unit of offset.",
  examples: [
    {
      cells: [6, 12, 1.5],
      result: 17.2045,
      source: "18 in of hip per foot (Radford) less half the hip's thickness along the hip: 18 - 0.75 x 18 / 16.97",
    },
    { cells: [9, 48, 1.5, 12], result: 92.129 },
  ],
  refuses: refused("no hip"),
  compute: (given) => atCorner(given, (at) => alongHip(at, hipMarkRun(at.near, given.offset, given.hipThickness / 2))),
});

export const hips = [
  hipRunFunction,
  hipLen,
  hipDeg,
  hipRise,
  hipToKing,
  hipToRidge,
  hipDropFunction,
  hipHeel,
  hipBack,
  hipMark,
];
