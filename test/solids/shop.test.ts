import fc from "fast-check";
import { afterEach, describe, expect, it } from "vitest";
import { frameOf, placed, seenFrom } from "./frame.ts";
import { beyond, opposite } from "./half.ts";
import { Shop } from "./shop.ts";
import { distance, UP } from "./vector.ts";
import type { Vec } from "./vector.ts";

const shop = new Shop();
afterEach(() => shop.sweep());

const level = frameOf([0, 0, 0], [1, 0, 0]);
const coordinate = fc.double({ min: -300, max: 300, noNaN: true });
const anyPoint = fc.tuple(coordinate, coordinate, coordinate);
const anyStep = fc.tuple(coordinate, coordinate, coordinate).filter(([x, y]) => Math.hypot(x, y) > 1);

describe("the shop", () => {
  it("reads corners in double precision, which no single-precision mesh holds", () => {
    const length = 400 + 1e-9;
    const farthest = Math.max(...shop.corners(shop.board(level, 1.5, 5.5, 0, length)).map(([x]) => x));
    expect(farthest).toBe(length);
    expect(Math.fround(length)).not.toBe(length);
  });

  it("places a board so that its own directions give its own measures back", () => {
    fc.assert(
      fc.property(anyPoint, anyStep, (at, step) => {
        const frame = frameOf(at, step);
        for (const corner of shop.corners(shop.board(frame, 1.5, 5.5, -3, 60))) {
          const [a, l, t] = seenFrom(frame, corner);
          expect(
            [
              Math.min(Math.abs(a + 3), Math.abs(a - 60)),
              Math.abs(Math.abs(l) - 0.75),
              Math.min(Math.abs(t), Math.abs(t + 5.5)),
            ].every((off) => off < 1e-9),
          ).toBe(true);
          expect(distance(placed(frame, [a, l, t]), corner)).toBeLessThan(1e-9);
        }
        shop.sweep();
      }),
      { seed: 1, numRuns: 100 },
    );
  });

  it("splits a board in two parts that make up the whole and lie on their sides of the plane", () => {
    fc.assert(
      fc.property(
        anyStep,
        fc.double({ min: 0.1, max: 9, noNaN: true }),
        fc.double({ min: 1, max: 59, noNaN: true }),
        (step, long, at) => {
          const frame = frameOf([20, -30, 40], step);
          const board = shop.board(frame, 1.5, 5.5, 0, 60);
          // A normal of any length stands for the same plane.
          const half = beyond(
            [long * frame.along[0], long * frame.along[1], long * frame.along[2]],
            placed(frame, [at, 0, 0]),
          );
          const [front, back] = [shop.trim(board, half), shop.trim(board, opposite(half))];
          expect(front.volume()).toBeCloseTo((60 - at) * 8.25, 8);
          expect(back.volume()).toBeCloseTo(at * 8.25, 8);
          expect(shop.overlap(front, back)).toBeLessThan(1e-9);
          shop.sweep();
        },
      ),
      { seed: 1, numRuns: 100 },
    );
  });

  it("notches only where a corner of the board lies in front of all the planes", () => {
    const board = shop.board(level, 2, 4, 0, 10);
    const low: Vec = [0, 0, -3];
    expect(shop.notch(board, opposite(beyond(UP, low)), beyond([1, 0, 0], [8, 0, 0])).volume()).toBeCloseTo(
      80 - 2 * 2 * 1,
      10,
    );
    expect(shop.notch(board, beyond([1, 0, 0], [11, 0, 0])).volume()).toBeCloseTo(80, 10);
  });

  it("finds the volume that two boards share", () => {
    const one = shop.board(level, 2, 4, 0, 10);
    expect(shop.overlap(one, shop.board(level, 1, 1, 9, 20))).toBeCloseTo(1, 10);
    expect(shop.overlap(one, shop.board(level, 1, 1, 10, 20))).toBe(0);
  });

  it("gives everything back when it is swept", () => {
    shop.trim(shop.board(level, 2, 4, 0, 10), beyond(UP, [0, 0, -1]));
    expect(shop.held).toBeGreaterThan(0);
    shop.sweep();
    expect(shop.held).toBe(0);
  });
});
