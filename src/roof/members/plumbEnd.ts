import { slopeAngle } from "../../geometry/angle.ts";
import type { Degrees } from "../../measure/degrees.ts";

/**
 * A plumb plane that ends a board: how far out it lets the board run on its own line, level from where its runs start, and how
 * much farther for each unit across the board.
 */
export interface PlumbCut {
  readonly at: number;
  readonly per: number;
}

/** Where a board ends at a level distance across: at the plane that it meets first. */
export function endReach(cuts: readonly PlumbCut[], across: number): number {
  let least = Infinity;
  for (const { at, per } of cuts) least = Math.min(least, at + per * across);
  return least;
}

/** The plumb plane that a board meets first at a level distance across. */
export function cutAt(cuts: readonly PlumbCut[], across: number): PlumbCut {
  return cuts.reduce((a, b) => (b.at + b.per * across < a.at + a.per * across ? b : a));
}

/** The cuts that are left on a board whose faces stand so far across, and where across it reaches farthest. */
export interface PlumbEnd {
  readonly cuts: readonly PlumbCut[];
  readonly farthest: number;
}

/**
 * The end of a board between two faces.
 *
 * Two cuts meet in a plumb edge; past a face of the board that edge is cut away, and one of them is all there is.
 *
 * @example
 * plumbEnd([{ at: 10, per: 1 }, { at: 10, per: -1 }], -2, 2).farthest // => 0
 */
export function plumbEnd(cuts: readonly PlumbCut[], from: number, to: number): PlumbEnd {
  const stops = stopsOf(cuts, from, to);
  const first = new Set(stops.slice(1).map((stop, i) => cutAt(cuts, (stop + stops[i]!) / 2)));
  return {
    cuts: cuts.filter((cut) => first.has(cut)),
    farthest: stops.reduce((a, b) => (endReach(cuts, b) > endReach(cuts, a) ? b : a)),
  };
}

/** Where across a board its end has its corners: at both faces, and at each plumb edge between them. */
export function stopsOf(cuts: readonly PlumbCut[], from: number, to: number): number[] {
  const edges = cuts.flatMap((one, i) => cuts.slice(i + 1).map((other) => (other.at - one.at) / (one.per - other.per)));
  return [from, ...edges.filter((edge) => edge > from && edge < to).sort((a, b) => a - b), to];
}

/** The saw's tilt of a plumb cut, from square. */
export function tiltOf({ per }: PlumbCut): Degrees {
  return slopeAngle(Math.abs(per));
}
