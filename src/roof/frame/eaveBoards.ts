import { degrees } from "../../measure/degrees.ts";
import { alongSlope } from "../../geometry/alongSlope.ts";
import type { Point } from "../../geometry/point.ts";
import type { Level } from "../../geometry/polygon.ts";
import { onPlane, type RoofPlane } from "./blocks.ts";
import type { Frame } from "./frame.ts";
import type { Note } from "./note.ts";
import { SQUARE, type Piece } from "./piece.ts";
import { isOnPlate } from "./rafterLines.ts";
import type { Section } from "./roofSpec.ts";
import { PLUMB_END } from "./tailEnd.ts";

/** Ends of eaves this near each other are one, in any unit. */
const NEAR = 1e-4;

/** One straight eave, from its left end for someone outside; along its plane's plate line, and in plan. */
interface Eave {
  readonly plane: RoofPlane;
  readonly from: number;
  readonly to: number;
  readonly ends: readonly [EaveEnd, EaveEnd];
}

/** How a board along an eave ends: how much longer each unit out from the tails makes it, and whether it must be fitted in place. */
interface EaveEnd {
  /** 1 at an outside corner, -1 at an inside one, 0 where it ends square. */
  readonly turn: -1 | 0 | 1;
  readonly inPlace: boolean;
}

/** Boards along the eaves that are one piece. */
interface Run {
  readonly eave: Eave;
  readonly planes: RoofPlane[];
}

/** What pieces without slope, seat and bearer have. Spread last: what is added to an object after a spread takes microseconds each. */
export const LEVEL_PIECE = {
  slope: 0,
  tape: null,
  overhang: 0,
  tail: 0,
  headCut: degrees(0),
  foot: SQUARE,
  heel: 0,
  seat: 0,
  notch: 0,
  offset: null,
  tailCut: null,
  over: false,
  mouth: null,
  stands: [],
  tailEnd: PLUMB_END,
} as const;

/**
 * The boards along the eaves: sub-fascias on the tails, fascias on those, each kind longest first.
 *
 * At an outside corner each face is longer than the eave by how far out it stands, at an inside one shorter; plumb boards are mitered there by 45 degrees, for plates are
 * square to each other. Boards on square tails lean, and their corners are cut in place.
 */
export function eaveBoards(frame: Frame): readonly Piece[] {
  const { subFascia, fascia } = frame.spec;
  if (!subFascia && !fascia) return [];
  const eaves = eavesOf(frame);
  return [
    ...(subFascia
      ? runs(
          frame,
          "sub-fascia",
          subFascia,
          0,
          eaves.filter(({ plane }) => plane.overhang > 0),
        )
      : []),
    ...(fascia ? runs(frame, "fascia", fascia, subFascia?.thickness ?? 0, eaves) : []),
  ];
}

/** Every straight eave of a roof, and how it meets the next. */
function eavesOf({ surface }: Frame): Eave[] {
  const stretches = surface.faces.flatMap(({ plane, parts }) =>
    stretchesOf(parts.map(([low]) => low!).filter(({ at }) => at === 0)).map(({ from, to }) => {
      const at = (along: number) => onPlane(plane, along, -plane.overhang);
      return { plane, from, to, start: at(from), stop: at(to) };
    }),
  );
  const near = (a: Point, b: Point) => Math.hypot(a.x - b.x, a.y - b.y) < NEAR;
  const raked = surface.faces.some((face) => face.cornerRake > 0);
  return stretches.map((own) => {
    const { plane, from, to } = own;
    const end = (at: Point): EaveEnd => {
      const next = stretches.find((one) => one.plane !== plane && (near(one.start, at) || near(one.stop, at)));
      if (!next) return { turn: 0, inPlace: raked };
      const far = near(next.start, at) ? next.stop : next.start;
      const inward = (far.x - at.x) * plane.inward.x + (far.y - at.y) * plane.inward.y;
      return { turn: inward > 0 ? 1 : -1, inPlace: false };
    };
    return { plane, from, to, ends: [end(own.start), end(own.stop)] };
  });
}

/** Parts of one face side by side have one eave. */
function stretchesOf(lows: readonly Level[]): { from: number; to: number }[] {
  const sorted = [...lows].sort((a, b) => a.from - b.from);
  return sorted.reduce<{ from: number; to: number }[]>((joined, { from, to }) => {
    const last = joined.at(-1);
    if (last && from <= last.to + NEAR) last.to = Math.max(last.to, to);
    else joined.push({ from, to });
    return joined;
  }, []);
}

function runs(
  frame: Frame,
  member: "fascia" | "sub-fascia",
  section: Section,
  inner: number,
  eaves: readonly Eave[],
): Piece[] {
  const found = new Map<string, Run>();
  for (const eave of eaves) {
    const key = keyOf(frame, eave);
    const known = found.get(key);
    if (known) known.planes.push(eave.plane);
    else found.set(key, { eave, planes: [eave.plane] });
  }
  const sorted = [...found.values()].sort((a, b) => lengthOf(b.eave) - lengthOf(a.eave));
  const stem = member === "fascia" ? "F" : "SF";
  return sorted.map((run, i) =>
    boardOf(frame, run, member, section, inner, sorted.length > 1 ? `${stem}${i + 1}` : stem),
  );
}

const lengthOf = ({ from, to }: Eave) => to - from;

/** Eaves with one key take the same board: as long, with the same ends and the same tails, or all of that the other way round. */
function keyOf(frame: Frame, eave: Eave): string {
  const ends = eave.ends.map(({ turn, inPlace }) => `${turn}${inPlace ? "?" : ""}`);
  const tails = tailsOn(frame, eave);
  const long = lengthOf(eave);
  const round = (values: readonly number[]) => values.map((value) => value.toFixed(4)).join(" ");
  const there = `${ends.join(",")} ${round(tails)}`;
  const back = `${[...ends].reverse().join(",")} ${round(tails.map((at) => long - at).reverse())}`;
  return [long.toFixed(4), eave.plane.pitch.toFixed(9), there < back ? there : back].join(" ");
}

/** Centers of the rafters whose tails end on an eave, from its left end. */
function tailsOn({ rafters }: Frame, { plane, from, to }: Eave): number[] {
  return rafters
    .filter((one) => one.plane === plane && isOnPlate(one))
    .map(({ station }) => station - from)
    .filter((at) => at > 0 && at < to - from)
    .sort((a, b) => a - b);
}

function boardOf(
  frame: Frame,
  { eave, planes }: Run,
  member: "fascia" | "sub-fascia",
  section: Section,
  inner: number,
  mark: string,
): Piece {
  const { spec } = frame;
  const [left, right] = eave.ends;
  const leans = spec.tailCut === "square" && eave.plane.overhang > 0;
  // Along a square tail a thickness lies along the slope.
  const faces = [inner, inner + section.thickness].map((out) => (leans ? out / alongSlope(eave.plane.pitch) : out));
  const lengths = faces.map((out) => lengthOf(eave) + (left.turn + right.turn) * out);
  const past = ({ turn }: EaveEnd) => Math.max(...faces.map((out) => turn * out));
  const shortestBoard = lengthOf(eave) + past(left) + past(right);
  const inPlace = leans ? left.turn !== 0 || right.turn !== 0 : left.inPlace || right.inPlace;
  const tilts = leans ? [] : [left, right].filter(({ turn }) => turn !== 0).map(() => degrees(45));
  const notes: Note[] = [];
  if (!leans) notes.push({ kind: "eave board lower", by: faces[1]! * eave.plane.pitch });
  if ([left, right].some(({ turn }) => turn < 0) && !leans) notes.push({ kind: "inside corner" });
  if (inPlace) notes.push({ kind: "eave corners in place" });
  if (shortestBoard > Math.max(...spec.boards)) notes.push({ kind: "joined over tails" });
  return {
    mark,
    member,
    planes,
    left: 0,
    right: 0,
    plain: planes.length,
    section,
    longRun: Math.max(...lengths),
    shortRun: Math.min(...lengths),
    lineLength: lengthOf(eave),
    longPoint: Math.max(...lengths),
    shortPoint: Math.min(...lengths),
    shortestBoard,
    head: { ...SQUARE, tilts },
    notes,
    joints: tailsOn(frame, eave).map((at) => at + past(left)),
    ...LEVEL_PIECE,
  };
}
