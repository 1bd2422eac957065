import type { Point } from "../../geometry/point.ts";

/** The room that a text takes on the canvas. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** A piece of a line, from point to point. */
export type Segment = readonly [Point, Point];

/**
 * The part of a segment in a box (Liang and Barsky's clipping); null where there is none.
 *
 * @example
 * segmentIn([{ x: -5, y: 2 }, { x: 15, y: 2 }], { left: 0, top: 0, right: 10, bottom: 4 }) // => [{ x: 0, y: 2 }, { x: 10, y: 2 }]
 * segmentIn([{ x: -5, y: 9 }, { x: 15, y: 9 }], { left: 0, top: 0, right: 10, bottom: 4 }) // => null
 */
export function segmentIn([a, b]: Segment, { left, top, right, bottom }: Box): Segment | null {
  if (
    Math.max(a.x, b.x) < left ||
    Math.min(a.x, b.x) > right ||
    Math.max(a.y, b.y) < top ||
    Math.min(a.y, b.y) > bottom
  )
    return null;
  let from = 0;
  let to = 1;
  const clip = (step: number, room: number) => {
    if (step < 0) from = Math.max(from, room / step);
    if (step > 0) to = Math.min(to, room / step);
  };
  clip(a.x - b.x, a.x - left);
  clip(b.x - a.x, right - a.x);
  clip(a.y - b.y, a.y - top);
  clip(b.y - a.y, bottom - a.y);
  const at = (part: number): Point => ({ x: a.x + part * (b.x - a.x), y: a.y + part * (b.y - a.y) });
  return from > to ? null : [at(from), at(to)];
}

/** The sides of a polygon. */
export function sidesOfPolygon(polygon: readonly Point[]): Segment[] {
  return polygon.map((point, i) => [polygon.at(i - 1)!, point]);
}

/** The box round some points. */
export function boxAround(points: readonly Point[]): Box {
  let [left, right, top, bottom] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const { x, y } of points) {
    left = Math.min(left, x);
    right = Math.max(right, x);
    top = Math.min(top, y);
    bottom = Math.max(bottom, y);
  }
  return { left, right, top, bottom };
}

/** Whether a box lies in a polygon, by its corners: a ray to the right of each crosses the polygon's sides an odd number of times. */
export function holds(polygon: readonly Point[], { left, right, top, bottom }: Box): boolean {
  const inside = (x: number, y: number) =>
    sidesOfPolygon(polygon).filter(([a, b]) => a.y > y !== b.y > y && x < a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x))
      .length %
      2 ===
    1;
  return inside(left, top) && inside(right, top) && inside(left, bottom) && inside(right, bottom);
}
