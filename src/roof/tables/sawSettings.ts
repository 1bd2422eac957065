import { slopeAngle } from "../../geometry/angle.ts";
import { alongSlope } from "../../geometry/alongSlope.ts";
import { tailTilts, type Bearer, type ValleyBoard } from "../frame/bearers.ts";
import type { Piece } from "../frame/piece.ts";

/** Where on a piece a cut is made. */
export type CutAt = "head" | "foot" | "tail";

/** One setting of square and saw, and the pieces that take it. Angles in degrees. */
export interface SawSetting {
  /** Of the plumb line on the side face, from square across the board; 0 for square ends. */
  readonly plumb: number;
  readonly tilt: number;
  /** What the cut leaves across a square top, from square. */
  readonly side: number;
  /** The thickest board that it goes through. */
  readonly thickness: number;
  readonly pieces: Readonly<Partial<Record<CutAt, readonly string[]>>>;
}

/** Degrees: settings nearer than this are one. */
const SAME = 1e-6;

/** Every plumb cut of a roof by plumb angle and saw tilt, flattest first: how often the saw must be set, and for what. */
export function sawSettings(pieces: readonly Piece[]): readonly SawSetting[] {
  const settings: { cut: Omit<SawSetting, "pieces">; marks: Map<CutAt, Set<string>> }[] = [];
  for (const piece of pieces)
    for (const { at, plumb, tilt } of cutsOf(piece)) {
      const known = settings.find(({ cut }) => Math.abs(cut.plumb - plumb) < SAME && Math.abs(cut.tilt - tilt) < SAME);
      const cut = {
        plumb,
        tilt,
        // A level seat crosses the top at its own angle.
        side:
          at === "foot" && piece.foot.bearer === "valley board"
            ? piece.foot.edge!
            : slopeAngle(Math.tan((tilt * Math.PI) / 180) * alongSlope(piece.slope)),
        thickness: Math.max(known?.cut.thickness ?? 0, piece.section.thickness),
      };
      const one = known ?? { cut, marks: new Map<CutAt, Set<string>>() };
      one.cut = cut;
      one.marks.set(at, (one.marks.get(at) ?? new Set()).add(piece.mark));
      if (!known) settings.push(one);
    }
  return settings
    .map(({ cut, marks }) => ({ ...cut, pieces: Object.fromEntries([...marks].map(([at, own]) => [at, [...own]])) }))
    .sort((a, b) => a.plumb - b.plumb || a.tilt - b.tilt);
}

function cutsOf(piece: Piece): { at: CutAt; plumb: number; tilt: number }[] {
  const { member, head, foot, tail, tailCut, planes, stands, headCut } = piece;
  const cuts = (at: CutAt, tilts: readonly number[], plumb: number = headCut) =>
    (tilts.length > 0 ? tilts : [0]).map((tilt) => ({ at, plumb, tilt }));
  if (member === "valley board") return [...cuts("head", []), ...cuts("foot", [], (stands[0] as ValleyBoard).lowerCut)];
  // One end of a ridge may lie on sheathing; the other is square.
  if (member === "ridge" && headCut > 0) return [...cuts("head", head.tilts), ...cuts("foot", [], 0)];
  // A level seat, from square across the board.
  if (foot.bearer === "valley board") return [...cuts("head", head.tilts), ...cuts("foot", foot.tilts, 90 - headCut)];
  const bearer = planes.length === 0 && member !== "ridge";
  const { near, far } = bearer ? tailTilts(stands[0] as Bearer) : { near: null, far: null };
  return [
    ...cuts("head", head.tilts),
    ...(foot.tilts.length > 0 ? cuts("foot", foot.tilts) : []),
    ...(tail > 0 ? cuts("tail", bearer ? [near, far].filter((tilt) => tilt !== null) : (tailCut?.tilts ?? [])) : []),
  ];
}
