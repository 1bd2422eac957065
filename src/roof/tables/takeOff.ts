import { alongSlope } from "../../geometry/alongSlope.ts";
import { hipsIn, type Frame } from "../frame/frame.ts";
import type { Piece } from "../frame/piece.ts";
import { pieceBoardFeet } from "./pieceBoardFeet.ts";
import type { RoofEdge, RoofFace } from "../frame/surface.ts";
import { planeGroups, sheathedGroups, type PlaneGroup } from "./planeGroups.ts";
import { sheathingCourses, type Course, type Sheet } from "./sheathingCourses.ts";

/** All pieces of one lumber size, each counted on its shortest board; spares are among them. */
export interface SizeTotal {
  readonly size: string;
  readonly pieces: number;
  readonly spares: number;
  readonly lineal: number;
  readonly boardFeet: number;
}

/** What an estimator prices. Lengths and areas in the roof's unit, with nothing added for waste. */
export interface TakeOff {
  /** Level ridge line, a gable's overhang included. */
  readonly ridge: number;
  /** Each hip along the slope, from apex to fascia; a broken one to the crossing, last. */
  readonly hips: readonly number[];
  readonly brokenHips: number;
  /** Each valley along the slope, from fascia to crossing. */
  readonly valleys: readonly number[];
  readonly eaves: number;
  /** Eaves that have tails to nail it to. */
  readonly subFascia: number;
  readonly gableRake: number;
  readonly cornerRake: number;
  readonly planes: readonly PlaneGroup[];
  readonly plan: number;
  readonly sloped: number;
  /** The planes as they are sheathed, which runs through under a laid-over wing; and the area of that along the slope. */
  readonly sheathed: readonly PlaneGroup[];
  readonly sheathing: number;
  readonly sheet: Sheet;
  readonly courses: readonly Course[];
  readonly sizes: readonly SizeTotal[];
}

/** Sheets of sheathing: 4 x 8 ft, or 1200 x 2400 mm. */
const SHEETS = { in: { wide: 48, long: 96 }, mm: { wide: 1200, long: 2400 } } as const;

/** The quantities of a roof, from its planes and its pieces. */
export function takeOff(frame: Frame, pieces: readonly Piece[]): TakeOff {
  const { spec, surface } = frame;
  const planes = planeGroups(frame);
  const sheathed = sheathedGroups(frame, planes);
  const sheet = SHEETS[spec.unit];
  const sum = (of: (face: RoofFace) => number) => surface.faces.reduce((total, face) => total + of(face), 0);
  // On its center line an edge ends at the fascia that it meets first.
  const edges = (kind: RoofEdge["kind"], own: readonly RoofEdge[] = surface.edges) =>
    own.filter((edge) => edge.kind === kind).map(({ run, slope }) => run * alongSlope(slope));
  const broken = hipsIn(frame).filter(({ start }) => start > 0);
  const isBroken = ({ left, right }: RoofEdge) =>
    broken.some(({ near, far }) => [left, right].includes(near.plane) && [left, right].includes(far.plane));
  const [whole, stopped] = [surface.edges.filter((edge) => !isBroken(edge)), surface.edges.filter(isBroken)];
  return {
    ridge: edges("ridge").reduce((total, length) => total + length, 0),
    hips: [...edges("hip", whole), ...edges("hip", stopped)],
    brokenHips: edges("hip", stopped).length,
    valleys: edges("valley"),
    eaves: sum(({ eave }) => eave),
    subFascia: sum(({ eave, plane }) => (plane.overhang > 0 ? eave : 0)),
    gableRake: sum(({ gableRake }) => gableRake),
    cornerRake: sum(({ cornerRake }) => cornerRake),
    planes,
    plan: sum(({ plan }) => plan),
    sloped: sum(({ sloped }) => sloped),
    sheet,
    sheathed,
    sheathing: sheathed.reduce((total, group) => total + group.sloped, 0),
    courses: sheathingCourses(sheathed, sheet, spec.spacing),
    sizes: sizeTotals(frame, pieces),
  };
}

/** The rafter that a spare is ordered as: a common, or the longest rafter where there is none. */
export function spareRafter(pieces: readonly Piece[]): Piece {
  const rafters = pieces.filter(({ planes }) => planes.length > 0);
  return (
    // Beside wings some commons have no tail or a short one.
    rafters.filter(({ member }) => member === "common").sort((a, b) => b.shortestBoard - a.shortestBoard)[0] ??
    rafters.reduce((a, b) => (b.shortestBoard > a.shortestBoard ? b : a))
  );
}

function sizeTotals(frame: Frame, pieces: readonly Piece[]): SizeTotal[] {
  const { unit, spares, rafter } = frame.spec;
  const spare = spareRafter(pieces);
  const counted = spares === 0 ? pieces : [...pieces, { ...spare, left: 0, right: 0, plain: spares }];
  const names = [...new Set([rafter.name, ...counted.map(({ section }) => section.name)])];
  return names.map((size) => {
    const own = counted.filter(({ section }) => section.name === size);
    const sum = (of: (piece: Piece) => number) => own.reduce((total, piece) => total + of(piece), 0);
    const count = ({ left, right, plain }: Piece) => left + right + plain;
    return {
      size,
      pieces: sum(count),
      spares: size === spare.section.name ? spares : 0,
      lineal: sum((piece) => count(piece) * piece.shortestBoard),
      boardFeet: sum((piece) => pieceBoardFeet(piece, unit)),
    };
  });
}
