import { slopeAngle } from "../../geometry/angle.ts";
import { MM_PER_INCH } from "../../measure/unit.ts";
import { notchOfSeat, plumbDepthOf } from "../members/commonRafter.ts";
import { hipsIn, ridgeIn, type Frame } from "../frame/frame.ts";
import { toeBelowHip } from "../frame/notes.ts";
import type { Piece } from "../frame/piece.ts";
import { plateMarks } from "./plateMarks.ts";

/** One thing that an inspector looks at: the figure here, and the published one where there is one. */
export interface Caution {
  readonly tag: string;
  readonly measure: "length" | "angle" | "pitch";
  /** null where the roof has no such thing. */
  readonly here: number | null;
  /** What is published: the least or the most; null where nothing is. */
  readonly limit: { readonly kind: "least" | "most"; readonly value: number } | null;
}

/**
 * What an inspector looks at on this roof, in figures only: it says nothing of strength, and passes nothing.
 *
 * Published figures: IRC 2021 (R802.3, R802.4.3, R802.4.4, R802.6, R802.7 with R502.8), and the Canadian housing guide's hip 50 mm deeper than
 * the commons. Saw tilts of 45 and 60 degrees are what portable saws do (common practice, no source).
 */
export function cautions(frame: Frame, pieces: readonly Piece[]): readonly Caution[] {
  const { spec, heel } = frame;
  const { rafter } = spec;
  const hip = hipsIn(frame)[0]!;
  // Metric lumber and the code's metric figures are in whole millimeters: 1 1/2 in is 38.
  const inches = (value: number) => (spec.unit === "mm" ? Math.round(value * MM_PER_INCH) : value);
  const cutEnd = Math.max(...[hip.near, hip.far].map(({ pitch }) => plumbDepthOf(pitch, rafter.depth)));
  const hipPiece = pieces.find(({ member }) => member === "hip")!;
  const ridge = ridgeIn(frame)?.section ?? null;
  const least = (value: number) => ({ kind: "least", value }) as const;
  const most = (value: number) => ({ kind: "most", value }) as const;
  const length = (tag: string, here: number | null, limit: Caution["limit"]): Caution => ({
    tag,
    measure: "length",
    here,
    limit,
  });
  const sides = [
    ["main", hip.near],
    ["end", hip.far],
  ] as const;
  return [
    length("ridge thickness", ridge?.thickness ?? null, least(inches(ONE_NOMINAL))),
    length("ridge depth", ridge?.depth ?? null, least(cutEnd)),
    length("hip thickness", spec.hip.thickness, least(inches(TWO_NOMINAL))),
    length("hip depth", spec.hip.depth, least(cutEnd)),
    length("hip deeper than commons", spec.hip.depth - rafter.depth, least(spec.unit === "mm" ? 50 : 2)),
    ...sides.map(([name, { pitch }]): Caution => ({
      tag: `${name} pitch`,
      measure: "pitch",
      here: pitch,
      limit: least(3 / 12),
    })),
    ...sides.map(([name, { plane }]) => length(`${name} seat`, plane.seat, least(inches(1.5)))),
    ...sides.map(([name, { pitch, plane }]) =>
      length(`${name} notch`, notchOfSeat(pitch, plane.seat), most(rafter.depth / 4)),
    ),
    length("hip notch", hipPiece.notch, most(spec.hip.depth / 4)),
    length("heel left", heel, null),
    length("toe below hip", Math.max(0, ...[hip.near, hip.far].map((side) => toeBelowHip(frame, hip, side))), most(0)),
    length("jacks proud", Math.max(hip.near.proud, hip.far.proud), most(0)),
    ...sides.map(([name, { tan }]): Caution => ({
      tag: `${name} jacks' tilt`,
      measure: "angle",
      here: slopeAngle(tan),
      limit: most(45),
    })),
    { tag: "hip's tilt", measure: "angle", here: Math.max(...hip.tilts), limit: most(45) },
    length(
      "widest bay",
      Math.max(...plateMarks(frame).flatMap(({ marks }) => marks.map(({ bay }) => bay))),
      most(spec.spacing),
    ),
    length("sizing", null, null),
  ];
}

/** Dressed thickness of what is 1 in and 2 in nominal (PS 20, from memory), in inches. */
const ONE_NOMINAL = 0.75;
const TWO_NOMINAL = 1.5;
