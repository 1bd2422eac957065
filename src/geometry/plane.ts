import type { Point } from "./point.ts";

/** A plane's rise per unit of level travel along x and along y: z = x * gradient.x + y * gradient.y. */
export interface Gradient {
  readonly x: number;
  readonly y: number;
}

/** A sloping plane over a plan: its gradient, and its height over the plan's origin. */
export interface Plane extends Gradient {
  readonly z: number;
}

/**
 * Shorthand for a plane's gradient in examples and tests.
 *
 * @example
 * gradient(0.5, 0) // => { x: 0.5, y: 0 }
 */
export function gradient(x: number, y: number): Gradient {
  return { x, y };
}

/**
 * The height of a plane over a point of the plan.
 *
 * @example
 * heightOver({ x: 0.5, y: 0, z: 4 }, { x: 10, y: 3 }) // => 9
 */
export function heightOver(plane: Plane, { x, y }: Point): number {
  return plane.z + plane.x * x + plane.y * y;
}
