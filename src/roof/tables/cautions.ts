import { slopeAngle } from "../../geometry/angle.ts";
import { MM_PER_INCH } from "../../measure/unit.ts";
import { hipsIn, ridgeIn, type Frame } from "../frame/frame.ts";
import { toeBelowHip } from "../frame/notes.ts";
import type { Piece } from "../frame/piece.ts";
import { notchOfSeat, plumbDepthOf } from "../members/commonRafter.ts";
import { sawReaches } from "../members/sawReach.ts";
import { plateMarks } from "./plateMarks.ts";

/** What an inspector looks at. */
export type CautionKind =
  | "ridge thickness"
  | "ridge depth"
  | "hip thickness"
  | "hip depth"
  | "hip deeper than commons"
  | "pitch"
  | "seat"
  | "notch"
  | "wood left"
  | "tail"
  | "heel"
  | "hip's heel"
  | "toe below hip"
  | "jacks proud"
  | "jacks' tilt"
  | "hip's tilt"
  | "widest bay"
  | "sizing";

/** One thing that an inspector looks at: the figure here, and the published one where there is one. */
export interface Caution {
  readonly kind: CautionKind;
  /** The side that it is of, Both where the sides have the same figures; null where it is of no side. */
  readonly side: "Main" | "End" | "Both" | null;
  readonly measure: "length" | "angle" | "pitch";
  /** null where the roof has no such thing. */
  readonly here: number | null;
  /** The least or the most that is published; "about" is no limit. null where nothing is published. */
  readonly limit: { readonly kind: "least" | "most" | "about"; readonly value: number } | null;
  /** The figure here lies outside the published one. */
  readonly outside: boolean;
}

/** Published limits in inches and in millimeters, as the books give both. */
const PUBLISHED = {
  oneNominal: { in: 0.75, mm: 19 },
  twoNominal: { in: 1.5, mm: 38 },
  deeper: { in: 2, mm: 50 },
  seat: { in: 1.5, mm: 38 },
  woodLeft: { in: 3.5, mm: 89 },
  tail: { in: 24, mm: 610 },
  abovePlate: { in: 2, mm: 2 * MM_PER_INCH },
} as const;

/** Less than this is no difference, in any unit. */
const NONE = 1e-6;

/**
 * What an inspector looks at on this roof, what lies outside a published figure first. In figures only: it says nothing of strength, and passes nothing.
 *
 * IRC 2021: R802.3, R802.4.3, R802.4.4, R802.6; a notch under a tail by R802.7.1.1 (3 1/2 in of wood left, a tail of 24 in), without a tail by R802.7
 * and R502.8 (a quarter of the depth). NAVEDTRA 14044, p. 2-11: 2 in of rafter above the plate. The Canadian housing guide: a hip 50 mm deeper than the
 * commons. Dressed thicknesses: PS 20, from memory.
 */
export function cautions(frame: Frame, pieces: readonly Piece[]): readonly Caution[] {
  const { spec, heel } = frame;
  const { rafter, unit } = spec;
  const hip = hipsIn(frame)[0]!;
  const ridge = ridgeIn(frame)?.section ?? null;
  const cutEnd = Math.max(...[hip.near, hip.far].map(({ pitch }) => plumbDepthOf(pitch, rafter.depth)));
  const length = (
    kind: CautionKind,
    here: number | null,
    limit: "least" | "most" | "about" | null = null,
    value = 0,
    side: "Main" | "End" | "Both" | null = null,
  ): Caution => ({
    kind,
    side,
    measure: "length",
    here,
    limit: limit && { kind: limit, value },
    outside: isOutside(here, limit, value),
  });
  const tilt = (kind: CautionKind, here: number, thickness: number, side: "Main" | "End" | "Both" | null): Caution => ({
    ...length(kind, here, null, 0, side),
    measure: "angle",
    outside: !sawReaches(here, thickness, unit),
  });
  const sides = [["Main", hip.near] as const, ["End", hip.far] as const].map(([side, { pitch, tan, plane }]) => [
    { ...length("pitch", pitch, "least", 3 / 12, side), measure: "pitch" as const },
    length("seat", plane.seat, "least", PUBLISHED.seat[unit], side),
    ...(plane.overhang > 0
      ? [
          length("wood left", rafter.depth - notchOfSeat(pitch, plane.seat), "least", PUBLISHED.woodLeft[unit], side),
          length("tail", plane.overhang, "most", PUBLISHED.tail[unit], side),
        ]
      : [length("notch", notchOfSeat(pitch, plane.seat), "most", rafter.depth / 4, side)]),
    tilt("jacks' tilt", slopeAngle(tan), rafter.thickness, side),
  ]);
  const hipPiece =
    pieces.find(({ member }) => member === "hip") ?? pieces.find(({ member }) => member === "broken hip")!;
  const bays = plateMarks(frame)
    .filter(({ place }) => place?.kind !== "ridge")
    .flatMap(({ marks }) => marks.map(({ bay }) => bay));
  const all = [
    length("ridge thickness", ridge?.thickness ?? null, "least", PUBLISHED.oneNominal[unit]),
    length("ridge depth", ridge?.depth ?? null, "least", cutEnd),
    length("hip thickness", spec.hip.thickness, "least", PUBLISHED.twoNominal[unit]),
    length("hip depth", spec.hip.depth, "least", cutEnd),
    length("hip deeper than commons", spec.hip.depth - rafter.depth, "about", PUBLISHED.deeper[unit]),
    ...merged(sides.flat()),
    length("heel", heel, "least", PUBLISHED.abovePlate[unit]),
    length("hip's heel", hipPiece.heel, "least", PUBLISHED.abovePlate[unit]),
    length("toe below hip", Math.max(0, ...[hip.near, hip.far].map((side) => toeBelowHip(frame, hip, side))), "most"),
    length("jacks proud", Math.max(hip.near.proud, hip.far.proud), "most"),
    tilt("hip's tilt", Math.max(...hip.tilts), spec.hip.thickness, null),
    length("widest bay", Math.max(...bays), "most", spec.spacing),
    length("sizing", null),
  ];
  return [...all.filter(({ outside }) => outside), ...all.filter(({ outside }) => !outside)];
}

function isOutside(here: number | null, limit: "least" | "most" | "about" | null, value: number): boolean {
  if (here === null) return false;
  return limit === "least" ? here < value - NONE : limit === "most" && here > value + NONE;
}

/** What is the same on main sides and ends is said once. */
function merged(cautions: readonly Caution[]): Caution[] {
  const alike = (a: Caution, b: Caution) =>
    a.kind === b.kind && a.side !== b.side && Math.abs(a.here! - b.here!) < NONE;
  return cautions
    .filter((one) => one.side === "Main" || !cautions.some((other) => alike(one, other)))
    .map((one) => (cautions.some((other) => alike(one, other)) ? { ...one, side: "Both" } : one));
}
