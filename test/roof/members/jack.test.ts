import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { alongSlope } from "../../../src/geometry/alongSlope.ts";
import { jackEdge, jackRunFromTape, jackRuns, jackStep, jackTape } from "../../../src/roof/members/jack.ts";
import { Failure } from "../../../src/measure/result.ts";
import { number, refusal } from "../../functions/asked.ts";
import { between, cornerOf, corners, rise } from "../arbitraries.ts";
import { jackInSpace, space } from "../inSpace.ts";

const thickness = between(0.5, 4);
const offset = between(24, 200);
/** A corner, an offset with room for a jack, and the thicknesses of hip and jack. */
const jack = fc
  .tuple(corners, offset, thickness, thickness)
  .filter(
    ([at, off, hip, own]) => !(jackRuns(cornerOf(at).near, off, { face: hip / 2, thickness: own }) instanceof Failure),
  );
const cellOf = (rise: number) => `${rise}/12`;

describe("a jack", () => {
  // 3-4-5 in plan (9 and 12 in 12) and up the slope: (48.75 x 4/3 - 0.75 x 5/3) x 5/4, and 48 - 0.75 for the other face.
  it("by the 3-4-5 triangle", () => {
    expect(number("JACKLEN", 9, 48, 1.5, 1.5, 12)).toBeCloseTo(79.6875, 10);
    expect(number("JACKSHORT", 9, 48, 1.5, 1.5, 12)).toBeCloseTo(77.1875, 10);
  });

  it("is cut where its faces, the roof plane and the hip's face meet", () => {
    fc.assert(
      fc.property(jack, ([at, off, hip, own]) => {
        const wood = jackInSpace(space(at.one, at.two, at.angle), off, hip, own);
        const { long, short } = jackRuns(cornerOf(at).near, off, { face: hip / 2, thickness: own }) as {
          long: number;
          short: number;
        };
        const along = alongSlope(at.one / 12);
        expect(long * along).toBeCloseTo(wood.long, 7);
        expect(short * along).toBeCloseTo(wood.short, 7);
      }),
      { seed: 1, numRuns: 300 },
    );
  });

  it("has long and short point t tan f / cos A apart: as far as a step of its own thickness", () => {
    fc.assert(
      fc.property(jack, ([at, off, hip, own]) => {
        const cells = [cellOf(at.one), off, hip, own, cellOf(at.two), at.angle] as const;
        expect(number("JACKLEN", ...cells) - number("JACKSHORT", ...cells)).toBeCloseTo(
          number("JACKSTEP", cellOf(at.one), own, cellOf(at.two), at.angle),
          7,
        );
      }),
      { seed: 2 },
    );
  });

  it("is one step longer than its neighbor, n steps than the nth", () => {
    fc.assert(
      fc.property(jack, between(12, 48), fc.integer({ min: 1, max: 12 }), ([at, off, hip, own], spacing, n) => {
        const { near } = cornerOf(at);
        const length = (o: number) =>
          (jackRuns(near, o, { face: hip / 2, thickness: own }) as { long: number }).long * alongSlope(near.pitch);
        expect(length(off + n * spacing) - length(off)).toBeCloseTo(n * jackStep(near, spacing), 6);
      }),
      { seed: 3 },
    );
  });

  it("is the same length on both sides of a regular hip", () => {
    fc.assert(
      fc.property(rise, between(60, 150), offset, (one, angle, off) => {
        fc.pre(off > 60);
        const length = (other: unknown) => number("JACKLEN", cellOf(one), off, 1.5, 1.5, other, angle);
        expect(length(cellOf(one))).toBeCloseTo(length(""), 9);
      }),
      { seed: 4 },
    );
  });

  it("is cut with an edge angle that is at least the saw tilt", () => {
    fc.assert(
      fc.property(corners, (at) => {
        const { near } = cornerOf(at);
        expect(jackEdge(near)).toBeGreaterThan(near.tan);
      }),
      { seed: 5 },
    );
  });

  it("scales with all its lengths", () => {
    fc.assert(
      fc.property(jack, between(0.5, 25), ([at, off, hip, own], k) => {
        const length = (m: number) =>
          number("JACKLEN", cellOf(at.one), off * m, hip * m, own * m, cellOf(at.two), at.angle);
        expect(length(k) / k).toBeCloseTo(length(1), 6);
      }),
      { seed: 6 },
    );
  });
});

describe("the tape", () => {
  // 48 level and 20 up is 52.
  it("is the straight line from the plate's edge to the long point", () =>
    expect(jackTape(4 / 12, 48, 4)).toBeCloseTo(52, 12));

  it("gives the long point back", () => {
    fc.assert(
      fc.property(jack, between(0.5, 12), ([at, off, hip, own], heel) => {
        const cells = [cellOf(at.one), off, hip, own] as const;
        const tape = number("JACKTAPE", ...cells, heel, cellOf(at.two), at.angle);
        expect(number("JACKFROMTAPE", cellOf(at.one), tape, heel)).toBeCloseTo(
          number("JACKLEN", ...cells, cellOf(at.two), at.angle),
          6,
        );
      }),
      { seed: 7 },
    );
  });

  it("refuses one no longer than the heel, and answers just over it", () => {
    expect(jackRunFromTape(0.5, 4.4, 4.4)).toEqual(new Failure({ kind: "tape not above heel", least: 4.4 }));
    expect(refusal("JACKFROMTAPE", 6, 4.4, 4.4)).toBe("tape: it must be longer than the heel. Type more than 4.4.");
    expect(number("JACKFROMTAPE", 6, 4.4001, 4.4)).toBeGreaterThan(0);
  });
});

describe("a jack that is none", () => {
  it("wider than its offset", () => {
    expect(refusal("JACKLEN", 12, 1, 0.1, 1.5)).toBe(
      "offset: 1 is less than the jack's own thickness of 1.5. Type more than 1.5.",
    );
    expect(number("JACKLEN", 12, 1.5, 0.1, 1.5)).toBeGreaterThan(0);
    // With a thick hip the short point asks for more: 0.75 of the hip's square corner, and half the jack.
    expect(refusal("JACKLEN", 6, 1, 1.5, 1.5)).toMatch(/Type more than 1\.8107\.$/);
    expect(number("JACKLEN", 6, 1.8107, 1.5, 1.5)).toBeGreaterThan(0);
  });

  it.each(["JACKLEN", "JACKSHORT", "JACKTAPE", "JACKBOARD"])("%s: its short point below the plate line", (name) => {
    const more = name === "JACKTAPE" ? [4.4] : name === "JACKBOARD" ? [5.5, 4.4, 12] : [];
    const message = refusal(name, 6, 1.6, 1.5, 1.5, ...more);
    const named = Number(/Type more than ([\d.]+); for the length without thickness use JACKLINE/.exec(message)![1]);
    expect(number(name, 6, named + 1e-6, 1.5, 1.5, ...more)).toBeGreaterThan(0);
    expect(refusal(name, 6, named - 2e-4, 1.5, 1.5, ...more)).toContain("short point lies below the plate line");
  });

  it("at the limit for any corner: just beyond it the short point lies beyond the plate line", () => {
    fc.assert(
      fc.property(corners, thickness, thickness, (at, hip, own) => {
        const { near } = cornerOf(at);
        const reason = jackRuns(near, own, { face: hip / 2, thickness: own });
        if (!(reason instanceof Failure)) return;
        const least = reason.problem.least;
        const past = jackRuns(near, least * (1 + 1e-9), { face: hip / 2, thickness: own });
        expect(past).not.toBeInstanceOf(Failure);
        expect((past as { short: number }).short).toBeLessThan(1e-6);
      }),
      { seed: 8 },
    );
  });
});
