import type { Gradient } from "./plane.ts";
import type { Vector3 } from "./vector.ts";

/**
 * The line in which two planes meet, as a step along it.
 *
 * The step takes the one plan direction in which both planes rise alike. Swapping the planes reverses it.
 *
 * @returns null when the planes are parallel, and so meet nowhere or everywhere.
 *
 * @example
 * meetingLine(gradient(0.5, 0), gradient(0, 0.5)) // => vector3(0.5, 0.5, 0.25)
 */
export function meetingLine(a: Gradient, b: Gradient): Vector3 | null {
  const x = b.y - a.y;
  const y = a.x - b.x;
  if (x === 0 && y === 0) return null;
  return { x, y, z: a.x * x + a.y * y };
}
