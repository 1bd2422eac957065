import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Point } from "../../src/geometry/point.ts";
import { clipped, levelAt, levelsOf, polygonArea } from "../../src/geometry/polygon.ts";

const SQUARE: readonly Point[] = [
  { x: 0, y: 0 },
  { x: 4, y: 0 },
  { x: 4, y: 4 },
  { x: 0, y: 4 },
];
const area = (polygon: readonly Point[]) =>
  polygon.reduce((sum, b, i) => sum + polygon.at(i - 1)!.x * b.y - b.x * polygon.at(i - 1)!.y, 0) / 2;

describe("clipped", () => {
  it.each([
    ["halves a square", 1, 0, 2, 8],
    ["leaves what lies wholly inside", 1, 0, 9, 16],
    ["keeps corners that lie on the line", 1, 0, 4, 16],
    ["cuts a corner off", 1, 1, 7, 15.5],
    ["leaves nothing outside", 1, 0, -1, 0],
  ])("%s", (_, a, b, c, left) => {
    expect(area(clipped(SQUARE, a, b, c))).toBeCloseTo(left, 12);
  });

  it("and what the other side of the line leaves are together the whole", () => {
    const number = fc.double({ min: -3, max: 3, noNaN: true });
    const line = fc.tuple(number, number, number).filter(([a, b]) => Math.hypot(a, b) > 0.01);
    fc.assert(
      fc.property(line, ([a, b, c]) => {
        const inside = clipped(SQUARE, a, b, c);
        expect(area(inside) + area(clipped(SQUARE, -a, -b, -c))).toBeCloseTo(16, 9);
        for (const { x, y } of inside) expect(a * x + b * y).toBeLessThanOrEqual(c + 1e-9);
      }),
      { seed: 2 },
    );
  });

  it("gives each corner once, also where the line runs through corners", () => {
    expect(clipped(SQUARE, 1, 0, 4)).toEqual(SQUARE);
    expect(clipped(SQUARE, 1, 1, 4)).toEqual([SQUARE[0], SQUARE[1], SQUARE[3]]);
    expect(clipped(SQUARE, -1, -1, -4)).toEqual(SQUARE.slice(1));
    expect(clipped(SQUARE, 1, 0, 0)).toEqual([SQUARE[0], SQUARE[3]]);
  });

  it("of nothing is nothing", () => {
    expect(clipped([], 1, 1, 1)).toEqual([]);
  });
});

describe("levels", () => {
  // Leans to the right, with a corner between its two others on either side.
  const kite: readonly Point[] = [
    { x: 1, y: 0 },
    { x: 7, y: 2 },
    { x: 5, y: 6 },
    { x: 2, y: 3 },
  ];

  it.each([
    [0, 1, 1],
    [1, 1 + 1 / 3, 4],
    [2, 1 + 2 / 3, 7],
    [3, 2, 6.5],
    [4, 3, 6],
    [6, 5, 5],
  ])("at %s it reaches from %s to %s, by hand", (at, from, to) => {
    const reach = { at, from: expect.closeTo(from, 12), to: expect.closeTo(to, 12) };
    expect(levelAt(kite, at)).toEqual(reach);
    expect(levelAt([...kite].reverse(), at)).toEqual(reach);
  });

  it("a level side counts from end to end", () => {
    expect(levelAt(SQUARE, 4)).toEqual({ at: 4, from: 0, to: 4 });
    expect(levelAt(SQUARE, 1)).toEqual({ at: 1, from: 0, to: 4 });
  });

  it("outside there is none", () => {
    for (const at of [-1, 9]) expect(levelAt(kite, at)).toEqual({ at, from: Infinity, to: -Infinity });
  });

  it("one at each y of a corner, lowest first; those nearer than the slack are one", () => {
    expect(levelsOf(kite, 0).map(({ at }) => at)).toEqual([0, 2, 3, 6]);
    expect(levelsOf(kite, 1).map(({ at }) => at)).toEqual([0, 2, 6]);
    expect(levelsOf(kite, 0.99).map(({ at }) => at)).toEqual([0, 2, 3, 6]);
    expect(levelsOf(SQUARE, 0)).toEqual([
      { at: 0, from: 0, to: 4 },
      { at: 4, from: 0, to: 4 },
    ]);
  });

  it("between them the polygon is made of straight ends: their trapezoids are its area", () => {
    const levels = levelsOf(kite, 0);
    const area = levels.slice(1).reduce((sum, high, i) => {
      const low = levels[i]!;
      return sum + ((high.to - high.from + low.to - low.from) / 2) * (high.at - low.at);
    }, 0);
    expect(area).toBeCloseTo(polygonArea(kite), 12);
  });
});
