import { alongSlope } from "../../geometry/alongSlope.ts";
import { degrees, type Degrees } from "../../measure/degrees.ts";
import { directionAngle, slopeAngle } from "../../geometry/angle.ts";
import { notchOfSeat, plumbDepthOf, shortestBoard } from "../members/commonRafter.ts";
import type { Frame, FrameSide, JackPosition } from "./frame.ts";
import { alongHip, hipMarkRun } from "../members/hip.ts";
import { jackEdge, jackTape } from "../members/jack.ts";
import { jackMark } from "../members/jackMark.ts";
import { commonNotes, hipNotes, jackNotes, kingNotes, ridgeNotes } from "./notes.ts";
import type { Piece, Side } from "./piece.ts";

/** Every distinct piece of a roof: ridge, commons, king commons, hips, then jacks, longest first. */
export function pieces(frame: Frame): readonly Piece[] {
  return [...ridgePiece(frame), ...commonPieces(frame), ...kingPieces(frame), hipPiece(frame), ...jackPieces(frame)];
}

const SQUARE: readonly Degrees[] = [];

function ridgePiece(frame: Frame): Piece[] {
  const { ridge } = frame.spec;
  if (ridge === null || frame.ridgeBoard === 0) return [];
  const length = frame.ridgeBoard;
  return [
    {
      mark: "R",
      member: "ridge",
      side: null,
      left: 0,
      right: 0,
      plain: 1,
      section: ridge,
      slope: 0,
      longRun: length,
      shortRun: length,
      lineLength: frame.ridgeLine,
      longPoint: length,
      shortPoint: length,
      tape: null,
      shortestBoard: length,
      overhang: 0,
      tail: 0,
      headCut: degrees(0),
      tilts: SQUARE,
      edge: null,
      heel: 0,
      seat: 0,
      notch: 0,
      offset: null,
      plateMark: null,
      hipMark: null,
      hipMarkFromHead: null,
      notes: ridgeNotes(frame),
    },
  ];
}

/** A common or king common: square-headed, with a level run to the face it meets. */
function squareHeaded(
  frame: Frame,
  side: FrameSide,
  run: number,
  given: Pick<Piece, "mark" | "member" | "side" | "plain" | "notes">,
): Piece {
  const { rafter } = frame.spec;
  const { pitch } = side.at.near;
  const along = alongSlope(pitch);
  return {
    ...given,
    left: 0,
    right: 0,
    section: rafter,
    slope: pitch,
    longRun: run,
    shortRun: run,
    lineLength: side.run * along,
    longPoint: run * along,
    shortPoint: run * along,
    tape: jackTape(pitch, run, frame.heel),
    shortestBoard: shortestBoard({ pitch, run, overhang: side.overhang, depth: rafter.depth, heel: frame.heel }),
    overhang: side.overhang,
    tail: side.overhang * along,
    headCut: slopeAngle(pitch),
    tilts: SQUARE,
    edge: null,
    ...footing(frame, side),
    offset: null,
    plateMark: null,
    hipMark: null,
    hipMarkFromHead: null,
  };
}

function footing(frame: Frame, { at, seat }: FrameSide) {
  const { pitch } = at.near;
  return { heel: frame.heel, seat, notch: notchOfSeat(pitch, seat) };
}

function commonPieces(frame: Frame): Piece[] {
  const { main, commons, ridgeThickness } = frame;
  if (commons.length === 0) return [];
  return [
    squareHeaded(frame, main, main.run - ridgeThickness / 2, {
      mark: "C",
      member: "common",
      side: "Main",
      plain: 2 * commons.length,
      notes: commonNotes(frame),
    }),
  ];
}

function kingPieces(frame: Frame): Piece[] {
  if (!frame.kings) return [];
  const { main, end, hipEnds, pyramid, ridgeThickness, spec } = frame;
  const ends = pyramid ? 1 : hipEnds;
  return [
    squareHeaded(frame, main, main.run - ridgeThickness / 2, {
      mark: "K",
      member: "king common",
      side: "Main",
      plain: 2 * ends,
      notes: kingNotes(frame, "Main"),
    }),
    squareHeaded(frame, end, end.run - spec.rafter.thickness / 2, {
      mark: "KE",
      member: "king common",
      side: "End",
      plain: hipEnds,
      notes: kingNotes(frame, "End"),
    }),
  ];
}

function hipPiece(frame: Frame): Piece {
  const { hip, spec, main, hipEnds, hipOverhang } = frame;
  const { at } = main;
  const { depth } = spec.hip;
  const heel = frame.heel - hip.drop;
  const seat = (plumbDepthOf(at.slope, depth) - heel) / at.slope;
  // Both hands of a hip are one shape only where its two cheeks are alike.
  const plain = frame.kings && at.near.tan === at.far.tan;
  const count = 2 * hipEnds;
  return {
    mark: "H",
    member: "hip",
    side: null,
    left: plain ? 0 : count / 2,
    right: plain ? 0 : count / 2,
    plain: plain ? count : 0,
    section: spec.hip,
    slope: at.slope,
    longRun: hip.headRun,
    shortRun: hip.headRun,
    lineLength: alongHip(at, hip.run),
    longPoint: alongHip(at, hip.headRun),
    shortPoint: alongHip(at, hip.headRun),
    tape: null,
    shortestBoard: hip.farthest + shortestBoard({ pitch: at.slope, run: 0, overhang: hipOverhang, depth, heel }),
    overhang: hipOverhang,
    tail: alongHip(at, hipOverhang),
    headCut: slopeAngle(at.slope),
    tilts: hip.tilts,
    edge: null,
    heel,
    seat,
    notch: notchOfSeat(at.slope, seat),
    offset: null,
    plateMark: null,
    hipMark: null,
    hipMarkFromHead: null,
    notes: hipNotes(frame),
  };
}

function jackPieces(frame: Frame): Piece[] {
  const { main, end, alike, hipEnds } = frame;
  // Each corner has one jack of every offset on each plate; looking up the hip, half of them are on its left.
  if (alike) return main.jacks.map((jack, i) => jackPiece(frame, main, "Both", jack, i, 2 * hipEnds));
  const rows = [main, end].flatMap((side) =>
    side.jacks.map((jack, i) => jackPiece(frame, side, side.name, jack, i, hipEnds)),
  );
  return rows.sort((a, b) => b.longPoint - a.longPoint);
}

function jackPiece(
  frame: Frame,
  side: FrameSide,
  name: Side,
  { offset, runs }: JackPosition,
  index: number,
  perHand: number,
): Piece {
  const { rafter } = frame.spec;
  const { near } = side.at;
  const { pitch } = near;
  const along = alongSlope(pitch);
  const correction = side.correction / along;
  const longRun = runs.long + correction;
  const shortRun = runs.short + correction;
  const mark = alongHip(side.at, hipMarkRun(near, offset, side.face));
  return {
    mark: jackMark(frame, side, index),
    member: "jack",
    side: name,
    left: perHand,
    right: perHand,
    plain: 0,
    section: rafter,
    slope: pitch,
    longRun,
    shortRun,
    lineLength: runs.line * along,
    longPoint: longRun * along,
    shortPoint: shortRun * along,
    tape: jackTape(pitch, longRun, frame.heel),
    shortestBoard: shortestBoard({
      pitch,
      run: longRun,
      overhang: side.overhang,
      depth: rafter.depth,
      heel: frame.heel,
    }),
    overhang: side.overhang,
    tail: side.overhang * along,
    headCut: slopeAngle(pitch),
    tilts: [directionAngle(near.cos, near.sin)],
    edge: slopeAngle(jackEdge(near)),
    ...footing(frame, side),
    offset,
    plateMark: offset - rafter.thickness / 2,
    hipMark: mark,
    hipMarkFromHead: alongHip(side.at, frame.hip.headRun) - mark,
    notes: jackNotes(frame, side, index),
  };
}
