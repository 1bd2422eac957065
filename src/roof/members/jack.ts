import { alongSlope } from "../../geometry/alongSlope.ts";
import { Failure, type Result } from "../../measure/result.ts";
import type { MemberProblem } from "./memberProblem.ts";
import type { CornerSide } from "./corner.ts";

/** Level runs of a jack from the plate line to its long point, its short point and the hip's center line. */
export interface JackRuns {
  readonly line: number;
  readonly long: number;
  readonly short: number;
}

/** What a jack's head meets: the hip's near face, `face` off the meeting line, and the jack's own thickness. */
export interface JackHead {
  readonly face: number;
  readonly thickness: number;
}

/**
 * Level runs of the jack at an offset along its plate line from the corner.
 *
 * The head is cut along the hip's face, which stands face / cos f before the meeting line; the two sides of the jack
 * meet it t tan f apart. All lengths in one unit.
 *
 * @returns a reason "jack wider than offset" or "short point below plate", with the offset that it must be more than.
 *
 * @example
 * jackRuns(corner(0.5, 0.5, degrees(90)).near, 48, { face: 0, thickness: 1.5 }) // => { line: 48, long: 48.75, short: 47.25 }
 */
export function jackRuns(
  side: CornerSide,
  offset: number,
  { face, thickness }: JackHead,
): Result<JackRuns, MemberProblem<"jack wider than offset" | "short point below plate">> {
  if (thickness > offset)
    return new Failure({
      kind: "jack wider than offset",
      thickness,
      offset,
      least: Math.max(thickness, face / side.sin + thickness / 2),
    });
  const line = offset * side.tan;
  const center = line - face / side.cos;
  const half = (thickness * side.tan) / 2;
  const short = center - half;
  if (!(short > 0))
    return new Failure({ kind: "short point below plate", least: face / side.sin + thickness / 2, offset });
  return { line, long: center + half, short };
}

/**
 * Difference in length between neighboring jacks: s tan f / cos A.
 *
 * @example
 * jackStep(corner(0.75, 0.75, degrees(90)).near, 16) // => 20
 */
export function jackStep(side: CornerSide, spacing: number): number {
  return spacing * side.tan * alongSlope(side.pitch);
}

/**
 * The straight tape on the long-point face from the seat-cut corner to the long point, for the long point's level run.
 *
 * @example
 * jackTape(0.75, 40, 0) // => 50
 */
export function jackTape(pitch: number, longRun: number, heel: number): number {
  return Math.hypot(longRun, heel + longRun * pitch);
}

/**
 * The long point's level run that a measured tape means: {@link jackTape} turned round.
 *
 * @returns a reason "tape not above heel" when the tape is no longer than the heel itself.
 *
 * @example
 * jackRunFromTape(0.75, 50, 0) // => 40
 */
export function jackRunFromTape(
  pitch: number,
  tape: number,
  heel: number,
): Result<number, MemberProblem<"tape not above heel">> {
  if (!(tape > heel)) return new Failure({ kind: "tape not above heel", least: heel });
  const square = 1 + pitch * pitch;
  return (Math.sqrt(square * tape * tape - heel * heel) - heel * pitch) / square;
}

/**
 * Tangent of the edge angle: what the head cut leaves across the top edge, from square.
 *
 * The saw's tilt f is in plan; along the slope everything grows by 1 / cos A.
 */
export function jackEdge(side: CornerSide): number {
  return side.tan * alongSlope(side.pitch);
}
