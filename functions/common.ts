import { alongSlope } from "../src/geometry/alongSlope.ts";
import { length, pitch } from "../src/registry/parameters.ts";
import { worksheetFunction } from "../src/registry/worksheetFunction.ts";
import {
  commonLength,
  heelOf,
  notchOf,
  plumbDepthOf,
  seatOf,
  shortestBoard,
} from "../src/roof/members/commonRafter.ts";
import { Failure } from "../src/measure/result.ts";
import { andThen } from "./arguments/corners.ts";
import { refused } from "./arguments/refused.ts";

const family = "common";
export const roofPitch = pitch("pitch", "Pitch of the roof plane.");
const run = length("run", "Half the span: level, from the plate line to the center of the ridge.", {
  example: ["144", `12'`],
});
const ridgeThickness = length("ridgeThickness", "Thickness of the ridge board; 0 for none.", {
  zero: true,
  example: "1.5",
});
export const depth = length("depth", "Depth of the rafter, square to its slope.", { example: "5.5" });
export const heel = length("heel", "Height above plate: plumb, over the plate line, from plate to top edge.", {
  example: "4.4",
});
const overhang = length("overhang", "Level distance from the plate line to the plumb tail cut; 0 for none.", {
  zero: true,
  example: "16",
});

export const commonLen = worksheetFunction({
  name: "COMMONLEN",
  family,
  summary: "Length of a common rafter along its top edge, from the plumb line over the plate line to the ridge's face.",
  parameters: [roofPitch, run, ridgeThickness],
  result: "value",
  returns: "the length, in the unit of run.",
  examples: [
    {
      cells: [7, 96, 0],
      result: 111.125,
      tolerance: 1 / 16,
      source: "NAVEDTRA 14044, ch. 2: rise 7, span 16 ft, 111 1/8 in",
    },
    {
      cells: [6, 150, 0],
      result: 167.75,
      tolerance: 0.0625,
      source: "NAVEDTRA 14044, ch. 2: rise 6, span 25 ft, 12.5 x 13.42 in",
    },
    { cells: [6, 144, 1.5], result: 160.1584 },
  ],
  refuses: refused("ridge fills the run"),
  compute: ({ pitch, run, ridgeThickness }) => commonLength(pitch, run, ridgeThickness),
});

export const tailLen = worksheetFunction({
  name: "TAILLEN",
  family,
  summary: "Length of a rafter's tail along its top edge, from the plumb line over the plate line to the tail cut.",
  parameters: [
    roofPitch,
    length("overhang", "Level distance from the plate line to the tail's top edge.", { zero: true, example: "16" }),
  ],
  result: "value",
  returns: "the length, in the unit of overhang; the same for a plumb, a square and a level tail cut.",
  examples: [
    { cells: [16, 12], result: 20, source: "US Army EN0069, lesson 2: unit rise 16, 20.00 in per foot of run" },
    { cells: [6, 16], result: 17.8885 },
  ],
  compute: ({ pitch, overhang }) => overhang * alongSlope(pitch),
});

export const heelFunction = worksheetFunction({
  name: "HEEL",
  family,
  summary: "Height above plate that a level seat of this width leaves.",
  parameters: [roofPitch, depth, length("seat", "Level width of the seat.", { example: "3.5" })],
  result: "value",
  returns: "the height, in the unit of depth.",
  examples: [
    { cells: [9, 8, 4], result: 7, source: "3-4-5 triangle: 8 x 5/4 - 4 x 3/4" },
    { cells: [6, 5.5, 3.5], result: 4.3992 },
  ],
  refuses: refused("seat takes the heel"),
  compute: ({ pitch, depth, seat }) => heelOf(pitch, depth, seat),
});

export const seatWidth = worksheetFunction({
  name: "SEATWIDTH",
  family,
  summary: "Level width of the seat of a rafter that stands this high above the plate.",
  parameters: [roofPitch, depth, heel],
  result: "value",
  returns: "the width, in the unit of depth.",
  examples: [
    { cells: [9, 8, 7], result: 4, source: "3-4-5 triangle: (8 x 5/4 - 7) x 4/3" },
    { cells: [6, 5.5, 4.4], result: 3.4984 },
  ],
  refuses: refused("heel above depth"),
  compute: ({ pitch, depth, heel }) => seatOf(pitch, depth, heel),
});

export const notchDepth = worksheetFunction({
  name: "NOTCHDEPTH",
  family,
  summary: "Depth of the notch over the plate, square to the rafter's slope.",
  parameters: [roofPitch, depth, heel],
  result: "value",
  returns: "the depth, in the unit of depth; how much of the rafter it may take is the local code's to say.",
  examples: [
    { cells: [9, 8, 7], result: 2.4, tolerance: 1e-9, source: "3-4-5 triangle: 8 - 7 x 4/5" },
    { cells: [6, 5.5, 4.4], result: 1.5645 },
  ],
  refuses: refused("heel above depth"),
  compute: ({ pitch, depth, heel }) => notchOf(pitch, depth, heel),
});

export const cutEnd = worksheetFunction({
  name: "CUTEND",
  family,
  summary: "Depth of a rafter's plumb-cut end.",
  parameters: [roofPitch, depth],
  result: "value",
  returns: "the plumb depth, in the unit of depth.",
  examples: [
    { cells: [9, 8], result: 10, source: "3-4-5 triangle: 8 x 5/4" },
    { cells: [6, 5.5], result: 6.1492 },
  ],
  compute: ({ pitch, depth }) => plumbDepthOf(pitch, depth),
});

export const ridgeHeight = worksheetFunction({
  name: "RIDGEHEIGHT",
  family,
  summary: "Height of the ridge's top above the top of the plate.",
  parameters: [roofPitch, run, ridgeThickness, heel],
  result: "value",
  returns: "the height, in the unit of run; ridge and commons are flush at the ridge's faces.",
  examples: [
    {
      cells: [8, `15'`, 0, `0.0001"`],
      result: 120,
      tolerance: 0.001,
      source: "NAVEDTRA 14044, ch. 2: unit rise 8, span 30 ft, total rise 10 ft",
    },
    { cells: [6, 144, 1.5, 4.4], result: 76.025 },
  ],
  refuses: refused("ridge fills the run"),
  compute: ({ pitch, run, ridgeThickness, heel }) =>
    andThen(commonLength(pitch, run, ridgeThickness), () => heel + (run - ridgeThickness / 2) * pitch),
});

export const commonBoard = worksheetFunction({
  name: "COMMONBOARD",
  family,
  summary: "Shortest straight board that holds a common rafter, its tail and plumb cuts included.",
  parameters: [roofPitch, run, ridgeThickness, depth, heel, overhang],
  result: "value",
  returns: "the length of the board, in the unit of run.",
  examples: [
    { cells: [9, 80, 0, 8, 7, 16], result: 126, source: "3-4-5 triangle: 96 x 5/4 + 8 x 3/4" },
    { cells: [9, 80, 0, 8, 5, 0], result: 103, source: "3-4-5 triangle: 80 x 5/4 + 5 x 3/5" },
    { cells: [6, 144, 1.5, 5.5, 4.4, 16], result: 180.797 },
  ],
  refuses: refused("ridge fills the run", "heel above depth"),
  compute({ pitch, run, ridgeThickness, depth, heel, overhang }) {
    const seat = seatOf(pitch, depth, heel);
    if (seat instanceof Failure) return seat;
    return andThen(commonLength(pitch, run, ridgeThickness), () =>
      shortestBoard({ pitch, run: run - ridgeThickness / 2, overhang, depth, heel }),
    );
  },
});

export const commons = [commonLen, tailLen, heelFunction, seatWidth, notchDepth, cutEnd, ridgeHeight, commonBoard];
