import { alongSlope } from "../../geometry/alongSlope.ts";
import { slopeAngle } from "../../geometry/angle.ts";
import { notchOfSeat } from "../members/commonRafter.ts";
import { alongHip } from "../members/hip.ts";
import { endReach, tiltOf, type PlumbCut } from "../members/plumbEnd.ts";
import { boardRun, type Bearer, type Hip, type Valley, type ValleyBoard } from "./bearers.ts";
import { hipsIn, valleysIn, type Frame } from "./frame.ts";
import { valleyBoardsIn } from "./laidOver.ts";
import { boardNotes, hipNotes, ridgeNotes, valleyNotes } from "./notes.ts";
import { SQUARE, type Piece } from "./piece.ts";
import { PLUMB_END } from "./tailEnd.ts";

/** The distinct pieces that are ridges, hips and valleys: the main roof's, then wing by wing. */
export function bearerPieces(frame: Frame): Readonly<Record<"ridges" | "hips" | "valleys", readonly Piece[]>> {
  const hips = hipsIn(frame);
  const whole = hips.filter(({ start }) => start === 0);
  const wings = frame.spec.wings.map(({ letter }) => letter);
  const of = (letter: string) => whole.filter(({ wing }) => wing === letter);
  return {
    ridges: frame.bearers
      .filter(({ kind, section }) => kind === "ridge" && section !== null)
      .map((one) => ridgePiece(frame, one)),
    hips: [
      ...["", ...wings]
        .map(of)
        .filter((own) => own.length > 0)
        .map((own) => hipPiece(frame, own)),
      ...hips.filter(({ start }) => start > 0).map((one) => brokenPiece(frame, one)),
    ],
    valleys: wings.flatMap((letter) => [
      ...valleyPieces(
        frame,
        valleysIn(frame).filter(({ wing }) => wing === letter),
      ),
      ...boardPieces(valleyBoardsIn(frame).filter(({ wing }) => wing === letter)),
    ]),
  };
}

/** A mark with the letter of its wing. */
const marked = (stem: string, { wing }: Bearer): string => (wing === "" ? stem : `${stem}-${wing}`);

const VALLEYS = { level: "V", flush: "V", supporting: "VL", shortened: "VS" } as const;

/** What is written on a valley. */
export const valleyMark = (valley: Valley): string => marked(VALLEYS[valley.role], valley);

/** What no ridge, hip or valley has. Spread last: what is added to an object after a spread takes microseconds each. */
const NONE = {
  planes: [],
  tape: null,
  foot: SQUARE,
  offset: null,
  tailCut: null,
  over: false,
  mouth: null,
  tailEnd: PLUMB_END,
} as const;

/** Saw tilts of those cheeks of an end that are not square across. */
const bevels = (cuts: readonly PlumbCut[]) => cuts.filter(({ per }) => Math.abs(per) > 1e-9).map(tiltOf);

function ridgePiece(frame: Frame, ridge: Bearer): Piece {
  const length = boardRun(ridge);
  return {
    mark: marked("R", ridge),
    member: "ridge",
    left: 0,
    right: 0,
    plain: 1,
    section: ridge.section!,
    slope: 0,
    longRun: length,
    shortRun: length,
    lineLength: ridge.run,
    longPoint: length,
    shortPoint: length,
    shortestBoard: length,
    overhang: 0,
    tail: 0,
    headCut: slopeAngle(ridge.headLean / ridge.section!.depth),
    head: { ...SQUARE, tilts: bevels(ridge.head) },
    heel: 0,
    seat: 0,
    notch: 0,
    notes: ridgeNotes(frame, ridge),
    stands: [ridge],
    ...NONE,
  };
}

function hipPiece(frame: Frame, hips: readonly Hip[]): Piece {
  const hip = hips[0]!;
  const { section, slope, headRun, overhang, height, seat } = hip;
  // Both hands of a hip are one shape only where its two cheeks are alike.
  const onKings = frame.spec.hipHead === "king commons";
  const plain = onKings && hip.near.tan === hip.far.tan;
  const count = (hand: Bearer["hand"]) => (plain ? 0 : hips.filter((one) => one.hand === hand).length);
  const longPoint = alongHip(hip, headRun);
  return {
    mark: marked("H", hip),
    member: "hip",
    left: count("left"),
    right: count("right"),
    plain: plain ? hips.length : 0,
    section,
    slope,
    longRun: headRun,
    shortRun: headRun,
    lineLength: alongHip(hip, hip.run),
    longPoint,
    shortPoint: longPoint,
    shortestBoard: hip.farthest + lowEnd(hip),
    overhang,
    tail: alongHip(hip, overhang),
    headCut: slopeAngle(slope),
    head: { ...SQUARE, bearer: onKings ? null : "ridge", tilts: hip.tilts },
    heel: height,
    seat,
    notch: notchOfSeat(slope, seat),
    notes: hipNotes(frame, hip),
    stands: hips,
    ...NONE,
  };
}

/** How far a hip's board reaches down from its corner's plumb line: to the foot of its tail, or without one to the corner of its seat. */
function lowEnd({ slope, height, section, overhang }: Hip): number {
  const along = alongSlope(slope);
  return overhang === 0 ? (height * slope) / along : overhang * along + section.depth * slope;
}

/** The same of a valley, whose faces cross the plate lines farther out than its corner. */
function valleyLow({ slope, height, section, near, far, overhang }: Valley): number {
  const along = alongSlope(slope);
  if (Math.max(near.plane.overhang, far.plane.overhang) > 0) return overhang * along + section.depth * slope;
  const out = Math.max(near.face / near.tan, far.face / far.tan);
  return out * along + ((height - slope * out) * slope) / along;
}

/** A broken hip's lengths run from the crossing's plumb line. */
function brokenPiece(frame: Frame, hip: Hip): Piece {
  const whole = hipPiece(frame, [hip]);
  const { slope, start, headRun, run, height } = hip;
  const longPoint = alongHip(hip, headRun - start);
  return {
    ...whole,
    mark: marked("BH", hip),
    member: "broken hip",
    left: hip.hand === "left" ? 1 : 0,
    right: hip.hand === "right" ? 1 : 0,
    plain: 0,
    longRun: headRun - start,
    shortRun: headRun - start,
    lineLength: alongHip(hip, run - start),
    longPoint,
    shortPoint: longPoint,
    overhang: 0,
    tail: 0,
    foot: { ...SQUARE, bearer: "ridge", tilts: bevels(hip.tail) },
    heel: height + slope * start,
    seat: 0,
    notch: 0,
  };
}

/** The valleys of a wing: two mirror images where its ridge is level, else each by itself. */
function valleyPieces(frame: Frame, valleys: readonly Valley[]): Piece[] {
  const groups = valleys.every(({ role }) => role === "level") ? [valleys] : valleys.map((one) => [one]);
  return groups.filter((group) => group.length > 0).map((group) => valleyPiece(frame, group));
}

function valleyPiece(frame: Frame, valleys: readonly Valley[]): Piece {
  const valley = valleys[0]!;
  const { section, slope, height, seat, overhang, head, near, far, run } = valley;
  const faces = [endReach(head, -near.face), endReach(head, far.face)];
  const [longRun, shortRun] = [Math.max(...faces), Math.min(...faces)];
  const count = (hand: Bearer["hand"]) => valleys.filter((one) => one.hand === hand).length;
  return {
    mark: valleyMark(valley),
    member: "valley",
    left: count("left"),
    right: count("right"),
    plain: 0,
    section,
    slope,
    longRun,
    shortRun,
    lineLength: alongHip(valley, run),
    longPoint: alongHip(valley, longRun),
    shortPoint: alongHip(valley, shortRun),
    shortestBoard: valley.farthest + valleyLow(valley),
    overhang,
    tail: alongHip(valley, overhang),
    headCut: slopeAngle(slope),
    head: { ...SQUARE, bearer: valley.role === "shortened" ? "valley" : "ridge", tilts: bevels(head) },
    heel: height,
    seat,
    notch: notchOfSeat(slope, seat),
    notes: valleyNotes(frame, valley),
    stands: valleys,
    ...NONE,
  };
}

/** The two valley boards of a laid-over wing: one shape, a left and a right one. Its head cut is what its upper end leaves across the flat of it. */
function boardPieces(boards: readonly ValleyBoard[]): Piece[] {
  const [board] = boards;
  if (!board) return [];
  return [
    {
      mark: marked("VB", board),
      member: "valley board",
      left: 1,
      right: 1,
      plain: 0,
      section: board.section,
      slope: board.slope,
      longRun: board.headRun,
      shortRun: board.headRun * (board.inner / board.outer),
      lineLength: alongHip(board, board.run),
      longPoint: board.outer,
      shortPoint: board.inner,
      shortestBoard: board.outer,
      overhang: 0,
      tail: 0,
      headCut: board.upperCut,
      head: { ...SQUARE, bearer: "ridge" },
      heel: 0,
      seat: 0,
      notch: 0,
      notes: boardNotes(board),
      stands: boards,
      ...NONE,
    },
  ];
}
