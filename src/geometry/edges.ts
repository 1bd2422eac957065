import { meetingLine } from "./meetingLine.ts";
import { heightOver, type Plane } from "./plane.ts";
import type { Point } from "./point.ts";

/** A line in which two faces meet, from its lower end up. */
export interface Edge {
  /** The planes to its left and to its right, by their place in the list. */
  readonly left: number;
  readonly right: number;
  readonly from: Point;
  readonly to: Point;
  /** Both planes fall away from it, as from a ridge; else both rise from it. */
  readonly convex: boolean;
}

/** A side of a face's part, and a point inside of that part. */
interface Side {
  readonly a: Point;
  readonly b: Point;
  readonly inside: Point;
}

/**
 * The edges in which faces of different planes meet, found along the sides that they share.
 *
 * @param parts of each plane, as {@link faces} gives them.
 * @param slack level distance within which two sides lie on one line, and within which there is no edge.
 *
 * @example
 * edges([{ x: 1, y: 0, z: 0 }, { x: -1, y: 0, z: 4 }], faces([{ x: 1, y: 0, z: 0 }, { x: -1, y: 0, z: 4 }], [{ outline: [{ x: 0, y: 0 }, { x: 4, y: 0 }, { x: 4, y: 1 }, { x: 0, y: 1 }], planes: [0, 1] }]), 1e-9) // => [{ left: 0, right: 1, from: { x: 2, y: 0 }, to: { x: 2, y: 1 }, convex: true }]
 */
export function edges(
  planes: readonly Plane[],
  parts: readonly (readonly (readonly Point[])[])[],
  slack: number,
): Edge[] {
  const sides = parts.map((own) => own.flatMap(sidesOf));
  const found: Edge[] = [];
  for (const [i, one] of planes.entries()) {
    for (let j = i + 1; j < planes.length; j++) {
      const other = planes[j]!;
      const line = meetingLine(one, other);
      if (line === null) continue;
      const level = Math.hypot(line.x, line.y);
      // Going up, or along a level line as it comes.
      const sign = line.z < 0 ? -1 : 1;
      const along = { x: (sign * line.x) / level, y: (sign * line.y) / level };
      const most = slack * Math.hypot(one.x - other.x, one.y - other.y);
      const here = sides[i]!.filter((side) => onBoth(side, one, other, most));
      if (here.length === 0) continue;
      const there = sides[j]!.filter((side) => onBoth(side, one, other, most));
      for (const [from, to, { inside }] of joined(here, there, along, slack)) {
        const left = along.x * (inside.y - from.y) - along.y * (inside.x - from.x) > 0;
        found.push({
          left: left ? i : j,
          right: left ? j : i,
          from,
          to,
          convex: heightOver(one, inside) < heightOver(other, inside),
        });
      }
    }
  }
  return found;
}

function sidesOf(part: readonly Point[]): Side[] {
  const inside = {
    x: part.reduce((sum, { x }) => sum + x, 0) / part.length,
    y: part.reduce((sum, { y }) => sum + y, 0) / part.length,
  };
  return part.map((b, i) => ({ a: part.at(i - 1)!, b, inside }));
}

/** Whether a side lies where two planes meet, their heights over its ends no more apart than that. */
function onBoth({ a, b }: Side, one: Plane, other: Plane, most: number): boolean {
  const apart = (end: Point) => Math.abs(heightOver(one, end) - heightOver(other, end));
  return apart(a) <= most && apart(b) <= most;
}

/** What sides on one line share, as its ends along that line; stretches that touch are one. */
function joined(
  here: readonly Side[],
  there: readonly Side[],
  along: Point,
  slack: number,
): [from: Point, to: Point, side: Side][] {
  const at = ({ x, y }: Point) => x * along.x + y * along.y;
  const shared: [Point, Point, Side][] = [];
  for (const one of here) {
    for (const other of there) {
      const [[a, b], [c, d]] = [one, other].map((side) => [side.a, side.b].sort((p, q) => at(p) - at(q))) as [
        [Point, Point],
        [Point, Point],
      ];
      const [from, to] = [at(a) > at(c) ? a : c, at(b) < at(d) ? b : d];
      if (at(to) - at(from) > slack) shared.push([from, to, one]);
    }
  }
  shared.sort((p, q) => at(p[0]) - at(q[0]));
  return shared.reduce<[Point, Point, Side][]>((whole, next) => {
    const last = whole.at(-1);
    if (last && at(next[0]) - at(last[1]) <= slack) whole[whole.length - 1] = [last[0], next[1], last[2]];
    else whole.push(next);
    return whole;
  }, []);
}
