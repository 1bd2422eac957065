import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { pitchFromNumber } from "../../src/measure/pitchFromNumber.ts";
import { Failure } from "../../src/measure/result.ts";

describe("pitchFromNumber", () => {
  it.each([
    [1, 1 / 12],
    [6, 0.5],
    [6.5, 6.5 / 12],
    [24, 2],
  ])("takes %d in 12", (rise, slope) => {
    expect(pitchFromNumber(rise)).toBe(slope);
  });

  it.each([
    [0.25, "pitch below 1"],
    [0.5, "pitch below 1"],
    [0, "pitch below 1"],
    [-6, "pitch below 1"],
    [24.001, "pitch above 24"],
    [30, "pitch above 24"],
    [45292, "pitch above 24"],
  ])("refuses %d: %s", (value, tag) => {
    expect(pitchFromNumber(value)).toEqual(new Failure({ kind: tag }));
  });

  it.each([NaN, Infinity, -Infinity])("refuses %d", (value) => {
    expect(pitchFromNumber(value)).toEqual(new Failure({ kind: "not a pitch" }));
  });

  it("gives 12 times the slope back as the rise, for every rise from 1 to 24", () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 24, noNaN: true }), (rise) => {
        expect((pitchFromNumber(rise) as number) * 12).toBeCloseTo(rise, 12);
      }),
      { seed: 1 },
    );
  });
});
