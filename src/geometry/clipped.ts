/** A point of a drawing plane: a plan, a side view or a top view. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

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
  for (const [i, to] of polygon.entries()) {
    const from = polygon.at(i - 1)!;
    const before = a * from.x + b * from.y - c;
    const after = a * to.x + b * to.y - c;
    if ((before < 0 && after > 0) || (before > 0 && after < 0)) {
      const part = before / (before - after);
      kept.push({ x: from.x + part * (to.x - from.x), y: from.y + part * (to.y - from.y) });
    }
    if (after <= 0) kept.push(to);
  }
  return kept;
}
