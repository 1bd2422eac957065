import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Point } from "../../src/geometry/point.ts";
import { clipped } from "../../src/geometry/polygon.ts";

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

  it("of nothing is nothing", () => {
    expect(clipped([], 1, 1, 1)).toEqual([]);
  });
});
