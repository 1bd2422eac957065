import { alongSlope } from "../src/geometry/alongSlope.ts";
import { slopeAngle } from "../src/geometry/angle.ts";
import { length, pitch } from "../src/registry/parameters.ts";
import { worksheetFunction } from "../src/registry/worksheetFunction.ts";

const family = "pitch";
const roofPitch = pitch("pitch", `Pitch of the roof plane: the rise in 12, or text such as "6/12", "26.57°" or "50%".`);

export const pitchDeg = worksheetFunction({
  name: "PITCHDEG",
  family,
  summary: "Angle of a roof pitch from level.",
  parameters: [roofPitch],
  result: "value",
  returns: "degrees.",
  examples: [
    { cells: [12], result: 45, source: "a right triangle with equal legs (Euclid I.5, I.32)" },
    { cells: ["6/12"], result: 26.5651 },
    { cells: ["50%"], result: 26.5651 },
  ],
  compute: ({ pitch }) => slopeAngle(pitch),
});

export const pitchRise = worksheetFunction({
  name: "PITCHRISE",
  family,
  summary: "Rise in 12 of run of a roof pitch.",
  parameters: [roofPitch],
  result: "value",
  returns: "rise in 12 of run.",
  examples: [
    { cells: ["45°"], result: 12, source: "a right triangle with equal legs (Euclid I.5, I.32)", tolerance: 1e-9 },
    { cells: ["6 in 12"], result: 6 },
  ],
  compute: ({ pitch }) => pitch * 12,
});

export const pitchFrom = worksheetFunction({
  name: "PITCHFROM",
  family,
  summary: "Rise in 12 of a rise measured over a measured run.",
  parameters: [length("rise", "Plumb rise, measured over the run."), length("run", "Level run it was measured over.")],
  result: "value",
  returns: "rise in 12 of run.",
  examples: [
    { cells: [10, 20], result: 6 },
    { cells: [`10'`, `15'`], result: 8, source: "NAVEDTRA 14044, ch. 2: unit rise 8, span 30 ft, total rise 10 ft" },
  ],
  compute: ({ rise, run }) => (rise * 12) / run,
});

export const slopeLen = worksheetFunction({
  name: "SLOPELEN",
  family,
  summary: "Length along the slope over a level run.",
  parameters: [roofPitch, length("run", "Level run.")],
  result: "value",
  returns: "the length along the slope, in the unit of run.",
  examples: [
    { cells: [7, 12], result: 13.89, source: "NAVEDTRA 14044, ch. 2: common, unit rise 7, 13.89 in per foot of run" },
    { cells: [16, 12], result: 20, source: "US Army EN0069, lesson 2: common, unit rise 16, 20.00 in" },
    { cells: [9, 12], result: 15, source: "Hodgson, ABC of the Steel Square: common, rise 9, 15 in per foot of run" },
  ],
  compute: ({ pitch, run }) => run * alongSlope(pitch),
});

export const pitches = [pitchDeg, pitchRise, pitchFrom, slopeLen];
