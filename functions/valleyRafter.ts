import { alongSlope } from "../src/geometry/alongSlope.ts";
import { length, pitch } from "../src/registry/parameters.ts";
import { worksheetFunction } from "../src/registry/worksheetFunction.ts";
import { alongHip, hipRun, hipMarkRun } from "../src/roof/members/hip.ts";
import { shortenedHead, supportingHead, valleyCrippleRuns } from "../src/roof/members/valleyRafter.ts";
import { andThen, atCorner, otherSide } from "./arguments/corners.ts";
import { refused } from "./arguments/refused.ts";

const family = "valley";

const mainPitch = pitch("pitch", "Pitch of the main roof; otherPitch is the wing's.");
const mainRun = length("run", "Run of the main roof's common: level, from the plate line to the center of the ridge.", {
  example: ["144", `12'`],
});
const valleyThickness = length("valleyThickness", "Thickness of the valleys.", { example: "1.5" });

export const valleyLen = worksheetFunction({
  name: "VALLEYLEN",
  family,
  summary: "Line length of a valley, from the inner corner to the center of the ridge.",
  parameters: [mainPitch, mainRun, ...otherSide],
  result: "value",
  returns:
    "the length along the valley, in the unit of run. For the valley of a lower wing give the run to where its two valleys cross.",
  examples: [
    {
      cells: [9, `15'`],
      result: 288.12,
      tolerance: 0.06,
      source: "NAVEDTRA 14044, ch. 2, p. 2-28: addition span 30 ft, unit rise 9, shorter valley 24.01 ft",
    },
    {
      cells: [8, 90, 10],
      result: 129.89,
      tolerance: 0.06,
      source: "Griffith, Carpentry, uneven pitches, fig. 88: valley run 9.60 ft for a rise of 5 ft",
    },
    { cells: [8, 150, 6], result: 269.2582 },
  ],
  refuses: refused("no hip"),
  compute: (given) => atCorner(given, (at) => alongHip(at, hipRun(at, given.run))),
});

export const valleyToRidge = worksheetFunction({
  name: "VALLEYTORIDGE",
  family,
  summary:
    "Length of a supporting valley along its top center line, from the inner corner's plumb line to the main ridge's face.",
  parameters: [
    mainPitch,
    mainRun,
    length("ridgeThickness", "Thickness of the main ridge.", { zero: true, example: "1.5" }),
    ...otherSide,
  ],
  result: "value",
  returns: "the length along the valley, in the unit of run. The long point is on the wing's side of the valley.",
  examples: [
    {
      cells: [6, 144, 1.5],
      result: 214.875,
      source:
        "NAVEDTRA 14044, ch. 2: shortened half the 45-degree thickness of the ridge; 18 in per foot (Radford): 216 - 0.75 x 18 / 12",
    },
    {
      cells: [9, 144, 1.5, 12],
      result: 208.821,
      source: "3-4-5 triangle: (144 - 0.75) x 5/4 along a slope of 0.6, the root of 1.36",
    },
  ],
  refuses: refused("no hip", "ridge fills the run"),
  compute: (given) =>
    atCorner(given, (at) =>
      andThen(supportingHead(at, given.run, given.ridgeThickness), (head) => alongHip(at, head.at)),
    ),
});

export const valleyToValley = worksheetFunction({
  name: "VALLEYTOVALLEY",
  family,
  summary:
    "Length of a shortened valley along its top center line, from the inner corner's plumb line to the side of the supporting valley.",
  parameters: [
    mainPitch,
    length(
      "run",
      "Level, from the main plate line to where the two valleys cross: half the wing's span times otherPitch over pitch.",
      { example: ["96", `8'`] },
    ),
    valleyThickness,
    ...otherSide,
  ],
  result: "value",
  returns: "the length along the valley, in the unit of run. Both inner corners of the wing are alike.",
  examples: [
    {
      cells: [6, 96, 1.5],
      result: 143.2045,
      source:
        "NAVEDTRA 14044, ch. 2, p. 2-28: cut square, shortened half the supporting valley; 18 in per foot (Radford): 144 - 0.75 x 18 / 16.97",
      tolerance: 0.0002,
    },
    {
      cells: [9, 96, 1.5, 12],
      result: 139.0318,
      source: "3-4-5 triangle: 96 x 5/4 - 0.75 x 25/24, along a slope of 0.6, the root of 1.36",
    },
  ],
  refuses: refused("no hip", "valley vanishes"),
  compute: (given) =>
    atCorner(given, (at) =>
      andThen(shortenedHead(at, given.run, given.valleyThickness), (head) => alongHip(at, head.at)),
    ),
});

export const valleyMark = worksheetFunction({
  name: "VALLEYMARK",
  family,
  summary:
    "Where the center of a rafter's foot meets the near face of the valley, along the valley's top from the inner corner's plumb line squared across.",
  parameters: [
    pitch("pitch", "Pitch of the rafter's roof plane."),
    length("offset", "Level distance along the plate line from the inner corner to the rafter's center.", {
      example: "48",
    }),
    length("valleyThickness", "Thickness of the valley.", { example: "1.5" }),
    ...otherSide,
  ],
  result: "value",
  returns: "the distance along the valley, in the unit of offset.",
  examples: [
    {
      cells: [6, 12, 1.5],
      result: 18.7955,
      source: "18 in of valley per foot (Radford) and half the valley's thickness along it: 18 + 0.75 x 18 / 16.97",
    },
    {
      cells: [9, 48, 1.5, 12],
      result: 94.4614,
      source: "3-4-5 triangle: 48 x 5/3 + 0.75 x 4/3, along a slope of 0.6, the root of 1.36",
    },
  ],
  refuses: refused("no hip"),
  compute: (given) =>
    atCorner(given, (at) => alongHip(at, hipMarkRun(at.near, given.offset, -given.valleyThickness / 2))),
});

export const valleyCripple = worksheetFunction({
  name: "VALLEYCRIPPLE",
  family,
  summary: "Length of a valley cripple on its long side, from the shortened valley up to the supporting one.",
  parameters: [
    mainPitch,
    length(
      "distance",
      "Distance between the two valleys along the plate line: the cripple's offset from the supporting valley's inner corner less its offset from the other. That is twice its distance from where they cross.",
      { example: "84" },
    ),
    valleyThickness,
    length("crippleThickness", "Thickness of the cripple.", { example: "1.5" }),
    ...otherSide,
  ],
  result: "value",
  returns:
    "the length along the slope, in the unit of distance. The short side is less by the JACKSTEP of twice the cripple's thickness. Both inner corners of the wing are alike.",
  examples: [
    {
      cells: [8, 32, 1.5, 1.5],
      result: 37.7137,
      tolerance: 0.011,
      source:
        "NAVEDTRA 14044, ch. 2, p. 2-33: two common differences of 19.23 at 16 in, less half the 45-degree thickness of both valleys and with its own slant: 38.46 - (1.5 x 16.97 / 12 - 1.5) x 14.42 / 12",
    },
    {
      cells: [9, 72, 1.5, 1.5, 12],
      result: 119.375,
      source: "3-4-5 triangles: (72 x 4/3 - 1.5 x 5/3 + 1.5 x 4/3) x 5/4",
    },
  ],
  refuses: refused("no hip", "valley cripple vanishes"),
  compute: (given) =>
    atCorner(given, ({ near }) =>
      andThen(
        valleyCrippleRuns(near, given.distance, given.valleyThickness, given.crippleThickness),
        ({ long }) => long * alongSlope(given.pitch),
      ),
    ),
});

export const valleyRafters = [valleyLen, valleyToRidge, valleyToValley, valleyMark, valleyCripple];
