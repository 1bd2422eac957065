/** A plane's rise per unit of level travel along x and along y: z = x * gradient.x + y * gradient.y. */
export interface Gradient {
  readonly x: number;
  readonly y: number;
}

/** A step in space: level x and y, and plumb z. */
export interface Vector3 {
  readonly x: number;
  readonly y: number;
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
 * Shorthand for a step in examples and tests.
 *
 * @example
 * vector3(1, 2, 0.5) // => { x: 1, y: 2, z: 0.5 }
 */
export function vector3(x: number, y: number, z: number): Vector3 {
  return { x, y, z };
}
