import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { halfUp } from "../../src/measure/halfUp.ts";

describe("halfUp", () => {
  it.each([
    [2.5, 3],
    [2.4999999999999996, 2],
    [0.49999999999999994, 0],
    [0.5, 1],
    [-0.5, 0],
    [-0.5000000000000001, -1],
    [-2.5, -2],
    [-1e-20, 0],
    [4503599627370495.5, 4503599627370496],
    [2 ** 53 + 2, 2 ** 53 + 2],
  ])("%d -> %d", (value, whole) => {
    expect(halfUp(value)).toBe(whole);
  });

  it("is whole and nearest", () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (value) => {
        const whole = halfUp(value);
        expect(Number.isInteger(whole)).toBe(true);
        expect(Math.abs(whole - value)).toBeLessThanOrEqual(0.5);
      }),
      { seed: 1 },
    );
  });

  it("hands not-a-number and infinities back", () => {
    expect([NaN, Infinity, -Infinity].map(halfUp)).toEqual([NaN, Infinity, -Infinity]);
  });
});
