import type { Plane } from "./plane.ts";
import type { Point } from "./point.ts";
import { clipped, polygonArea } from "./polygon.ts";

/** A convex part of a plan, and the planes that stand over it, by their place in a list: there the lowest of them is seen. */
export interface Cover {
  readonly outline: readonly Point[];
  readonly planes: readonly number[];
}

/** Of the outlines' size squared: a smaller part is what doubles lose where lines meet in one point. */
const NONE = 1e-12;

/**
 * What is seen of each plane from above, where covers stand side by side and in one another: over a point the highest cover's lowest plane.
 *
 * The face of a plane is its cover's outline, as far as no other plane of the cover is lower, less the part of every other cover where all planes of
 * that one are higher. A plane that two covers share has one face.
 *
 * @returns for each plane the convex parts of its face, counterclockwise.
 *
 * @example
 * faces([{ x: 1, y: 0, z: 0 }, { x: -1, y: 0, z: 4 }], [{ outline: [{ x: 0, y: 0 }, { x: 4, y: 0 }, { x: 4, y: 1 }, { x: 0, y: 1 }], planes: [0, 1] }])[0] // => [[{ x: 0, y: 0 }, { x: 2, y: 0 }, { x: 2, y: 1 }, { x: 0, y: 1 }]]
 */
export function faces(planes: readonly Plane[], covers: readonly Cover[]): Point[][][] {
  const all = covers.flatMap(({ outline }) => outline);
  const size = Math.max(...all.map(({ x }) => x)) - Math.min(...all.map(({ x }) => x));
  const parts: Point[][][] = planes.map(() => []);
  const bounds = covers.map(({ outline }) => boundsOf(outline));
  for (const [own, cover] of covers.entries()) {
    for (const plane of cover.planes) {
      const whole = lowest(planes, cover, plane, cover.outline);
      let seen = [whole];
      for (const [other, { outline, planes: others }] of covers.entries()) {
        if (other === own || areApart(bounds[own]!, bounds[other]!)) continue;
        const shared = others.includes(plane);
        if (shared && other > own) continue;
        const hides = shared
          ? lowest(planes, covers[other]!, plane, outline)
          : others.reduce<readonly Point[]>((rest, higher) => under(rest, planes[plane]!, planes[higher]!), outline);
        seen = seen.flatMap((part) => less(part, hides, NONE * size * size));
      }
      parts[plane]!.push(...seen.filter((part) => polygonArea(part) > NONE * size * size));
    }
  }
  return parts;
}

type Bounds = readonly [left: number, right: number, low: number, high: number];

function boundsOf(outline: readonly Point[]): Bounds {
  const [x, y] = [outline.map((point) => point.x), outline.map((point) => point.y)];
  return [Math.min(...x), Math.max(...x), Math.min(...y), Math.max(...y)];
}

/** Two covers that stand apart, as most wings do, hide nothing of each other. */
const areApart = (one: Bounds, other: Bounds): boolean =>
  one[1] <= other[0] || other[1] <= one[0] || one[3] <= other[2] || other[3] <= one[2];

/** Where this plane is the lowest of its cover. */
function lowest(planes: readonly Plane[], cover: Cover, plane: number, outline: readonly Point[]): Point[] {
  return cover.planes.reduce((rest, other) => under(rest, planes[plane]!, planes[other]!), [...outline]);
}

/** The part of a polygon where the one plane is no higher than the other. */
const under = (polygon: readonly Point[], low: Plane, high: Plane): Point[] =>
  clipped(polygon, low.x - high.x, low.y - high.y, high.z - low.z);

/** A convex polygon less another one, as convex parts. */
function less(polygon: Point[], hole: readonly Point[], none: number): Point[][] {
  // Where two roofs only touch, doubles leave a hole of no size, whose sides tell nothing.
  if (polygonArea(hole) <= none) return [polygon];
  const parts: Point[][] = [];
  let rest = polygon;
  for (let i = 0; i < hole.length; i++) {
    const a = hole.at(i - 1)!;
    const b = hole[i]!;
    // The hole lies to the left of each of its sides.
    const x = b.y - a.y;
    const y = a.x - b.x;
    if (x * x + y * y <= none) continue;
    const c = x * a.x + y * a.y;
    parts.push(clipped(rest, -x, -y, -c));
    rest = clipped(rest, x, y, c);
  }
  if (polygonArea(rest) <= none) return [polygon];
  return parts;
}
