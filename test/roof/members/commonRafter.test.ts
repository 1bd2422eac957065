import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  commonLength,
  heelOf,
  notchOf,
  plumbDepthOf,
  seatOf,
  shortestBoard,
} from "../../../src/roof/members/commonRafter.ts";
import { Failure } from "../../../src/measure/result.ts";
import { number, refusal } from "../../functions/asked.ts";
import { between } from "../arbitraries.ts";

const slope = between(0.1, 2);
const depth = between(3, 14);
const share = between(0.05, 0.95);

describe("seat, heel and notch", () => {
  // 3-4-5: 8 in deep at 9 in 12 is 10 in plumb; a heel of 7 leaves 3 in plumb, 4 in level and 2.4 in square to the slope.
  it("by the 3-4-5 triangle", () =>
    expect([plumbDepthOf(0.75, 8), seatOf(0.75, 8, 7), heelOf(0.75, 8, 4), notchOf(0.75, 8, 7)]).toEqual([
      10,
      4,
      7,
      expect.closeTo(2.4, 12),
    ]));

  it("one gives the other back", () => {
    fc.assert(
      fc.property(slope, depth, share, (pitch, deep, part) => {
        const heel = plumbDepthOf(pitch, deep) * part;
        const seat = seatOf(pitch, deep, heel) as number;
        expect(heelOf(pitch, deep, seat)).toBeCloseTo(heel, 9);
        expect(number("HEEL", `${pitch}/1`, deep, number("SEATWIDTH", `${pitch}/1`, deep, heel))).toBeCloseTo(heel, 9);
      }),
      { seed: 1 },
    );
  });

  it("the notch is what is left of the depth under the plate's edge, square to the slope", () => {
    fc.assert(
      fc.property(slope, depth, share, (pitch, deep, part) => {
        const heel = plumbDepthOf(pitch, deep) * part;
        const angle = Math.atan(pitch);
        // The distance of the plate's edge, one heel under the top edge, from the underside.
        expect(notchOf(pitch, deep, heel)).toBeCloseTo(deep - heel * Math.cos(angle), 10);
        expect(notchOf(pitch, deep, heel)).toBeCloseTo((seatOf(pitch, deep, heel) as number) * Math.sin(angle), 9);
      }),
      { seed: 2 },
    );
  });

  it.each([
    ["SEATWIDTH", [9, 8]],
    ["NOTCHDEPTH", [9, 8]],
  ])("%s refuses a heel of the plumb depth, and answers just under it", (name, cells) => {
    expect(refusal(name, ...cells, 10)).toBe(
      "heel: nothing is left to notch. Type less than 10, the plumb depth of the rafter at this pitch.",
    );
    expect(number(name, ...cells, 10 - 1e-6)).toBeGreaterThan(0);
  });

  it.each([
    ["COMMONBOARD", (heel: number) => [9, 80, 0, 8, heel, 16]],
    ["JACKBOARD", (heel: number) => [9, 48, 1.5, 1.5, 8, heel, 16]],
    ["TAILBOARD", (heel: number) => [9, 16, 8, heel]],
  ] as const)("%s too", (name, cells) => {
    expect(refusal(name, ...cells(10.2))).toContain("Type less than 10,");
    expect(number(name, ...cells(10 - 1e-6))).toBeGreaterThan(0);
  });

  it("a seat that takes all the heel is refused with the most that leaves some", () => {
    expect(heelOf(0.75, 8, 14)).toEqual(new Failure({ kind: "seat takes the heel", most: 40 / 3 }));
    expect(refusal("HEEL", 9, 8, 14)).toContain(
      "seat: it is wider than the rafter can take at this pitch. Type less than 13.3333.",
    );
    expect(number("HEEL", 9, 8, 13.3333)).toBeGreaterThan(0);
  });
});

describe("commonLength", () => {
  it("takes half the ridge off the run", () => {
    fc.assert(
      fc.property(slope, between(20, 300), between(0, 6), (pitch, run, ridge) => {
        const length = commonLength(pitch, run, ridge) as number;
        // The top edge as a step of run and rise.
        expect(length).toBeCloseTo(Math.hypot(run - ridge / 2, (run - ridge / 2) * pitch), 9);
      }),
      { seed: 3 },
    );
  });
  it("refuses a ridge that fills the run, with the least run", () => {
    expect(refusal("COMMONLEN", 9, 0.75, 1.5)).toContain(
      "run: nothing is left before the ridge's face. Type a run of more than 0.75",
    );
    expect(number("COMMONLEN", 9, 0.75 + 1e-6, 1.5)).toBeGreaterThan(0);
  });
});

describe("shortestBoard", () => {
  it("holds every corner of the finished piece and no more", () => {
    fc.assert(
      fc.property(
        slope,
        depth,
        share,
        between(40, 200),
        fc.oneof(fc.constant(0), between(4, 40)),
        (pitch, deep, part, run, overhang) => {
          const angle = Math.atan(pitch);
          const plumb = deep / Math.cos(angle);
          const heel = plumb * part;
          const top = (x: number) => heel + x * pitch;
          // Side view from the plate's outer top edge: the head's plumb end, then the tail's, or with none the seat's corner and the top edge over it.
          const head = [
            [run, top(run)],
            [run, top(run) - plumb],
          ] as const;
          const foot =
            overhang > 0
              ? ([
                  [-overhang, top(-overhang)],
                  [-overhang, top(-overhang) - plumb],
                ] as const)
              : ([
                  [0, heel],
                  [0, 0],
                ] as const);
          const along = [...head, ...foot].map(([x, z]) => x * Math.cos(angle) + z * Math.sin(angle));
          expect(shortestBoard({ pitch, run, overhang, depth: deep, heel })).toBeCloseTo(
            Math.max(...along) - Math.min(...along),
            9,
          );
        },
      ),
      { seed: 4 },
    );
  });

  it("is the common's length and its tail's board", () => {
    fc.assert(
      fc.property(slope, depth, share, between(0, 40), (pitch, deep, part, overhang) => {
        const heel = plumbDepthOf(pitch, deep) * part;
        const cell = `${pitch}/1`;
        expect(number("COMMONBOARD", cell, 144, 1.5, deep, heel, overhang)).toBeCloseTo(
          number("COMMONLEN", cell, 144, 1.5) + number("TAILBOARD", cell, overhang, deep, heel),
          9,
        );
      }),
      { seed: 5 },
    );
  });
});

it("scales: all lengths k times as long give a result k times as long", () => {
  fc.assert(
    fc.property(slope, between(0.1, 50), (pitch, k) => {
      const cell = `${pitch}/1`;
      expect(number("COMMONLEN", cell, 144 * k, 1.5 * k) / k).toBeCloseTo(number("COMMONLEN", cell, 144, 1.5), 8);
      expect(number("COMMONBOARD", cell, 144 * k, 1.5 * k, 8 * k, 3 * k, 16 * k) / k).toBeCloseTo(
        number("COMMONBOARD", cell, 144, 1.5, 8, 3, 16),
        8,
      );
      expect(number("RIDGEHEIGHT", cell, 144 * k, 1.5 * k, 3 * k) / k).toBeCloseTo(
        number("RIDGEHEIGHT", cell, 144, 1.5, 3),
        8,
      );
    }),
    { seed: 6 },
  );
});
