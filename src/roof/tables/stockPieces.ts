import { alongSlope } from "../../geometry/alongSlope.ts";
import { alongBoard, type Bearer, type Hip, type Valley, type ValleyBoard } from "../frame/bearers.ts";
import type { Frame } from "../frame/frame.ts";
import { planOf } from "../frame/outlineShape.ts";
import { isEaveMember, type Hand, type Piece } from "../frame/piece.ts";
import { handOf, lowReach, type Rafter } from "../frame/rafterLines.ts";
import { endReach } from "../members/plumbEnd.ts";
import { pieceParts } from "../members/pieceParts.ts";
import { jointsIn, type RidgeBoard } from "../members/ridgeJoints.ts";
import { spareRafter } from "./takeOff.ts";

/** A piece as it is sawn out of a board: what the cutting room plans with. Lengths in the roof's unit. */
export interface RoofStock {
  /** What is written on it: "J3", "R 1 of 2", "C spare". */
  readonly name: string;
  readonly size: string;
  /** Along the top edge, tail tip to long point. */
  readonly length: number;
  readonly count: number;
  /** How far a plumb cut leans over the board's depth: D tan A. */
  readonly lean: number;
  /** Pieces of one slant have parallel plumb cuts. */
  readonly slant: string;
  /** What is written on it: of a jack the side face that its long point is on. */
  readonly hand: Hand;
  /** How far the cuts at its low end and at its head go along the board from the right face to the left one, t tan f / cos A, minus towards the tail; 0 where a cut is square or not shared. */
  readonly slants: readonly [low: number, head: number];
  /** How far the low end reaches back beyond the tail tip. */
  readonly toe: number;
  /** How much wider than the kerf the widest of its saw cuts is along the board. */
  readonly spread: number;
}

/** Where a piece longer than every board is joined, from its first end. */
export interface JoinedPiece {
  readonly name: string;
  readonly size: string;
  readonly over: "rafters" | "tails";
  /** A ridge of a roof that has more than one. */
  readonly among?: boolean;
  readonly joints: readonly number[];
}

/** What is cut out of stock for a roof. */
export interface RoofOrder {
  readonly pieces: readonly RoofStock[];
  /** Ridges, fascias and sub-fascias that are longer than every board. */
  readonly joined: readonly JoinedPiece[];
}

/**
 * Every piece of a roof as it is sawn out of boards, its spares with it.
 *
 * All end cuts of a roof's pieces are plumb, so with u measured along the top edge and every depth brought up to it along the plumb line, a piece is
 * its own plan stretched by 1 / cos A: a common a rectangle, a jack a trapezoid, a cripple between parallel bearers a parallelogram. A hip's tail is cut to two fascias and its head to two
 * king commons: it is taken for the rectangle around that, so that it shares no more than one plumb cut with its neighbors, from which its cheeks are cut
 * afterwards. Where hips lie on the ridge the head is one cheek across the whole board, and a left and a right share it as jacks do. A
 * backed hip counts before its top is beveled.
 *
 * @param boardsOf boards of a size: a longer ridge is joined at commons, a longer fascia at tails (see {@link jointsIn}), or left whole where that cannot be.
 * @param trim taken off every board; a piece that is as long as a board takes it whole.
 */
export function stockPieces(
  frame: Frame,
  pieces: readonly Piece[],
  boardsOf: (size: string) => readonly RidgeBoard[],
  trim = 0,
): RoofOrder {
  const { spares } = frame.spec;
  const stock = pieces
    .filter(({ member }) => member !== "ridge" && !isEaveMember(member))
    .flatMap((piece) => byHand(piece, piece.planes.length === 0 ? hipStock(frame, piece) : rafterStock(piece)));
  const level = pieces
    .filter(({ member }) => member === "ridge" || isEaveMember(member))
    .map((piece) => {
      const places = joinPlaces(frame, piece);
      return { piece, joints: jointsIn(piece.shortestBoard, places, boardsOf(piece.section.name), trim) };
    });
  const cut = (ridge: boolean) =>
    level
      .filter(({ piece }) => (piece.member === "ridge") === ridge)
      .flatMap(({ piece, joints }) => byHand(piece, ...partsOf(piece, joints)));
  const spare = spareRafter(pieces);
  // Cut square across, and so of any hand when it is needed.
  const extra: RoofStock[] =
    spares === 0
      ? []
      : [{ ...rafterStock(spare), name: `${spare.mark} spare`, hand: "plain", slants: SQUARE, count: spares }];
  return {
    pieces: [...cut(true), ...stock, ...cut(false), ...extra],
    joined: level
      .filter(({ joints }) => joints.length > 0)
      .map(({ piece: { mark, member, section }, joints }) => ({
        name: mark,
        size: section.name,
        over: member === "ridge" ? "rafters" : "tails",
        ...(member === "ridge" && frame.spec.wings.length > 0 ? { among: true } : {}),
        joints,
      })),
  };
}

/** A left one, or a plain one; a right one is its mirror image. */
type Shape = Omit<RoofStock, "hand" | "count">;

const SQUARE = [0, 0] as const;

function byHand({ left, right, plain }: Piece, ...shapes: readonly Shape[]): RoofStock[] {
  const counts: readonly (readonly [Hand, number])[] = [
    ["left", left],
    ["right", right],
    ["plain", plain],
  ];
  return shapes.flatMap((shape) =>
    counts
      .filter(([, count]) => count > 0)
      .map(([hand, count]) => ({ ...shape, slants: slantsOf(hand, shape.slants), hand, count })),
  );
}

function slantsOf(hand: Hand, [low, head]: RoofStock["slants"]): RoofStock["slants"] {
  // No -0.
  return hand === "plain" ? SQUARE : hand === "left" ? [low, head] : [0 - low, 0 - head];
}

/** How far a low end reaches back: to the foot of its plumb cut, or without a tail to the seat corner. */
function lowEnd(
  { overhang, heel, slope, section, foot, tailCut, tailEnd, member, shortestBoard }: Piece,
  length: number,
): Pick<Shape, "lean" | "toe"> {
  const lean = section.depth * slope;
  // What a valley cuts, or a ridge, ends as its shortest board says.
  if (foot.bearer !== null || tailCut !== null || member === "valley") return { lean, toe: shortestBoard - length };
  return {
    lean,
    toe: overhang === 0 ? (heel * slope) / alongSlope(slope) : tailEnd.cut === "plumb" ? lean : shortestBoard - length,
  };
}

function rafterStock(piece: Piece): Shape {
  const { mark, section, slope, tail, longPoint, stands, foot, over } = piece;
  const along = alongSlope(slope);
  const [rafter] = stands as readonly [Rafter];
  const across = Math.abs(rafter.head.per);
  const cut = foot.bearer ? rafter.foot : rafter.tailCut;
  const half = section.thickness / 2;
  // A low end that is no plumb cut from face to face is taken for the rectangle around it.
  const plumb =
    cut?.bearer?.kind === "valley" && [half, -half].every((y) => cut.at + cut.per * y > -rafter.plane.overhang);
  const slant = (per: number): number => (handOf(rafter) === "right" ? -1 : 1) * section.thickness * per * along;
  const plan = [half, -half].map((y) => [lowReach(rafter, y), endReach([rafter.head], y)] as const);
  const length =
    foot.bearer || over
      ? (Math.max(...plan.map(([, head]) => head)) - Math.min(...plan.map(([low]) => low))) * along
      : tail + longPoint;
  return {
    name: mark,
    size: section.name,
    length,
    ...lowEnd(piece, length),
    slant: `slope ${slope}`,
    slants: [plumb ? slant(cut.per) : 0, slant(rafter.head.per)],
    spread: along * Math.hypot(1, Math.max(across, Math.abs(cut?.per ?? 0))),
  };
}

function hipStock({ spec }: Frame, piece: Piece): Shape {
  const { mark, section, slope, stands } = piece;
  if (piece.member === "valley board") {
    // Flat, and mitered within the rectangle around it.
    const { lowerCut, upperCut } = stands[0] as ValleyBoard;
    const steepest = (Math.max(lowerCut, upperCut) * Math.PI) / 180;
    return {
      name: mark,
      size: section.name,
      length: piece.shortestBoard,
      lean: 0,
      toe: 0,
      slant: "square",
      slants: SQUARE,
      spread: 1 / Math.cos(steepest),
    };
  }
  const hip = stands[0] as Hip | Valley;
  const { sin, cos } = hip.near;
  const along = alongSlope(slope);
  const farthest = Math.max(...planOf(hip).map(({ x }) => x));
  const length = (farthest + hip.overhang) * along;
  return {
    name: mark,
    size: section.name,
    length,
    ...lowEnd(piece, length),
    slant: `slope ${slope}`,
    ...(spec.hipHead === "ridge" && piece.member === "hip"
      ? { slants: [0, ((section.thickness * cos) / sin) * along], spread: along / sin }
      : {
          slants: SQUARE,
          spread: piece.member === "hip" ? along : along * Math.hypot(1, ...hip.head.map(({ per }) => per)),
        }),
  };
}

/** Where a piece may be joined, from its first end: a ridge where rafters hold it, a board along an eave at tails. */
export function joinPlaces(frame: Frame, { member, stands, shortestBoard, joints = [] }: Piece): readonly number[] {
  return member === "ridge" ? ridgePlaces(frame, stands[0] as Bearer, shortestBoard) : joints;
}

/** Where rafters hold a ridge, but for those at its ends: a joint there would leave a stub. */
function ridgePlaces({ rafters, spec }: Frame, ridge: Bearer, length: number): number[] {
  const least = 2 * spec.rafter.thickness;
  const places = rafters.filter(({ head }) => head.bearer === ridge).map(({ spot }) => alongBoard(ridge, spot));
  return [...new Set(places)].filter((at) => at >= least && at <= length - least).sort((a, b) => a - b);
}

/** How much more of a board each miter takes than a square cut does, and the slant under which mitered pieces go. */
const MITER = { lean: 0.06, slant: "miter", toe: 0.06, spread: Math.SQRT2 } as const;
const SQUARE_ENDS = { lean: 0, slant: "square", toe: 0, spread: 1 } as const;

/** A level piece, whole or in parts. */
function partsOf({ mark, section, shortestBoard, head, member }: Piece, joints: readonly number[]): Shape[] {
  const ends = isEaveMember(member) && head.tilts.length > 0 ? MITER : SQUARE_ENDS;
  return pieceParts(mark, shortestBoard, joints).map((part) => ({
    ...part,
    size: section.name,
    slants: SQUARE,
    ...ends,
  }));
}
