import fc from "fast-check";
import { Failure, type Result } from "../../src/measure/result.ts";
import { frame, type Frame } from "../../src/roof/frame/frame.ts";
import type { FrameProblem } from "../../src/roof/frame/frameProblem.ts";
import type { RoofSpec } from "../../src/roof/frame/roofSpec.ts";

/** A plain roof: 24' by 36', 6 in 12, rafters 2x6 at 24 in, hips and ridge 2x8. Lengths in inches. */
export const usual: RoofSpec = {
  unit: "in",
  span: 288,
  length: 432,
  pitch: 0.5,
  endPitch: null,
  ends: "hip and hip",
  spacing: 24,
  overhang: 0,
  endOverhang: null,
  rafter: { name: "2x6", thickness: 1.5, depth: 5.5 },
  hip: { name: "2x8", thickness: 1.5, depth: 7.25 },
  valley: { name: "2x8", thickness: 1.5, depth: 7.25 },
  wings: [],
  ridge: { name: "2x8", thickness: 1.5, depth: 7.25 },
  seat: 3.5,
  heel: null,
  setOutFrom: "king common",
  hipTop: "dropped",
  hipHead: "king commons",
  correction: 0,
  endCorrection: 0,
  boards: [96, 120, 144, 168, 192, 216, 240],
  endTrim: 0,
  crownDown: false,
  tailCut: "plumb",
  fascia: null,
  subFascia: null,
  blocking: "none",
  waste: 0,
  spares: 0,
};

/** The frame of a roof that can be framed. */
export function framed(change: Partial<RoofSpec> = {}): Frame {
  const made = frame({ ...usual, ...change });
  if (made instanceof Failure) throw new Error(JSON.stringify(made.problem));
  return made;
}

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Roofs of every kind that can be framed: pyramids, gables, unequal pitches, hips on the ridge. */
export const anyFrame: fc.Arbitrary<Frame> = fc
  .record({
    span: between(200, 500),
    beyond: between(0.4, 2),
    pitch: between(0.3, 1.3),
    endPitch: fc.option(between(0.3, 1.3)),
    ends: fc.constantFrom("hip and hip", "hip and gable", "gable and hip"),
    pyramid: fc.boolean(),
    spacing: fc.constantFrom(12, 16, 19.2, 24),
    overhang: fc.constantFrom(0, 12, 17.5),
    endOverhang: fc.constantFrom(null, 0, 9, 20),
    setOutFrom: fc.constantFrom("king common", "corner"),
    hipTop: fc.constantFrom("dropped", "backed", "shifted"),
    hipHead: fc.constantFrom("king commons", "ridge"),
    correction: fc.constantFrom(0, -0.125),
    spares: fc.constantFrom(0, 3),
  } as const)
  .map(({ beyond, pyramid, ...change }): Result<Frame, FrameProblem> => {
    const endRun = ((change.span / 2) * change.pitch) / (change.endPitch ?? change.pitch);
    const length = pyramid && change.ends === "hip and hip" ? 2 * endRun : 2 * endRun + beyond * change.span;
    // Deep lumber, so that unequal pitches leave a seat on either side.
    const deep = (depth: number) => ({ name: "2x14", thickness: 1.5, depth });
    return frame({
      ...usual,
      ...change,
      length,
      rafter: deep(13.25),
      hip: { name: "3x20", thickness: 2.5, depth: 30 },
    });
  })
  .filter((made) => !(made instanceof Failure)) as fc.Arbitrary<Frame>;
