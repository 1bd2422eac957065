import { alongSlope } from "../src/geometry/alongSlope.ts";
import { length, pitch } from "../src/registry/parameters.ts";
import { worksheetFunction } from "../src/registry/worksheetFunction.ts";
import { crippleRun, valleyJackRuns } from "../src/roof/members/valley.ts";
import { atCorner, andThen, otherSide, type CornerGiven } from "./arguments/corners.ts";
import { refused } from "./arguments/refused.ts";

const family = "valley";

const depth = length("depth", "Depth of the piece, square to its slope.", { example: "5.5" });
const jackParameters = [
  pitch("pitch", "Pitch of the valley jack's roof plane."),
  length("offset", "Level distance along the plate line from the inner corner to the jack's center.", {
    example: "48",
  }),
  length("run", "Run of the common on this side: level, from the plate line to the center of the ridge.", {
    example: ["144", `12'`],
  }),
  length("valleyThickness", "Thickness of the valley.", { example: "1.5" }),
  length("jackThickness", "Thickness of the valley jack.", { example: "1.5" }),
  length("ridgeThickness", "Thickness of the ridge; 0 for none.", { zero: true, example: "1.5" }),
] as const;
const jackRefusals = ["no hip", "jack wider than offset", "valley jack vanishes", "no valley jack fits"] as const;
const crippleParameters = [
  pitch("pitch", "Pitch of the cripple's roof plane."),
  length("distance", "Distance along the plate line between the corners of hip and valley.", { example: "72" }),
  length("hipThickness", "Thickness of the hip.", { example: "1.5" }),
  length("valleyThickness", "Thickness of the valley.", { example: "1.5" }),
] as const;
const crippleRefusals = ["no hip", "cripple vanishes"] as const;

interface JackGiven extends CornerGiven {
  readonly offset: number;
  readonly run: number;
  readonly valleyThickness: number;
  readonly jackThickness: number;
  readonly ridgeThickness: number;
}

/** A figure of the valley jack that is given, worked out from its level runs. */
const ofRuns =
  <Given extends JackGiven>(work: (runs: { long: number; short: number }, given: Given) => number) =>
  (given: Given) =>
    atCorner(given, ({ near }) => {
      const { offset, run, valleyThickness, jackThickness, ridgeThickness } = given;
      return andThen(valleyJackRuns(near, offset, run, valleyThickness, jackThickness, ridgeThickness), (runs) =>
        work(runs, given),
      );
    });

export const valleyJack = worksheetFunction({
  name: "VALLEYJACK",
  family,
  summary: "Length of a valley jack on its long side, from the ridge's face to its long point at the foot.",
  parameters: [...jackParameters, ...otherSide],
  result: "value",
  returns: "the length along the slope, in the unit of offset.",
  examples: [
    {
      cells: [9, 48, 144, 1.5, 1.5, 1.5],
      result: 118.6742,
      source:
        "NAVEDTRA 14044, ch. 2: half the ridge level and half the 45-degree thickness of the valley; (144 - 0.75 - 47.25 - 0.75 x 16.9706 / 12) x 15 / 12",
      tolerance: 0.001,
    },
    { cells: [6, 48, 144, 1.5, 1.5, 0, 6, 90], result: 106.9839 },
  ],
  refuses: refused(...jackRefusals),
  compute: ofRuns(({ long }, { pitch }) => long * alongSlope(pitch)),
});

export const valleyShort = worksheetFunction({
  name: "VALLEYSHORT",
  family,
  summary: "Length of a valley jack on its short side, from the ridge's face to its short point at the foot.",
  parameters: [...jackParameters, ...otherSide],
  result: "value",
  returns: "the length along the slope, in the unit of offset.",
  examples: [
    {
      cells: [9, 48, 144, 1.5, 1.5, 1.5, 12],
      result: 96.25,
      source: "3-4-5 triangles: (144 - 0.75 - 48.75 x 4/3 - 0.75 x 5/3) x 5/4",
    },
    { cells: [6, 48, 144, 1.5, 1.5, 0], result: 105.3069 },
  ],
  refuses: refused(...jackRefusals),
  compute: ofRuns(({ short }, { pitch }) => short * alongSlope(pitch)),
});

export const valleyBoard = worksheetFunction({
  name: "VALLEYBOARD",
  family,
  summary: "Shortest straight board that holds a valley jack, its plumb ends included.",
  parameters: [...jackParameters, depth, ...otherSide],
  result: "value",
  returns: "the length of the board, in the unit of offset.",
  examples: [
    {
      cells: [9, 48, 144, 1.5, 1.5, 1.5, 8, 12],
      result: 104.75,
      source: "3-4-5 triangles: (144 - 0.75 - 47.25 x 4/3 - 0.75 x 5/3) x 5/4 + 8 x 3/4",
    },
    { cells: [6, 48, 144, 1.5, 1.5, 0, 5.5], result: 109.7339 },
  ],
  refuses: refused(...jackRefusals),
  compute: ofRuns(
    ({ long }, { pitch, depth }: JackGiven & { depth: number }) => long * alongSlope(pitch) + depth * pitch,
  ),
});

export const crippleLen = worksheetFunction({
  name: "CRIPPLELEN",
  family,
  summary: "Length of a cripple between a parallel hip and valley, the same on both of its faces.",
  parameters: [...crippleParameters, ...otherSide],
  result: "value",
  returns: "the length along the slope, in the unit of distance.",
  examples: [
    {
      cells: [9, 72, 1.5, 1.5],
      result: 87.3483,
      tolerance: 0.001,
      source:
        "Radford's Cyclopedia of Construction, vol. 3: run of the cripple equals the plate, 6 ft, less half the 45-degree thickness of hip and of valley (NAVEDTRA 14044): (72 - 1.5 x 16.9706 / 12) x 15 / 12",
    },
    { cells: [6, 120, 1.5, 1.5], result: 131.7924 },
  ],
  refuses: refused(...crippleRefusals),
  compute: (given) =>
    atCorner(given, ({ near }) =>
      andThen(
        crippleRun(near, given.distance, given.hipThickness, given.valleyThickness),
        (run) => run * alongSlope(given.pitch),
      ),
    ),
});

export const crippleBoard = worksheetFunction({
  name: "CRIPPLEBOARD",
  family,
  summary: "Shortest straight board that holds a cripple, the slants of both its ends included.",
  parameters: [
    ...crippleParameters,
    length("crippleThickness", "Thickness of the cripple.", { example: "1.5" }),
    depth,
    ...otherSide,
  ],
  result: "value",
  returns: "the length of the board, in the unit of distance.",
  examples: [
    {
      cells: [9, 72, 1.5, 1.5, 1.5, 8, 12],
      result: 125.375,
      source: "3-4-5 triangles: (72 x 4/3 - 1.5 x 5/3 + 1.5 x 4/3) x 5/4 + 8 x 3/4",
    },
    { cells: [6, 120, 1.5, 1.5, 1.5, 5.5], result: 136.2194 },
  ],
  refuses: refused(...crippleRefusals),
  compute: (given) =>
    atCorner(given, ({ near }) =>
      andThen(
        crippleRun(near, given.distance, given.hipThickness, given.valleyThickness),
        (run) => (run + given.crippleThickness * near.tan) * alongSlope(given.pitch) + given.depth * given.pitch,
      ),
    ),
});

export const valleys = [valleyJack, valleyShort, valleyBoard, crippleLen, crippleBoard];
