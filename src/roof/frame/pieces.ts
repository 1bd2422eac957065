import { alongSlope } from "../../geometry/alongSlope.ts";
import { slopeAngle } from "../../geometry/angle.ts";
import { notchOfSeat, shortestBoard } from "../members/commonRafter.ts";
import { alongHip } from "../members/hip.ts";
import { jackTape } from "../members/jack.ts";
import { endReach } from "../members/plumbEnd.ts";
import type { Alike } from "./alike.ts";
import { bearerPieces } from "./bearerPieces.ts";
import type { Hip, Valley, ValleyBoard } from "./bearers.ts";
import { fromPlane } from "./blocks.ts";
import type { Frame } from "./frame.ts";
import { dot, offsetFrom } from "./facings.ts";
import { laidSeat } from "./laidOver.ts";
import { rafterNotes } from "./notes.ts";
import { SQUARE, type Piece, type PieceEnd } from "./piece.ts";
import { PLUMB_END, tailBoard, tailEndOf } from "./tailEnd.ts";
import { footReach, handOf, headRuns, isOnPlate, lowReach, type Rafter, type RafterEnd } from "./rafterLines.ts";

/** Every distinct piece of a roof: ridges, commons, king commons, hips, valleys, then what ends on a hip or a valley, longest first. */
export function pieces(frame: Frame): readonly Piece[] {
  const rafters = frame.alike.map((one) => rafterPiece(frame, one));
  const [square, beveled] = [rafters.filter(isSquare), rafters.filter((piece) => !isSquare(piece))];
  const { ridges, hips, valleys } = bearerPieces(frame);
  return [...ridges, ...square, ...hips, ...valleys, ...beveled.sort((a, b) => b.longPoint - a.longPoint)];
}

/** From the plate to a ridge. */
const isSquare = ({ member }: Piece): boolean => member === "common" || member === "king common";

/** A rafter: from the plate or a valley to the face that its head meets. */
function rafterPiece(frame: Frame, { mark, rafters }: Alike): Piece {
  const { rafter: section } = frame.spec;
  const first = rafters[0]!;
  const { plane, member, head, foot, tailCut, over, mouth } = first;
  const { pitch } = plane;
  const along = alongSlope(pitch);
  const correction = member === "jack" ? plane.correction / along : 0;
  const { long, short } = headRuns(first, section.thickness);
  const [longRun, shortRun] = [long + correction, short + correction];
  const count = (hand: string) => rafters.filter((one) => handOf(one) === hand).length;
  const half = section.thickness / 2;
  const ends = endsOf(first, section.thickness);
  const lows = [lowReach(first, half), lowReach(first, -half)];
  const onPlate = isOnPlate(first);
  // Over a corner the seat is as wide as on the face where the foot is lower.
  const laid = foot.bearer?.kind === "valley board";
  const seat = laid
    ? laidSeat(pitch, section.depth, shortRun)
    : onPlate
      ? plane.seat - Math.max(0, over ? Math.min(...lows) : 0)
      : 0;
  const overhang = onPlate ? Math.max(0, -Math.min(...lows)) : 0;
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
    lineLength: (head.line - foot.line) * along,
    longPoint: longRun * along,
    shortPoint: shortRun * along,
    tape: foot.bearer ? null : jackTape(pitch, longRun, frame.heel),
    shortestBoard: boardOf(frame, first, correction, longRun),
    overhang,
    tail: overhang * along,
    headCut: slopeAngle(pitch),
    foot: ends.foot,
    head: ends.head,
    heel: onPlate ? frame.heel : 0,
    seat,
    notch: laid ? 0 : notchOfSeat(pitch, seat),
    offset: first.offset,
    tailCut: tailCut && tailOn(first, tailCut, lows),
    over,
    mouth,
    tailEnd: onPlate && tailCut === null && !over && !mouth ? tailEndOf(frame.spec, plane) : PLUMB_END,
    notes: rafterNotes(frame, rafters),
    stands: rafters,
  };
}

/**
 * The shortest straight board that holds a rafter. Both its ends lean by the depth times tan A; a seat takes the low end off, where the wood ends inside of the
 * plate line.
 */
function boardOf({ spec, heel }: Frame, one: Rafter, correction: number, longRun: number): number {
  const { pitch, seat } = one.plane;
  const along = alongSlope(pitch);
  const { rafter } = spec;
  const plain = one.foot.bearer === null && one.tailCut === null && one.mouth === null;
  if (plain && spec.tailCut !== "plumb") return longRun * along + tailBoard(spec, one.plane, heel);
  if (plain) return shortestBoard({ pitch, run: longRun, overhang: one.plane.overhang, depth: rafter.depth, heel });
  const onPlate = isOnPlate(one);
  // A level seat starts at the top edge, and no wood lies lower down the slope.
  const lean = one.foot.bearer?.kind === "valley board" ? 0 : rafter.depth * pitch;
  const low = (run: number) =>
    onPlate && run >= 0 && run < seat ? run * along - ((heel + pitch * run) * pitch) / along : run * along - lean;
  const [left, right] = [rafter.thickness / 2, -rafter.thickness / 2];
  const head = Math.max(endReach([one.head], left), endReach([one.head], right)) + correction;
  return head * along - Math.min(low(lowReach(one, left)), low(lowReach(one, right)));
}

/** How a rafter is cut at its two ends, and where it is marked on what it meets. */
export function endsOf(rafter: Rafter, thickness: number): Pick<Piece, "foot" | "head"> {
  const { foot, head, member, offset } = rafter;
  const half = thickness / 2;
  return {
    foot: foot.bearer
      ? endOn(rafter, foot, [footReach(rafter, half), footReach(rafter, -half)])
      : { ...SQUARE, mark: member === "jack" ? offset! - half : null },
    head: endOn(rafter, head, [endReach([head], half), endReach([head], -half)]),
  };
}

/** How a valley cuts a tail; one along a valley board's line is plumb and meets no board. */
function tailOn(rafter: Rafter, cut: RafterEnd, lows: readonly number[]): PieceEnd {
  if (cut.bearer?.kind !== "valley board") return endOn(rafter, cut, lows);
  const across = Math.abs(cut.per);
  return { ...SQUARE, tilts: [slopeAngle(across)], edge: slopeAngle(across * alongSlope(rafter.plane.pitch)) };
}

/** How a rafter is cut where it meets a bearer, and the mark of its center on that, midway between the ends of its two top edges. */
function endOn({ plane, station }: Rafter, { bearer, per }: RafterEnd, [left, right]: readonly number[]): PieceEnd {
  if (bearer === null || bearer.kind === "ridge") return { ...SQUARE, bearer: bearer && bearer.kind };
  const across = Math.abs(per);
  if (bearer.kind === "valley board") {
    // The toe lies on the board's outer edge, from whose lower end it is measured. The saw leans by the main pitch.
    const board = bearer as ValleyBoard;
    const toe = alongHip(board, offsetFrom(board, plane, station) / board.far.cos);
    return {
      bearer: board.kind,
      tilts: [slopeAngle(board.near.pitch)],
      edge: slopeAngle(across * alongSlope(plane.pitch)),
      mark: toe,
      markFromHead: board.outer - toe,
    };
  }
  const foot = fromPlane(plane, bearer.foot);
  const [x, y] = [dot(bearer.heading, plane.right), dot(bearer.heading, plane.inward)];
  const mark = alongHip(bearer, (station - foot.x) * x + ((left! + right!) / 2 - foot.y) * y);
  return {
    bearer: bearer.kind,
    tilts: [slopeAngle(across)],
    edge: slopeAngle(across * alongSlope(plane.pitch)),
    mark,
    markFromHead: alongHip(bearer, (bearer as Hip | Valley).headRun) - mark,
  };
}
