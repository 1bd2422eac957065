import { degrees, type Degrees } from "../measure/degrees.ts";

/**
 * The angle between two sides of a triangle, from the lengths of all three, in degrees.
 *
 * Kahan's half-angle form of the law of cosines, which loses nothing for a thin triangle; NaN where the sides make none.
 *
 * @example
 * triangleAngle(3, 4, 5) // => degrees(90)
 */
export function triangleAngle(sideA: number, sideB: number, opposite: number): Degrees {
  const difference = Math.abs(sideA - sideB);
  const square =
    ((opposite + difference) * (opposite - difference)) / ((sideA + sideB + opposite) * (sideA + sideB - opposite));
  return degrees((Math.atan(Math.sqrt(square)) * 360) / Math.PI);
}
