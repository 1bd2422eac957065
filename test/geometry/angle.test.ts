import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { alongSlope } from "../../src/geometry/alongSlope.ts";
import { cosine, directionAngle, sine, slopeAngle } from "../../src/geometry/angle.ts";
import { triangleAngle } from "../../src/geometry/triangleAngle.ts";
import { degrees } from "../../src/measure/degrees.ts";

const angle = fc.double({ min: 0.01, max: 179.99, noNaN: true }).map(degrees);
const side = fc.double({ min: 0.1, max: 1000, noNaN: true });

// Exact by Euclid: the equilateral triangle halved, the square halved, 3-4-5 and 5-12-13.
describe("angles", () => {
  it.each([
    [1, 45],
    [Math.sqrt(3), 60],
    [1 / Math.sqrt(3), 30],
    [0, 0],
  ])("a slope of %s is %s degrees", (slope, expected) => expect(slopeAngle(slope)).toBeCloseTo(expected, 12));
  it.each([
    [1, 0, 0],
    [0, 1, 90],
    [-1, 1, 135],
    [1, 1, 45],
  ])("the direction %s, %s is at %s degrees", (x, y, expected) =>
    expect(directionAngle(x, y)).toBeCloseTo(expected, 12),
  );
  it("is exact at a square corner", () => expect([cosine(degrees(90)), sine(degrees(90))]).toEqual([0, 1]));

  it("a slope's angle gives the slope back", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 11, noNaN: true }), (slope) => {
        expect(Math.tan((slopeAngle(slope) * Math.PI) / 180)).toBeCloseTo(slope, 10);
      }),
      { seed: 1 },
    );
  });
  it("sine and cosine are one point of a circle, at its own direction", () => {
    fc.assert(
      fc.property(angle, (one) => {
        expect(Math.hypot(sine(one), cosine(one))).toBeCloseTo(1, 12);
        expect(directionAngle(cosine(one), sine(one))).toBeCloseTo(one, 9);
      }),
      { seed: 2 },
    );
  });
});

describe("alongSlope", () => {
  it.each([
    [0.75, 1.25],
    [5 / 12, 13 / 12],
    [0, 1],
    [1, Math.SQRT2],
  ])("over a run of 1 at %s: %s", (slope, expected) => expect(alongSlope(slope)).toBeCloseTo(expected, 14));
  it("is one over the cosine of the slope's angle", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 11, noNaN: true }), (slope) => {
        expect(alongSlope(slope) * cosine(slopeAngle(slope))).toBeCloseTo(1, 10);
      }),
      { seed: 3 },
    );
  });
});

describe("triangleAngle", () => {
  it.each([
    [3, 4, 5, 90],
    [10, 10, 10, 60],
    [1, 1, Math.sqrt(3), 120],
    [5, 12, 13, 90],
    [1, 1, 2, 180],
  ])("%s, %s and %s: %s degrees", (a, b, c, expected) => expect(triangleAngle(a, b, c)).toBeCloseTo(expected, 6));
  it("is the angle that the sides were laid out at", () => {
    fc.assert(
      fc.property(side, side, angle, (a, b, between) => {
        const opposite = Math.hypot(b * cosine(between) - a, b * sine(between));
        // Near 0 and 180 degrees the third side itself no longer tells the angle to the last digits.
        fc.pre(opposite > Math.abs(a - b) * (1 + 1e-6) && opposite < (a + b) * (1 - 1e-6));
        expect(triangleAngle(a, b, opposite)).toBeCloseTo(between, 6);
      }),
      { seed: 4 },
    );
  });
  it.each([
    [3, 4, 7.001],
    [3, 4, 0.999],
  ])("is not-a-number where %s, %s and %s make none", (a, b, c) => expect(triangleAngle(a, b, c)).toBeNaN());
});
