import { alongSlope } from "../../geometry/alongSlope.ts";
import { slopeAngle } from "../../geometry/angle.ts";
import { MM_PER_INCH, type Unit } from "../../measure/unit.ts";
import { planesOf, type RoofPlane } from "../frame/blocks.ts";
import { hipsIn, ridgeIn, valleysIn, type Frame } from "../frame/frame.ts";
import { laidSeat, valleyBoardsIn } from "../frame/laidOver.ts";
import { proudPast, toeBelowHip, toeBelowLong, toeBelowValley } from "../frame/notes.ts";
import { firstHip, type Piece } from "../frame/piece.ts";
import { headRuns } from "../frame/rafterLines.ts";
import type { Section } from "../frame/roofSpec.ts";
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
  | "valley thickness"
  | "valley depth"
  | "toe below valley"
  | "valley proud"
  | "toe below long valley"
  | "valley pieces' tilt"
  | "valley's tilt"
  | "broken hip"
  | "laid over"
  | "valley board width"
  | "sizing";

/** One thing that an inspector looks at: the figure here, and the published one where there is one. */
export interface Caution {
  readonly kind: CautionKind;
  /** The side that it is of, Both where the sides have the same figures; null where it is of no side. */
  readonly side: "Main" | "End" | "Both" | null;
  /** The letter of the wing that it is of; "" for the main roof. */
  readonly wing: string;
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
  const sides = [["Main", hip.near] as const, ["End", hip.far] as const].map(([side, { tan, plane }]) => [
    ...planeCautions(plane, rafter, unit, { side }),
    tilt("jacks' tilt", slopeAngle(tan), rafter.thickness, unit, { side }),
  ]);
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
    length("hip's heel", firstHip(pieces).heel, "least", PUBLISHED.abovePlate[unit]),
    length("toe below hip", Math.max(0, ...[hip.near, hip.far].map((side) => toeBelowHip(frame, hip, side))), "most"),
    length("jacks proud", Math.max(hip.near.proud, hip.far.proud), "most"),
    tilt("hip's tilt", Math.max(...hip.tilts), spec.hip.thickness, unit),
    length("widest bay", Math.max(...bays), "most", spec.spacing),
    ...wingCautions(frame),
    length("sizing", null),
  ];
  return [...all.filter(({ outside }) => outside), ...all.filter(({ outside }) => !outside)];
}

type Place = Partial<Pick<Caution, "side" | "wing">>;

function length(
  kind: CautionKind,
  here: number | null,
  limit: "least" | "most" | "about" | null = null,
  value = 0,
  { side = null, wing = "" }: Place = {},
): Caution {
  return {
    kind,
    side,
    wing,
    measure: "length",
    here,
    limit: limit && { kind: limit, value },
    outside: isOutside(here, limit, value),
  };
}

function tilt(kind: CautionKind, here: number, thickness: number, unit: Unit, place: Place = {}): Caution {
  return { ...length(kind, here, null, 0, place), measure: "angle", outside: !sawReaches(here, thickness, unit) };
}

/** What is looked at on every plane: its pitch, and its rafters at the plate. */
function planeCautions(
  { pitch, seat, overhang }: Pick<RoofPlane, "pitch" | "seat" | "overhang">,
  rafter: Section,
  unit: Unit,
  place: Place,
): Caution[] {
  const notch = notchOfSeat(pitch, seat);
  return [
    { ...length("pitch", pitch, "least", 3 / 12, place), measure: "pitch" },
    length("seat", seat, "least", PUBLISHED.seat[unit], place),
    ...(overhang > 0
      ? [
          length("wood left", rafter.depth - notch, "least", PUBLISHED.woodLeft[unit], place),
          length("tail", overhang, "most", PUBLISHED.tail[unit], place),
        ]
      : [length("notch", notch, "most", rafter.depth / 4, place)]),
  ];
}

/** What wings add: valleys as R802.4.3 has them, each wing's planes, and what nothing but other boards carries. */
function wingCautions(frame: Frame): Caution[] {
  const { rafter, unit } = frame.spec;
  return [
    ...valleyCautions(frame),
    ...frame.blocks.flatMap((block) => {
      const { wing } = block;
      if (wing === null) return [];
      const planes = planesOf(block);
      const deepest = Math.max(...planes.map(({ pitch }) => plumbDepthOf(pitch, rafter.depth)));
      const all = planes.flatMap((plane) => planeCautions(plane, rafter, unit, { wing: wing.letter }));
      return [
        // Rafters under it carry a wing that is laid over, and only a designer sizes them.
        ...(wing.laid ? [{ ...length("laid over", null, null, 0, { wing: wing.letter }), outside: true }] : []),
        ...seatCautions(frame, wing.letter),
        ...all.filter((one) => worst(all, one.kind) === one),
        length("ridge depth", wing.spec.ridge.depth, "least", deepest, { wing: wing.letter }),
      ];
    }),
  ];
}

/** How wide a laid-over wing's valley board must be for the whole seat of its jacks to bear on it. */
function seatCautions(frame: Frame, letter: string): Caution[] {
  const [board] = valleyBoardsIn(frame).filter(({ wing }) => wing === letter);
  if (!board) return [];
  const { rafter, valley } = frame.spec;
  const own = frame.rafters.filter(({ foot }) => foot.bearer?.kind === "valley board" && foot.bearer.wing === letter);
  const runs = own.map((one) => headRuns(one, rafter.thickness).long);
  // A seat runs level from the board's outer edge, at the angle on the slope of the main roof between its eave and the valley's line.
  const across = Math.sin(Math.atan(board.near.tan * alongSlope(board.near.pitch)));
  const width = laidSeat(board.far.pitch, rafter.depth, Math.max(0, ...runs)) * across;
  return [length("valley board width", valley.depth, "least", width, { wing: letter })];
}

/** What framed-in wings add. */
function valleyCautions(frame: Frame): Caution[] {
  const { valley, rafter, unit } = frame.spec;
  const valleys = valleysIn(frame);
  if (valleys.length === 0) return [];
  const sides = valleys.flatMap((one) => [one.near, one.far].map((side) => ({ one, side })));
  const cutEnd = Math.max(...sides.map(({ side }) => plumbDepthOf(side.pitch, rafter.depth)));
  const toe = Math.max(0, ...sides.map(({ one, side }) => toeBelowValley(frame, one, side)));
  const long = valleys.filter(({ role }) => role === "supporting");
  return [
    length("valley thickness", valley.thickness, "least", PUBLISHED.twoNominal[unit]),
    length("valley depth", valley.depth, "least", cutEnd),
    length("toe below valley", toe, "most"),
    ...(long.length === 0
      ? []
      : [
          length("valley proud", Math.max(...long.map(proudPast)), "most"),
          length("toe below long valley", Math.max(...valleys.map(toeBelowLong)), "most"),
        ]),
    tilt("valley pieces' tilt", slopeAngle(Math.max(...sides.map(({ side }) => side.tan))), rafter.thickness, unit),
    tilt("valley's tilt", Math.max(0, ...valleys.flatMap(({ tilts }) => tilts)), valley.thickness, unit),
    ...(hipsIn(frame).some(({ start }) => start > 0) ? [{ ...length("broken hip", null), outside: true }] : []),
  ];
}

/** Of the same figure of several planes the one that lies worst. */
function worst(all: readonly Caution[], of: CautionKind): Caution {
  const own = all.filter(({ kind }) => kind === of);
  return own.reduce((a, b) => ((b.limit?.kind === "most" ? b.here! > a.here! : b.here! < a.here!) ? b : a));
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
