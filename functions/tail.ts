import { choice, length, optionalLength, pitch } from "../src/registry/parameters.ts";
import { worksheetFunction } from "../src/registry/worksheetFunction.ts";
import { levelOverhang, soffitCut, tailOf } from "../src/roof/members/tail.ts";
import { depth, heel, roofPitch } from "./common.ts";
import { andThen } from "./arguments/corners.ts";
import { refused } from "./arguments/refused.ts";

const family = "common";
const overhang = length("overhang", "Level distance from the plate line to the tail's top edge; 0 for none.", {
  zero: true,
  example: "16",
});
const fasciaText = "Depth of the tail's plumb cut above a level soffit";
const tailParameters = [
  roofPitch,
  overhang,
  depth,
  heel,
  choice(
    "tailCut",
    "How the tail ends: plumb, square to the slope, or level (plumb for the fascia, then level for a soffit).",
    ["plumb", "square", "level"] as const,
    "plumb",
  ),
  optionalLength("fascia", `${fasciaText}; for a level tailCut only.`, "none", { example: "5.5" }),
] as const;
const tailRefusals = [
  "heel above depth",
  "square tail cuts the seat",
  "fascia missing",
  "fascia not used",
  "fascia too deep",
  "fascia above the plate",
] as const;

export const tailBoard = worksheetFunction({
  name: "TAILBOARD",
  family,
  summary: "Board that a rafter's tail takes below the plumb line over the plate line, its cut included.",
  parameters: tailParameters,
  result: "value",
  returns:
    "the length along the board, in the unit of overhang; with a common's length or a jack's long point it makes the shortest board.",
  examples: [
    { cells: [9, 16, 8, 7], result: 26, source: "3-4-5 triangle: 16 x 5/4 + 8 x 3/4" },
    { cells: [9, 16, 8, 7, "square"], result: 20, source: "3-4-5 triangle: 16 x 5/4" },
    { cells: [9, 16, 8, 7, "level", 5], result: 23, source: "3-4-5 triangle: 16 x 5/4 + 5 x 3/5" },
    { cells: [6, 16, 5.5, 4.4], result: 20.6385 },
  ],
  refuses: refused(...tailRefusals),
  compute: ({ pitch, overhang, depth, heel, tailCut, fascia }) =>
    andThen(tailOf({ pitch, overhang, depth, heel, cut: tailCut, fascia }), ({ board }) => board),
});

export const tailDrop = worksheetFunction({
  name: "TAILDROP",
  family,
  summary: "How far the lowest point of a rafter's tail, or its level soffit, hangs below the plate's top.",
  parameters: tailParameters,
  result: "value",
  returns: "the plumb distance, in the unit of overhang; below 0 it lies above the plate's top.",
  examples: [
    { cells: [9, 16, 8, 7], result: 15, source: "3-4-5 triangle: 16 x 3/4 + 8 x 5/4 - 7" },
    { cells: [9, 16, 8, 7, "square"], result: 11.4, tolerance: 1e-9, source: "3-4-5 triangle: 16 x 3/4 + 8 x 4/5 - 7" },
    { cells: [9, 16, 8, 7, "level", 5], result: 10, source: "3-4-5 triangle: 16 x 3/4 + 5 - 7" },
  ],
  refuses: refused(...tailRefusals),
  compute: ({ pitch, overhang, depth, heel, tailCut, fascia }) =>
    andThen(tailOf({ pitch, overhang, depth, heel, cut: tailCut, fascia }), ({ below }) => below),
});

export const soffitCutFunction = worksheetFunction({
  name: "SOFFITCUT",
  family,
  summary: "Length of a soffit's level cut, from the foot of the tail's plumb cut in to the rafter's underside.",
  parameters: [roofPitch, overhang, depth, length("fascia", `${fasciaText}.`, { example: "5.5" })],
  result: "value",
  returns:
    "the level length, in the unit of overhang; where the overhang is shorter the cut ends plumb under the plate line.",
  examples: [
    { cells: [9, 16, 8, 5.5], result: 6, source: "3-4-5 triangle: (8 x 5/4 - 5.5) x 4/3" },
    { cells: [6, 16, 5.5, 3.5], result: 5.2984 },
  ],
  refuses: refused("fascia too deep"),
  compute: ({ pitch, overhang, depth, fascia }) => soffitCut({ pitch, overhang, depth, fascia }),
});

export const endOverhang = worksheetFunction({
  name: "ENDOVERHANG",
  family,
  summary: "Overhang around the corner that keeps the fascia level where the pitches differ.",
  parameters: [roofPitch, overhang, pitch("otherPitch", "Pitch of the plane around the corner.")],
  result: "value",
  returns: "the level overhang of the other side, in the unit of overhang.",
  examples: [
    { cells: [6, 16, 8], result: 12, source: "both fascias fall 8 in: 16 x 6/12 and 12 x 8/12" },
    { cells: ["6/12", "400 mm", "9/12"], result: 266.6667 },
  ],
  compute: ({ pitch, overhang, otherPitch }) => levelOverhang(pitch, overhang, otherPitch),
});

export const tails = [tailBoard, tailDrop, soffitCutFunction, endOverhang];
