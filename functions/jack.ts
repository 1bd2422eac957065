import { alongSlope } from "../src/geometry/alongSlope.ts";
import { directionAngle, slopeAngle } from "../src/geometry/angle.ts";
import { Failure } from "../src/measure/result.ts";
import { length, pitch } from "../src/registry/parameters.ts";
import { worksheetFunction } from "../src/registry/worksheetFunction.ts";
import { seatOf, shortestBoard } from "../src/roof/members/commonRafter.ts";
import { jackEdge, jackRunFromTape, jackRuns, jackStep, jackTape, type JackRuns } from "../src/roof/members/jack.ts";
import { atCorner, andThen, otherSide, type CornerGiven } from "./arguments/corners.ts";
import { refused } from "./arguments/refused.ts";

const family = "jack";
const sidePitch = pitch("pitch", "Pitch of the jack's roof plane.");
const offset = length("offset", "Level distance along the jack's plate line from the corner to the jack's center.", {
  example: "48",
});
const hipThickness = length("hipThickness", "Thickness of the hip.", { example: "1.5" });
const jackThickness = length("jackThickness", "Thickness of the jack.", { example: "1.5" });
const heel = length("heel", "Height above plate of jacks and commons.", { example: "4.4" });
const jackRefusals = ["no hip", "jack wider than offset", "short point below plate"] as const;

interface JackGiven extends CornerGiven {
  readonly offset: number;
  readonly hipThickness: number;
  readonly jackThickness: number;
}

/** A figure of the jack that is given, worked out from its level runs. */
const ofRuns =
  <Given extends JackGiven>(work: (runs: JackRuns, given: Given) => number) =>
  (given: Given) =>
    atCorner(given, ({ near }) =>
      andThen(jackRuns(near, given.offset, { face: given.hipThickness / 2, thickness: given.jackThickness }), (runs) =>
        work(runs, given),
      ),
    );

export const jackStepFunction = worksheetFunction({
  name: "JACKSTEP",
  family,
  summary: "Difference in length between neighboring jacks.",
  parameters: [
    sidePitch,
    length("spacing", "Spacing of the jacks, center to center.", { example: "24" }),
    ...otherSide,
  ],
  result: "value",
  returns: "the difference along the slope, in the unit of spacing.",
  examples: [
    { cells: ["8/12", 16], result: 19.23, source: "NAVEDTRA 14044, ch. 2: unit rise 8, 16 in o.c., 19.23 in" },
    {
      cells: [10, 16],
      result: 20.83,
      source: "Carpenters and Builders Guide, vol. 3, p. 975: rise 10, 16 in o.c., 20.83 in",
    },
    { cells: [6, 24], result: 26.83, source: "framing-square table: rise 6, 24 in o.c." },
  ],
  refuses: refused("no hip"),
  compute: (given) => atCorner(given, (at) => jackStep(at.near, given.spacing)),
});

export const jackLine = worksheetFunction({
  name: "JACKLINE",
  family,
  summary: "Line length of a jack: from the plate line to the center line of the hip, with no thickness taken off.",
  parameters: [sidePitch, offset, ...otherSide],
  result: "value",
  returns: "the length along the slope, in the unit of offset.",
  examples: [
    {
      cells: [8, 16],
      result: 19.23,
      source: "NAVEDTRA 14044, ch. 2: shortest hip jack, unit rise 8, 16 in o.c., 19.23 in",
    },
    {
      cells: [8, 32],
      result: 38.46,
      source: "NAVEDTRA 14044, ch. 2: the next jack is twice the first",
      tolerance: 0.01,
    },
  ],
  refuses: refused("no hip"),
  compute: (given) => atCorner(given, (at) => jackStep(at.near, given.offset)),
});

export const jackLen = worksheetFunction({
  name: "JACKLEN",
  family,
  summary: "Length of a jack to its long point, along the top edge from the plumb line over the plate line.",
  parameters: [sidePitch, offset, hipThickness, jackThickness, ...otherSide],
  result: "value",
  returns: "the long-point length, in the unit of offset.",
  examples: [
    {
      cells: [6, 48, 1.5, 1.5],
      result: 53.3183,
      source:
        "NAVEDTRA 14044, ch. 2: half the 45-degree thickness of the hip off the center line; (48 - 1.5 x 16.97 / 12 / 2 + 0.75) x 13.4164 / 12",
    },
    { cells: [9, 48, 1.5, 1.5, 12], result: 79.6875, source: "3-4-5 triangle: (48.75 x 4/3 - 0.75 x 5/3) x 5/4" },
    { cells: [`6/12`, `4'`, `1 1/2"`, `1 1/2"`], result: 53.3183 },
  ],
  refuses: refused(...jackRefusals),
  compute: ofRuns(({ long }, { pitch }) => long * alongSlope(pitch)),
});

export const jackShort = worksheetFunction({
  name: "JACKSHORT",
  family,
  summary: "Length of a jack to its short point, along the top edge from the plumb line over the plate line.",
  parameters: [sidePitch, offset, hipThickness, jackThickness, ...otherSide],
  result: "value",
  returns: "the short-point length, in the unit of offset.",
  examples: [
    { cells: [6, 48, 1.5, 1.5], result: 51.6413 },
    { cells: [9, 48, 1.5, 1.5, 12], result: 77.1875, source: "3-4-5 triangle: (47.25 x 4/3 - 0.75 x 5/3) x 5/4" },
  ],
  refuses: refused(...jackRefusals),
  compute: ofRuns(({ short }, { pitch }) => short * alongSlope(pitch)),
});

export const jackTapeFunction = worksheetFunction({
  name: "JACKTAPE",
  family,
  summary:
    "Straight tape on a jack's long-point face, from the seat-cut corner on the plate's outer edge to the long point.",
  parameters: [sidePitch, offset, hipThickness, jackThickness, heel, ...otherSide],
  result: "value",
  returns: "the tape length, in the unit of offset; what is measured in the air before cutting.",
  examples: [
    { cells: [6, 48, 1.5, 1.5, 4.3992], result: 55.4255 },
    {
      cells: [9, 48, 1.5, 1.5, 4, 12],
      result: 82.1498,
      source: "Pythagoras on the long point's run of 63.75 and rise of 4 + 47.8125 (3-4-5 triangle)",
    },
  ],
  refuses: refused(...jackRefusals),
  compute: ofRuns(({ long }, { pitch, heel }: JackGiven & { heel: number }) => jackTape(pitch, long, heel)),
});

export const jackFromTape = worksheetFunction({
  name: "JACKFROMTAPE",
  family,
  summary: "Long-point length that a measured tape means.",
  parameters: [
    sidePitch,
    length("tape", "Straight tape measured from the plate's outer top edge to the long point.", { example: "55.42" }),
    heel,
  ],
  result: "value",
  returns: "the long-point length along the top edge, in the unit of tape.",
  examples: [
    {
      cells: [9, 82.1498, 4],
      result: 79.6875,
      tolerance: 0.0001,
      source: "Pythagoras on a run of 63.75 and a rise of 51.8125 (3-4-5 triangle)",
    },
    { cells: [6, 55.4255, 4.3992], result: 53.3183, tolerance: 0.0002 },
  ],
  refuses: refused("tape not above heel"),
  compute: ({ pitch, tape, heel }) => andThen(jackRunFromTape(pitch, tape, heel), (level) => level * alongSlope(pitch)),
});

export const jackTilt = worksheetFunction({
  name: "JACKTILT",
  family,
  summary:
    "Saw tilt of a jack's head cut, from square, while the saw follows the plumb line; valley jacks and cripples have the same.",
  parameters: [sidePitch, ...otherSide],
  result: "value",
  returns: "degrees; 45 at equal pitches and a square corner.",
  examples: [
    {
      cells: [6],
      result: 45,
      source: "common practice, no source: a regular jack's head is cut with the saw tilted 45 degrees",
    },
    { cells: [9, 12], result: 53.1301, source: "3-4-5 triangle" },
  ],
  refuses: refused("no hip"),
  compute: (given) => atCorner(given, ({ near }) => directionAngle(near.cos, near.sin)),
});

export const jackEdgeFunction = worksheetFunction({
  name: "JACKEDGE",
  family,
  summary:
    "Angle that a jack's head cut leaves across its top edge, from square; valley jacks and cripples have the same.",
  parameters: [sidePitch, ...otherSide],
  result: "value",
  returns: "degrees; more than the saw tilt, because the edge is seen along the slope.",
  examples: [
    {
      cells: [8],
      result: 50.1944,
      tolerance: 0.5,
      source:
        "NAVEDTRA 14044, ch. 2: side cut of the jack on 12 and 10, unit rise 8 (14.42 in 12 brought down to 10 in)",
    },
    { cells: [6], result: 48.1897 },
  ],
  refuses: refused("no hip"),
  compute: (given) => atCorner(given, ({ near }) => slopeAngle(jackEdge(near))),
});

export const jackBoard = worksheetFunction({
  name: "JACKBOARD",
  family,
  summary: "Shortest straight board that holds a jack, its tail and slanting ends included.",
  parameters: [
    sidePitch,
    offset,
    hipThickness,
    jackThickness,
    length("depth", "Depth of the jack, square to its slope.", { example: "5.5" }),
    heel,
    length("overhang", "Level distance from the plate line to the plumb tail cut; 0 for none.", {
      zero: true,
      example: "16",
    }),
    ...otherSide,
  ],
  result: "value",
  returns: "the length of the board, in the unit of offset.",
  examples: [
    {
      cells: [9, 48, 1.5, 1.5, 8, 7, 16, 12],
      result: 105.6875,
      source: "3-4-5 triangle: (63.75 + 16) x 5/4 + 8 x 3/4",
    },
    { cells: [6, 48, 1.5, 1.5, 5.5, 4.4, 0], result: 55.286 },
  ],
  refuses: refused(...jackRefusals, "heel above depth"),
  compute(given) {
    const { pitch, depth, heel, overhang } = given;
    const seat = seatOf(pitch, depth, heel);
    if (seat instanceof Failure) return seat;
    return ofRuns(({ long }) => shortestBoard({ pitch, run: long, overhang, depth, heel }))(given);
  },
});

export const jacks = [
  jackStepFunction,
  jackLine,
  jackLen,
  jackShort,
  jackTapeFunction,
  jackFromTape,
  jackTilt,
  jackEdgeFunction,
  jackBoard,
];
