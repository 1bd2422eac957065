import { alongSlope } from "../../geometry/alongSlope.ts";
import { slopeAngle } from "../../geometry/angle.ts";
import { degrees } from "../../measure/degrees.ts";
import { notchOfSeat, shortestBoard } from "../members/commonRafter.ts";
import { alongHip, hipMarkRun } from "../members/hip.ts";
import { jackTape } from "../members/jack.ts";
import type { Alike } from "./alike.ts";
import { boardRun, sideOn, type Bearer, type Hip } from "./bearers.ts";
import { hipsIn, ridgeIn, type Frame } from "./frame.ts";
import { commonNotes, hipNotes, jackNotes, kingNotes, ridgeNotes } from "./notes.ts";
import type { Piece, PieceEnd } from "./piece.ts";
import { handOf, headRuns, type Jack } from "./rafterLines.ts";

/** Every distinct piece of a roof: ridge, commons, king commons, hips, then jacks, longest first. */
export function pieces(frame: Frame): readonly Piece[] {
  const rafters = frame.alike.map((one) => rafterPiece(frame, one));
  const [jacks, others] = [
    rafters.filter(({ member }) => member === "jack"),
    rafters.filter(({ member }) => member !== "jack"),
  ];
  return [...ridgePiece(frame), ...others, hipPiece(frame), ...jacks.sort((a, b) => b.longPoint - a.longPoint)];
}

/** An end that is cut square across, and marked on nothing. */
const SQUARE: PieceEnd = { bearer: null, tilts: [], edge: null, mark: null, markFromHead: null };

function ridgePiece(frame: Frame): Piece[] {
  const ridge = ridgeIn(frame);
  if (!ridge?.section) return [];
  const length = boardRun(ridge);
  return [
    {
      mark: "R",
      member: "ridge",
      planes: [],
      left: 0,
      right: 0,
      plain: 1,
      section: ridge.section,
      slope: 0,
      longRun: length,
      shortRun: length,
      lineLength: ridge.run,
      longPoint: length,
      shortPoint: length,
      tape: null,
      shortestBoard: length,
      overhang: 0,
      tail: 0,
      headCut: degrees(0),
      foot: SQUARE,
      head: SQUARE,
      heel: 0,
      seat: 0,
      notch: 0,
      offset: null,
      notes: ridgeNotes(frame),
      stands: [ridge],
    },
  ];
}

/** A common, king common or jack: from the plate to the face that its head meets. */
function rafterPiece(frame: Frame, { mark, rafters }: Alike): Piece {
  const { rafter: section } = frame.spec;
  const first = rafters[0]!;
  const { plane, member, head } = first;
  const { pitch, overhang, seat } = plane;
  const along = alongSlope(pitch);
  const jack = member === "jack" ? (first as Jack) : null;
  const correction = jack ? plane.correction / along : 0;
  const { long, short } = headRuns(first, section.thickness);
  const [longRun, shortRun] = [long + correction, short + correction];
  const count = (hand: string) => rafters.filter((one) => handOf(one) === hand).length;
  return {
    mark,
    member,
    planes: rafters.map((one) => one.plane),
    left: count("left"),
    right: count("right"),
    plain: count("plain"),
    section,
    slope: pitch,
    longRun,
    shortRun,
    lineLength: head.line * along,
    longPoint: longRun * along,
    shortPoint: shortRun * along,
    tape: jackTape(pitch, longRun, frame.heel),
    shortestBoard: shortestBoard({ pitch, run: longRun, overhang, depth: section.depth, heel: frame.heel }),
    overhang,
    tail: overhang * along,
    headCut: slopeAngle(pitch),
    foot: { ...SQUARE, mark: jack && jack.offset - section.thickness / 2 },
    head: jack ? jackHead(jack) : { ...SQUARE, bearer: head.bearer && head.bearer.kind },
    heel: frame.heel,
    seat,
    notch: notchOfSeat(pitch, seat),
    offset: jack && jack.offset,
    notes: jack ? jackNotes(frame, jack) : member === "common" ? commonNotes(frame) : kingNotes(frame, plane),
    stands: rafters,
  };
}

function jackHead({ offset, plane, head: { bearer, per } }: Jack): PieceEnd {
  const hip = bearer as Hip;
  const side = sideOn(hip, plane)!;
  const across = Math.abs(per);
  const mark = alongHip(hip, hipMarkRun(side, offset, side.face));
  return {
    bearer: "hip",
    tilts: [slopeAngle(across)],
    edge: slopeAngle(across * alongSlope(plane.pitch)),
    mark,
    markFromHead: alongHip(hip, hip.headRun) - mark,
  };
}

function hipPiece(frame: Frame): Piece {
  const hips = hipsIn(frame);
  const hip = hips[0]!;
  const { section, slope, headRun, overhang, height, seat } = hip;
  // Both hands of a hip are one shape only where its two cheeks are alike.
  const onKings = frame.spec.hipHead === "king commons";
  const plain = onKings && hip.near.tan === hip.far.tan;
  const count = (hand: Bearer["hand"]) => (plain ? 0 : hips.filter((one) => one.hand === hand).length);
  const longPoint = alongHip(hip, headRun);
  return {
    mark: "H",
    member: "hip",
    planes: [],
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
    tape: null,
    shortestBoard: hip.farthest + shortestBoard({ pitch: slope, run: 0, overhang, depth: section.depth, heel: height }),
    overhang,
    tail: alongHip(hip, overhang),
    headCut: slopeAngle(slope),
    foot: SQUARE,
    head: { ...SQUARE, bearer: onKings ? null : "ridge", tilts: hip.tilts },
    heel: height,
    seat,
    notch: notchOfSeat(slope, seat),
    offset: null,
    notes: hipNotes(frame),
    stands: hips,
  };
}
