import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { directionAngle } from "../../../src/geometry/angle.ts";
import { degrees } from "../../../src/measure/degrees.ts";
import { Failure } from "../../../src/measure/result.ts";
import { corner, turned } from "../../../src/roof/members/corner.ts";
import { number, refusal } from "../../functions/asked.ts";
import { between, cornerOf, corners, rise } from "../arbitraries.ts";
import { space } from "../inSpace.ts";

describe("corner", () => {
  it("is regular at equal pitches: half the corner on either side", () => {
    fc.assert(
      fc.property(rise, between(20, 170), (one, angle) => {
        const { near, far } = cornerOf({ one, two: one, angle });
        expect(directionAngle(near.cos, near.sin)).toBeCloseTo(angle / 2, 9);
        expect(directionAngle(far.cos, far.sin)).toBeCloseTo(angle / 2, 9);
      }),
      { seed: 1 },
    );
  });

  it("is the line in which the two planes meet, solved as linear equations", () => {
    fc.assert(
      fc.property(corners, (given) => {
        const { near, slope } = cornerOf(given);
        const at = space(given.one, given.two, given.angle);
        expect([near.cos, near.sin, slope]).toEqual(
          [at.along[0], at.along[1], at.rise].map((value) => expect.closeTo(value, 10)),
        );
      }),
      { seed: 2 },
    );
  });

  it("is the same from either side", () => {
    fc.assert(
      fc.property(corners, (given) => {
        const [from, back] = [
          cornerOf(given),
          turned(cornerOf({ one: given.two, two: given.one, angle: given.angle })),
        ];
        for (const side of ["near", "far"] as const)
          for (const part of ["pitch", "tan", "sin", "cos"] as const)
            expect(back[side][part]).toBeCloseTo(from[side][part], 9);
        expect(back.slope).toBeCloseTo(from.slope, 10);
      }),
      { seed: 3 },
    );
  });

  it("parts the corner in two plan angles: they add up to it, 90 at a square corner", () => {
    fc.assert(
      fc.property(corners, (given) => {
        const { near, far } = cornerOf(given);
        expect(directionAngle(near.cos, near.sin) + directionAngle(far.cos, far.sin)).toBeCloseTo(given.angle, 9);
      }),
      { seed: 4 },
    );
    fc.assert(
      fc.property(rise, rise, (one, two) => {
        expect(number("JACKTILT", one, two) + number("JACKTILT", two, one)).toBeCloseTo(90, 9);
      }),
      { seed: 5 },
    );
  });

  it("gives the hip one slope seen from both sides, flatter than either plane", () => {
    fc.assert(
      fc.property(corners, (given) => {
        const { near, far, slope } = cornerOf(given);
        expect(near.pitch * near.sin).toBeCloseTo(slope, 12);
        expect(far.pitch * far.sin).toBeCloseTo(slope, 10);
        expect(slope).toBeLessThanOrEqual(Math.min(near.pitch, far.pitch) + 1e-12);
      }),
      { seed: 6 },
    );
  });
});

describe("pitches and corners with no hip", () => {
  it.each([
    [3, 12, 150],
    [12, 3, 150],
    [6, 12, 120],
    [2, 20, 100],
  ])("%s and %s in 12 at %s degrees: refused, with the pitches, the corner and the limit", (one, two, angle) => {
    const least = -Math.cos((angle * Math.PI) / 180) * Math.max(one, two);
    expect(corner(one / 12, two / 12, degrees(angle))).toEqual(
      new Failure({
        kind: "no hip",
        pitch: expect.closeTo(one, 10),
        otherPitch: expect.closeTo(two, 10),
        corner: angle,
        least: expect.closeTo(least, 9),
      }),
    );
    for (const [name, cells] of [
      ["JACKLEN", [48, 1.5, 1.5]],
      ["HIPLEN", [144]],
      ["HIPDEG", []],
      ["CRIPPLELEN", [72, 1.5, 1.5]],
    ] as const) {
      const message = refusal(name, one, ...cells, two, angle);
      expect(message).toMatch(/^otherPitch, corner: /);
      for (const figure of [`planes of ${one} and ${two} in 12`, `corner of ${angle}°`])
        expect(message).toContain(figure);
      const named = Number(/more than ([\d.]+) in 12/.exec(message)![1]);
      expect(named).toBeGreaterThanOrEqual(least - 1e-9);
      expect(named).toBeLessThan(least + 1e-4);
      // The limit works: the flatter pitch at just more has a hip, at just less none.
      const flatter = (rise: number) => (one < two ? [rise, ...cells, two, angle] : [one, ...cells, rise, angle]);
      expect(refusal(name, ...flatter(least - 1e-6))).toMatch(/^otherPitch, corner: /);
      if (name === "HIPDEG" || name === "HIPLEN") expect(number(name, ...flatter(named + 1e-4))).toBeGreaterThan(0);
    }
  });

  it("a corner of 180 degrees is no corner: its planes are parallel, or never meet over the plate", () => {
    expect(refusal("HIPLEN", 6, 144, 6, 180)).toMatch(/^corner: 180 was read; .*less than 180/);
    expect(corner(0.5, 0.5, degrees(180))).toBeInstanceOf(Failure);
    expect(corner(0.25, 1, degrees(180))).toBeInstanceOf(Failure);
  });

  it("never answers with what is not finite, however near to no hip", () => {
    fc.assert(
      fc.property(between(0.01, 2), between(0.01, 2), between(0.01, 179.99), (one, two, angle) => {
        const at = corner(one, two, degrees(angle));
        if (at instanceof Failure) return;
        for (const side of [at.near, at.far])
          expect([side.tan, side.sin, side.cos, at.slope].every((value) => Number.isFinite(value) && value > 0)).toBe(
            true,
          );
      }),
      { seed: 7, numRuns: 1_000 },
    );
  });
});
