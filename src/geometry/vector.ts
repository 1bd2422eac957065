/** A step in space: level x and y, and plumb z. */
export interface Vector3 {
  readonly x: number;
  readonly y: number;
  readonly z: number;
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
