import type { Point } from "../../geometry/point.ts";

/** Less than this part of the step between two lines is no line. */
const NONE = 1e-6;

/**
 * Lines across a convex polygon, falling to the right at 45 degrees, a step apart along x.
 *
 * @example
 * hatched([{ x: 0, y: 0 }, { x: 4, y: 0 }, { x: 4, y: 4 }, { x: 0, y: 4 }], 4) // => [[{ x: 0, y: 4 }, { x: 4, y: 0 }]]
 */
export function hatched(polygon: readonly Point[], step: number): [Point, Point][] {
  const sums = polygon.map(({ x, y }) => x + y);
  const first = Math.floor(Math.min(...sums) / step) + 1;
  const lines: [Point, Point][] = [];
  for (let n = first; n * step < Math.max(...sums) - NONE * step; n++) {
    const crossings = polygon
      .flatMap((b, i): Point[] => {
        const a = polygon.at(i - 1)!;
        const [from, to] = [a.x + a.y - n * step, b.x + b.y - n * step];
        if (from < 0 === to < 0) return [];
        const part = from / (from - to);
        return [{ x: a.x + part * (b.x - a.x), y: a.y + part * (b.y - a.y) }];
      })
      .sort((a, b) => a.x - b.x);
    if (crossings.length === 2) lines.push([crossings[0]!, crossings[1]!]);
  }
  return lines;
}
