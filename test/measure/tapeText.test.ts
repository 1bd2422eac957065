import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readLength } from "../../src/measure/readLength.ts";
import { tapeRound } from "../../src/measure/tapeRound.ts";
import { tapeText } from "../../src/measure/tapeText.ts";

describe("tapeText", () => {
  it.each([
    [112.625, `9' 4 5/8"`],
    [96, `8' 0"`],
    [97, `8' 1"`],
    [96.1875, `8' 0 3/16"`],
    [7.1875, `7 3/16"`],
    [0.1875, `3/16"`],
    [0, `0"`],
    [-0, `0"`],
    [12, `1' 0"`],
    [11.99, `1' 0"`],
    [11.96875, `1' 0"`],
    [7.5, `7 1/2"`],
    [-0.25, `-1/4"`],
    [-112.625, `-9' 4 5/8"`],
    [-0.01, `0"`],
    [53.3183, `4' 5 5/16"`],
    [432, `36' 0"`],
  ])("writes %d in as %s", (inches, text) => {
    expect(tapeText(inches)).toBe(text);
  });

  it.each([
    [2, `7"`],
    [4, `7 1/4"`],
    [8, `7 1/8"`],
    [16, `7 3/16"`],
    [32, `7 3/16"`],
    [64, `7 11/64"`],
  ] as const)("writes 7.176 in to 1/%d in as %s", (smallest, text) => {
    expect(tapeText(7.176, smallest)).toBe(text);
  });

  it("reads back as the rounded length, for every smallest mark", () => {
    const anyLength = fc.oneof(
      fc.double({ min: -1e6, max: 1e6, noNaN: true }),
      fc.double({ min: -30, max: 30, noNaN: true }),
      fc.double({ min: -1e15, max: 1e15, noNaN: true }),
    );
    fc.assert(
      fc.property(anyLength, fc.constantFrom(2, 4, 8, 16, 32, 64), (inches, smallest) => {
        expect(readLength(tapeText(inches, smallest))).toEqual({ value: tapeRound(inches, smallest), unit: "in" });
      }),
      { seed: 1, numRuns: 2_000 },
    );
  });

  it("never throws, not even on what is no length", () => {
    fc.assert(
      fc.property(fc.double(), (inches) => {
        expect(tapeText(inches)).not.toBe("");
      }),
      { seed: 2 },
    );
    expect([NaN, Infinity, -Infinity].map((x) => tapeText(x))).toEqual(["NaN", "Infinity", "-Infinity"]);
  });
});
