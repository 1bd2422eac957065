import type { Point } from "../../geometry/point.ts";

/** How a part of a roof is put on the canvas: to scale, in the direction it is looked at. */
export interface View {
  readonly name: string;
  /** Pixels to one unit of the roof. */
  readonly scale: number;
  /** Where on the canvas the roof's point (0, 0) comes. */
  readonly x: number;
  readonly y: number;
  /** Seen from the other side: x runs to the left. */
  readonly flip?: boolean;
  /** Rise over run that x climbs, for a board as it stands; level when left out. */
  readonly slope?: number;
  /** Width of the boards' lines in pixels; 1 when left out. */
  readonly weight?: number;
}

/**
 * Where a point of the roof comes on the canvas; a canvas's y runs down.
 *
 * @example
 * onCanvas({ name: "plan", scale: 2, x: 10, y: 100 }, { x: 5, y: 20 }) // => { x: 20, y: 60 }
 */
export function onCanvas({ scale, x, y, flip = false, slope = 0 }: View, point: Point): Point {
  const along = Math.sqrt(1 + slope * slope);
  const level = (point.x - slope * point.y) / along;
  const height = (point.y + slope * point.x) / along;
  return { x: x + (flip ? -scale : scale) * level, y: y - scale * height };
}
