import fc from "fast-check";
import Fraction from "fraction.js";
import { describe, expect, it } from "vitest";
import { tapeRound } from "../../src/measure/tapeRound.ts";

// The same rounding in exact fractions: a double is a whole number over a power of two, which toString(2) writes out.
function exactly(inches: number, smallest: number): number {
  let twos = 0;
  while (!Number.isInteger(inches * 2 ** twos)) twos++;
  const marks = new Fraction(BigInt(inches * 2 ** twos), 2n ** BigInt(twos)).mul(smallest);
  return marks.add(1, 2).floor().div(smallest).valueOf();
}

const anySmallest = fc.constantFrom(2, 4, 8, 16, 32, 64);

describe("tapeRound", () => {
  it.each([
    [53.3183, 16, 53.3125],
    [53.34375, 16, 53.375],
    [53.343749999999, 16, 53.3125],
    [0.03125, 16, 0.0625],
    [-0.03125, 16, 0],
    [-0.0313, 16, -0.0625],
    [-0.09375, 16, -0.0625],
    [0.25, 2, 0.5],
    [0.125, 4, 0.25],
    [0.0625, 8, 0.125],
    [1 / 64, 32, 1 / 32],
    [1 / 128, 64, 1 / 64],
    [0.49999999999999994 / 16, 16, 0],
    [0, 16, 0],
    [-0, 16, 0],
    [96, 16, 96],
    [1e300, 64, 1e300],
  ] as const)("rounds %d to 1/%d in: %d", (inches, smallest, rounded) => {
    expect(tapeRound(inches, smallest)).toBe(rounded);
  });

  it("rounds to sixteenths unless told otherwise", () => {
    expect(tapeRound(1.04)).toBe(1.0625);
  });

  it("equals the same rounding in exact fractions", () => {
    const anyLength = fc.oneof(
      fc.double({ min: -1e6, max: 1e6, noNaN: true }),
      fc.integer({ min: -100_000, max: 100_000 }).map((n) => n / 128),
      fc.double({ min: -2, max: 2, noNaN: true }),
    );
    fc.assert(
      fc.property(
        anyLength.filter((x) => x === 0 || Math.abs(x) > 1e-9),
        anySmallest,
        (inches, smallest) => {
          expect(tapeRound(inches, smallest)).toBe(exactly(inches, smallest) + 0);
        },
      ),
      { seed: 1, numRuns: 2_000 },
    );
  });

  it("stays as it is once rounded, and never moves by more than half a mark", () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), anySmallest, (inches, smallest) => {
        const rounded = tapeRound(inches, smallest);
        expect(tapeRound(rounded, smallest)).toBe(rounded);
        expect(Math.abs(rounded - inches)).toBeLessThanOrEqual(0.5 / smallest);
      }),
      { seed: 2 },
    );
  });

  it("hands not-a-number and infinities back", () => {
    expect([NaN, Infinity, -Infinity].map((x) => tapeRound(x))).toEqual([NaN, Infinity, -Infinity]);
  });
});
