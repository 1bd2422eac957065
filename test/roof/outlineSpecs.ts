import fc from "fast-check";
import { Failure } from "../../src/measure/result.ts";
import { frame, type Frame } from "../../src/roof/frame/frame.ts";
import type { Hand, Piece } from "../../src/roof/frame/piece.ts";
import { pieces } from "../../src/roof/frame/pieces.ts";
import type { RoofSpec, Section } from "../../src/roof/frame/roofSpec.ts";
import { usual } from "./anySpec.ts";

/** A roof of the project's own, which the drawings' tests start from: 24 by 36 feet at 6 in 12. */
export const HALL: RoofSpec = { ...usual, endPitch: 0.5, overhang: 16, waste: 10 };

/** The same hall in all the shapes a roof comes in. */
export const SHAPES: Readonly<Record<string, RoofSpec>> = {
  regular: HALL,
  "backed hips": { ...HALL, hipTop: "backed" },
  "unequal pitches": { ...HALL, endPitch: 9 / 12 },
  "unequal pitches, shifted hips": { ...HALL, endPitch: 9 / 12, hipTop: "shifted" },
  "hips on the ridge": { ...HALL, hipHead: "ridge" },
  "one end a gable": { ...HALL, ends: "hip and gable" },
  "square pyramid": { ...HALL, length: 288 },
  "no ridge, no overhang": { ...HALL, ridge: null, overhang: 0 },
  "from the corner, corrected": { ...HALL, setOutFrom: "corner", correction: 0.25 },
  "a fascia that is not level": { ...HALL, endPitch: 8 / 12, endOverhang: 16 },
};

/** A roof that can be framed, or the test is at fault. */
export function framed(spec: RoofSpec): { frame: Frame; pieces: readonly Piece[] } {
  const set = frame(spec);
  if (set instanceof Failure) throw new Error(JSON.stringify(set.problem));
  return { frame: set, pieces: pieces(set) };
}

const section = (thickness: number, depth: number): Section => ({ name: "2x6", thickness, depth });
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Any roof that the framing takes: those it refuses are left out. */
export const anyRoof = fc
  .record({
    span: between(120, 480),
    longer: fc.oneof(fc.constant(0), between(20, 300)),
    pitch: between(0.25, 1.4),
    endPitch: fc.oneof(fc.constant(null), between(0.25, 1.4)),
    gable: fc.boolean(),
    spacing: fc.constantFrom(12, 16, 19.2, 24),
    overhang: fc.oneof(fc.constant(0), between(0.5, 30)),
    endOverhang: fc.oneof(fc.constant(null), between(1, 30)),
    rafterThickness: between(1, 3),
    depth: between(4.5, 10),
    hipThickness: between(1, 3),
    deeper: between(0, 4),
    ridge: fc.boolean(),
    heel: fc.oneof(fc.constant(null), between(1.5, 4)),
    seat: between(1.5, 4),
    setOutFrom: fc.constantFrom<RoofSpec["setOutFrom"]>("king common", "corner"),
    hipTop: fc.constantFrom<RoofSpec["hipTop"]>("dropped", "backed", "shifted"),
    onRidge: fc.boolean(),
    correction: fc.constantFrom(0, 0.25, -0.125),
  })
  .map(
    ({
      span,
      longer,
      pitch,
      endPitch,
      gable,
      rafterThickness,
      depth,
      hipThickness,
      deeper,
      ridge,
      heel,
      seat,
      onRidge,
      correction,
      ...rest
    }): RoofSpec => {
      const end = endPitch ?? pitch;
      return {
        ...HALL,
        ...rest,
        span,
        pitch,
        endPitch: end,
        length: (span * pitch) / end + longer,
        ends: gable ? "hip and gable" : "hip and hip",
        rafter: section(rafterThickness, depth),
        hip: section(hipThickness, depth + deeper),
        ridge: ridge ? section(rafterThickness, depth + deeper) : null,
        heel,
        seat: heel === null ? seat : null,
        hipHead: onRidge && ridge ? "ridge" : "king commons",
        correction,
      };
    },
  )
  .filter((spec) => !(frame(spec) instanceof Failure));

/** The hands that a piece is cut in. */
export const handsOf = ({ left, right, plain }: Piece): Hand[] => [
  ...(left > 0 ? ["left" as const] : []),
  ...(right > 0 ? ["right" as const] : []),
  ...(plain > 0 ? ["plain" as const] : []),
];
