import type { Point } from "./point.ts";

/**
 * The part of a convex polygon where a x + b y <= c.
 *
 * Each side that crosses the line is cut there; corners on the line stay.
 *
 * @example
 * clipped([{ x: 0, y: 0 }, { x: 2, y: 0 }, { x: 2, y: 1 }, { x: 0, y: 1 }], 1, 0, 1) // => [{ x: 0, y: 0 }, { x: 1, y: 0 }, { x: 1, y: 1 }, { x: 0, y: 1 }]
 */
export function clipped(polygon: readonly Point[], a: number, b: number, c: number): Point[] {
  const kept: Point[] = [];
  if (polygon.length === 0) return kept;
  let from = polygon.at(-1)!;
  let before = a * from.x + b * from.y - c;
  for (const to of polygon) {
    const after = a * to.x + b * to.y - c;
    if ((before < 0 && after > 0) || (before > 0 && after < 0)) {
      const part = before / (before - after);
      kept.push({ x: from.x + part * (to.x - from.x), y: from.y + part * (to.y - from.y) });
    }
    if (after <= 0) kept.push(to);
    from = to;
    before = after;
  }
  return kept;
}

/**
 * The area of a polygon, positive where its corners run counterclockwise.
 *
 * @example
 * polygonArea([{ x: 0, y: 0 }, { x: 4, y: 0 }, { x: 0, y: 3 }]) // => 6
 */
export function polygonArea(polygon: readonly Point[]): number {
  let double = 0;
  let a = polygon.at(-1);
  for (const b of polygon) {
    double += a!.x * b.y - b.x * a!.y;
    a = b;
  }
  return double / 2;
}

/** How far a convex polygon reaches along x at one y. */
export interface Level {
  readonly at: number;
  readonly from: number;
  readonly to: number;
}

/**
 * How far a convex polygon reaches along x at one y within it.
 *
 * @example
 * levelAt([{ x: 0, y: 0 }, { x: 4, y: 0 }, { x: 0, y: 2 }], 1) // => { at: 1, from: 0, to: 2 }
 */
export function levelAt(polygon: readonly Point[], at: number): Level {
  let [from, to] = [Infinity, -Infinity];
  const meet = (x: number) => {
    from = Math.min(from, x);
    to = Math.max(to, x);
  };
  for (const [i, b] of polygon.entries()) {
    const a = polygon.at(i - 1)!;
    if (b.y === at) meet(b.x);
    else if ((a.y < at && b.y > at) || (a.y > at && b.y < at)) meet(a.x + ((at - a.y) / (b.y - a.y)) * (b.x - a.x));
  }
  return { at, from, to };
}

/**
 * A convex polygon by its levels: one at every y that a corner has, lowest first. Between two levels its ends run straight.
 *
 * @param slack corners so near in y are on one level.
 *
 * @example
 * levelsOf([{ x: 0, y: 0 }, { x: 4, y: 0 }, { x: 0, y: 2 }], 0) // => [{ at: 0, from: 0, to: 4 }, { at: 2, from: 0, to: 0 }]
 */
export function levelsOf(polygon: readonly Point[], slack: number): Level[] {
  const heights = polygon.map(({ y }) => y).sort((a, b) => a - b);
  return heights.filter((y, i) => i === 0 || y - heights[i - 1]! > slack).map((y) => levelAt(polygon, y));
}
