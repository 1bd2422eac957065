import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { alongSlope } from "../../../src/geometry/alongSlope.ts";
import { Failure } from "../../../src/measure/result.ts";
import { crippleRun, valleyJackRuns } from "../../../src/roof/members/valley.ts";
import { number, refusal } from "../../functions/asked.ts";
import { between, cornerOf, corners } from "../arbitraries.ts";
import { atX, atY, far, meet, space, type Vec } from "../inSpace.ts";

const thickness = between(0.5, 4);
const from = (point: Vec, other: Vec, way: 1 | -1): number =>
  Math.sign(way * (other[1] - point[1])) * far(point, other);

describe("a valley jack", () => {
  it("is cut where its faces, the plane, the valley's face and the ridge's meet", () => {
    fc.assert(
      fc.property(
        corners,
        between(10, 100),
        between(100, 300),
        thickness,
        thickness,
        between(0, 3),
        (given, offset, run, valley, jack, ridge) => {
          const runs = valleyJackRuns(cornerOf(given).near, offset, run, valley, jack, ridge);
          if (runs instanceof Failure) return;
          const at = space(given.one, given.two, given.angle);
          // At an inner corner the building lies beyond the meeting line: the jack's foot is on the valley's face on that side.
          const length = (x: number) =>
            from(meet(atX(x), at.near, at.face(-valley / 2)), meet(atX(x), at.near, atY(run - ridge / 2)), 1);
          const along = alongSlope(given.one / 12);
          expect(runs.long * along).toBeCloseTo(length(offset - jack / 2), 6);
          expect(runs.short * along).toBeCloseTo(length(offset + jack / 2), 6);
        },
      ),
      { seed: 1, numRuns: 300 },
    );
  });

  it("needs a board longer than its long side by the lean of its plumb end", () => {
    const cells = [9, 48, 144, 1.5, 1.5, 1.5] as const;
    expect(number("VALLEYBOARD", ...cells, 8, 12) - number("VALLEYJACK", ...cells, 12)).toBeCloseTo((8 * 3) / 4, 10);
    expect(number("VALLEYJACK", ...cells, 12) - number("VALLEYSHORT", ...cells, 12)).toBeCloseTo(
      number("JACKSTEP", 9, 1.5, 12),
      10,
    );
  });

  it.each(["VALLEYJACK", "VALLEYSHORT", "VALLEYBOARD"])(
    "%s refuses one of which nothing is left, with the largest offset",
    (name) => {
      const more = name === "VALLEYBOARD" ? [5.5] : [];
      const message = refusal(name, 6, 160, 144, 1.5, 1.5, 1.5, ...more);
      const named = Number(/nothing is left between valley and ridge\. Type less than ([\d.]+)\./.exec(message)![1]);
      expect(message).toMatch(/^offset: /);
      expect(number(name, 6, named - 1e-6, 144, 1.5, 1.5, 1.5, ...more)).toBeGreaterThan(0);
      expect(refusal(name, 6, named + 2e-4, 144, 1.5, 1.5, 1.5, ...more)).toMatch(/^offset: /);
    },
  );

  it.each(["VALLEYJACK", "VALLEYSHORT"])("%s: refuses a run that leaves no offset, with the run that does", (name) => {
    const named = Number(
      /^run: .* Type a run of more than ([\d.]+)\.$/.exec(refusal(name, 6, 48, 2, 1.5, 1.5, 1.5))![1],
    );
    expect(number(name, 6, 1.5, named + 1e-6, 1.5, 1.5, 1.5)).toBeGreaterThan(0);
    expect(refusal(name, 6, 1.5, named - 2e-4, 1.5, 1.5, 1.5)).toMatch(/^run: /);
  });

  it("refuses one wider than its offset", () => {
    const message = refusal("VALLEYJACK", 6, 0.5, 144, 1.5, 1.5, 1.5);
    expect(message).toMatch(/^offset: 0\.5 /);
    const named = Number(/Type more than ([\d.]+)\.$/.exec(message)![1]);
    expect(number("VALLEYJACK", 6, named, 144, 1.5, 1.5, 1.5)).toBeGreaterThan(0);
    expect(refusal("VALLEYJACK", 6, named - 0.01, 144, 1.5, 1.5, 1.5)).toMatch(/^offset: /);
  });
});

describe("a cripple", () => {
  it("is cut where its faces, the plane, the hip's face and the valley's meet", () => {
    fc.assert(
      fc.property(
        corners,
        between(30, 200),
        between(10, 100),
        thickness,
        thickness,
        thickness,
        (given, distance, beyond, hip, valley, own) => {
          const run = crippleRun(cornerOf(given).near, distance, hip, valley);
          if (run instanceof Failure) return;
          const at = space(given.one, given.two, given.angle);
          // The valley's corner stands `distance` along the plate from the hip's: its face is the hip's moved along x.
          const foot = { normal: at.face(-valley / 2).normal, offset: -valley / 2 + at.along[1] * distance };
          const length = (x: number) => from(meet(atX(x), at.near, foot), meet(atX(x), at.near, at.face(hip / 2)), 1);
          for (const x of [distance + beyond - own / 2, distance + beyond + own / 2])
            expect(run * alongSlope(given.one / 12)).toBeCloseTo(length(x), 6);
        },
      ),
      { seed: 2, numRuns: 300 },
    );
  });

  it("needs a board longer by the slant of its ends and the lean of its plumb cut", () => {
    const cells = [9, 72, 1.5, 1.5] as const;
    expect(number("CRIPPLEBOARD", ...cells, 2, 8, 12) - number("CRIPPLELEN", ...cells, 12)).toBeCloseTo(
      number("JACKSTEP", 9, 2, 12) + (8 * 3) / 4,
      10,
    );
  });

  it.each(["CRIPPLELEN", "CRIPPLEBOARD"])(
    "%s refuses hip and valley too near each other, with the least distance",
    (name) => {
      const more = name === "CRIPPLEBOARD" ? [1.5, 5.5] : [];
      const named = Number(/^distance: .*Type more than ([\d.]+)\./.exec(refusal(name, 6, 2, 1.5, 1.5, ...more))![1]);
      expect(number(name, 6, named + 1e-6, 1.5, 1.5, ...more)).toBeGreaterThan(0);
      expect(refusal(name, 6, named - 2e-4, 1.5, 1.5, ...more)).toMatch(/^distance: /);
    },
  );
});

it("valley and hip are the one line of the same two planes", () =>
  expect(number("HIPLEN", 6, 144, 9)).toBeCloseTo(
    far(meet(space(6, 9).near, space(6, 9).far, atY(144)), [0, 0, 0]),
    9,
  ));
