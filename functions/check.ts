import { triangleAngle } from "../src/geometry/triangleAngle.ts";
import { lengthText } from "../src/measure/lengthText.ts";
import { Failure } from "../src/measure/result.ts";
import { length, optionalLength } from "../src/registry/parameters.ts";
import { worksheetFunction } from "../src/registry/worksheetFunction.ts";
import { refused } from "./arguments/refused.ts";

const family = "check";

/** A jack off by this much can often still be used (common practice, no source). */
const USUAL = { in: 0.25, mm: 6 } as const;

export const agree = worksheetFunction({
  name: "AGREE",
  family,
  summary: "Says whether a measured length agrees with the computed one, or how far it is long or short.",
  parameters: [
    length("measured", "Length measured on site; a bare number is inches, or millimeters beside a metric text.", {
      zero: true,
    }),
    length("computed", "Length computed, read likewise.", { zero: true }),
    optionalLength("tolerance", "How far off still counts as agreeing.", `1/4 in, or 6 mm for metric text`, {
      example: "0.25",
    }),
  ],
  result: "value",
  returns: `text: "agrees", or "long by" or "short by" with the difference as read on a tape.`,
  examples: [
    { cells: [53.25, 53.3183], result: "agrees", source: "common practice, no source: within 1/4 in" },
    { cells: [`4' 6"`, 53.3183], result: `long by 11/16"` },
    { cells: ["1340 mm", "1354 mm"], result: "short by 14 mm" },
    { cells: [1340, "1354 mm"], result: "short by 14 mm" },
  ],
  compute({ measured, computed, tolerance }, { unit }) {
    const metric = unit === "mm";
    const off = measured - computed;
    // A tolerance that the difference meets exactly counts as met, in spite of the last bit of a double.
    if (Math.abs(off) <= (tolerance ?? USUAL[metric ? "mm" : "in"]) + 1e-9) return "agrees";
    const text = (value: number) => lengthText(value, metric ? "mm" : "in", 16);
    const by = text(Math.abs(off));
    return `${off > 0 ? "long" : "short"} by ${by === text(0) ? `less than ${text(metric ? 1 : 1 / 16)}` : by}`;
  },
});

export const cornerDeg = worksheetFunction({
  name: "CORNERDEG",
  family,
  summary: "Corner angle from two sides measured along the plates and the diagonal between their ends.",
  parameters: [
    length("sideA", "Length measured from the corner along one plate.", { example: "36" }),
    length("sideB", "Length measured from the corner along the other plate.", { example: "48" }),
    length("diagonal", "Length between the two ends.", { example: "60" }),
  ],
  result: "value",
  returns: "degrees.",
  examples: [
    { cells: [`3'`, `4'`, `5'`], result: 90, source: "the 3-4-5 triangle (Euclid I.48)" },
    { cells: [10, 10, 10], result: 60, source: "the equilateral triangle (Euclid I.1, I.32)" },
  ],
  refuses: refused("no triangle"),
  compute({ sideA, sideB, diagonal }) {
    const least = Math.abs(sideA - sideB);
    const most = sideA + sideB;
    return diagonal > least && diagonal < most
      ? triangleAngle(sideA, sideB, diagonal)
      : new Failure({ kind: "no triangle", least, most });
  },
});

export const checks = [agree, cornerDeg];
