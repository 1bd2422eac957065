import { degrees, type Degrees } from "../measure/degrees.ts";

/**
 * The angle of a slope given as rise over run, in degrees.
 *
 * @example
 * slopeAngle(1) // => degrees(45)
 */
export function slopeAngle(riseOverRun: number): Degrees {
  return degrees((Math.atan(riseOverRun) * 180) / Math.PI);
}

/**
 * The angle whose tangent is y over x, in degrees; right where x is 0, where a quotient would not be.
 *
 * @example
 * directionAngle(0, 1) // => degrees(90)
 */
export function directionAngle(x: number, y: number): Degrees {
  return degrees((Math.atan2(y, x) * 180) / Math.PI);
}

/**
 * The cosine of an angle in degrees, exactly 0 at 90, so that a square corner is square.
 *
 * @example
 * cosine(degrees(90)) // => 0
 */
export function cosine(angle: Degrees): number {
  return angle === 90 ? 0 : Math.cos((angle * Math.PI) / 180);
}

/**
 * The sine of an angle in degrees, exactly 1 at 90.
 *
 * @example
 * sine(degrees(90)) // => 1
 */
export function sine(angle: Degrees): number {
  return Math.sin((angle * Math.PI) / 180);
}
