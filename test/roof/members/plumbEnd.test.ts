import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { endReach, plumbEnd, stopsOf, tiltOf } from "../../../src/roof/members/plumbEnd.ts";

const number = (most: number) => fc.double({ min: -most, max: most, noNaN: true });
const cut = fc.record({ at: number(100), per: number(3) });

describe("plumbEnd", () => {
  it("two cheeks meet in a plumb edge, one is left where that edge lies outside the board", () => {
    const cheeks = [
      { at: 10, per: 1 },
      { at: 12, per: -1 },
    ];
    // By hand: 10 + y = 12 - y at y = 1, where both reach 11.
    expect(plumbEnd(cheeks, -3, 3)).toEqual({ cuts: cheeks, farthest: 1 });
    expect(plumbEnd(cheeks, -3, 0.5)).toEqual({ cuts: [cheeks[0]], farthest: 0.5 });
    expect(plumbEnd(cheeks, 2, 4)).toEqual({ cuts: [cheeks[1]], farthest: 2 });
  });

  it("keeps inside every cut, touches one everywhere, and reaches nowhere farther than it says", () => {
    fc.assert(
      fc.property(
        fc.array(cut, { minLength: 1, maxLength: 3 }),
        fc.double({ min: 0.5, max: 4, noNaN: true }),
        (cuts, half) => {
          const end = plumbEnd(cuts, -half, half);
          for (const part of [0, 0.13, 0.5, 0.77, 1]) {
            const across = -half + 2 * half * part;
            const reach = endReach(end.cuts, across);
            for (const { at, per } of cuts) expect(reach).toBeLessThanOrEqual(at + per * across + 1e-9);
            expect(reach).toBeLessThanOrEqual(endReach(cuts, end.farthest) + 1e-9);
          }
          expect(stopsOf(cuts, -half, half)).toContain(end.farthest);
        },
      ),
      { seed: 4 },
    );
  });

  it("tilts by the angle whose tangent is what it runs on for each unit across", () => {
    expect(tiltOf({ at: 0, per: -1 })).toBeCloseTo(45, 12);
  });
});
