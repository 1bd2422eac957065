import { alongSlope } from "../../geometry/alongSlope.ts";
import { boardRun, type Hip } from "../frame/bearers.ts";
import { ridgeIn, type Frame } from "../frame/frame.ts";
import { planOf } from "../frame/outlineShape.ts";
import type { Hand, Piece } from "../frame/piece.ts";
import type { Rafter } from "../frame/rafterLines.ts";
import { endReach } from "../members/plumbEnd.ts";
import { ridgeJoints, type RidgeBoard } from "../members/ridgeJoints.ts";
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
  /** The side face that the long point is on. */
  readonly hand: Hand;
  /** What a left and a right save head to head: t tan f / cos A; 0 where no head cut is shared. */
  readonly turn: number;
  /** How far the low end reaches back beyond the tail tip. */
  readonly toe: number;
  /** How much wider than the kerf the widest of its saw cuts is along the board. */
  readonly spread: number;
}

/** What is cut out of stock for a roof. */
export interface RoofOrder {
  readonly pieces: readonly RoofStock[];
  /** Where a ridge longer than every board is joined, from its first end; none where it is whole. */
  readonly joints: readonly number[];
}

/**
 * Every piece of a roof as it is sawn out of boards, its spares with it.
 *
 * All end cuts of a roof's pieces are plumb, so with u measured along the top edge and every depth brought up to it along the plumb line, a piece is
 * its own plan stretched by 1 / cos A: a common a rectangle, a jack a trapezoid. A hip's tail is cut to two fascias and its head to two
 * king commons: it is taken for the rectangle around that, so that it shares no more than one plumb cut with its neighbors, from which its cheeks are cut
 * afterwards. Where hips lie on the ridge the head is one cheek across the whole board, and a left and a right share it as jacks do. A
 * backed hip counts before its top is beveled.
 *
 * @param ridgeBoards boards of the ridge's size: a longer ridge is joined at commons (see {@link ridgeJoints}), or left whole where that cannot be.
 */
export function stockPieces(frame: Frame, pieces: readonly Piece[], ridgeBoards: readonly RidgeBoard[]): RoofOrder {
  const { spares } = frame.spec;
  const stock = pieces
    .filter(({ member }) => member !== "ridge")
    .flatMap((piece) => byHand(piece, piece.member === "hip" ? hipStock(frame, piece) : rafterStock(piece)));
  const joints = jointsOf(frame, ridgeBoards);
  const spare = spareRafter(pieces);
  // Cut square across, and so of any hand when it is needed.
  const extra: RoofStock[] =
    spares === 0 ? [] : [{ ...rafterStock(spare), name: `${spare.mark} spare`, hand: "plain", turn: 0, count: spares }];
  return {
    pieces: [
      ...pieces.filter(({ member }) => member === "ridge").flatMap((piece) => ridgeStock(piece, joints)),
      ...stock,
      ...extra,
    ],
    joints,
  };
}

type Shape = Omit<RoofStock, "hand" | "count">;

function byHand({ left, right, plain }: Piece, shape: Shape): RoofStock[] {
  const counts: readonly (readonly [Hand, number])[] = [
    ["left", left],
    ["right", right],
    ["plain", plain],
  ];
  return counts.filter(([, count]) => count > 0).map(([hand, count]) => ({ ...shape, hand, count }));
}

/** How far a low end reaches back: to the foot of its plumb cut, or without a tail to the seat corner. */
function lowEnd({ overhang, heel, slope, section }: Piece): Pick<Shape, "lean" | "toe"> {
  const lean = section.depth * slope;
  return { lean, toe: overhang === 0 ? (heel * slope) / alongSlope(slope) : lean };
}

function rafterStock(piece: Piece): Shape {
  const { mark, section, slope, tail, longPoint, stands } = piece;
  const along = alongSlope(slope);
  const across = Math.abs((stands[0] as Rafter).head.per);
  return {
    name: mark,
    size: section.name,
    length: tail + longPoint,
    ...lowEnd(piece),
    slant: `slope ${slope}`,
    turn: section.thickness * across * along,
    spread: along * Math.hypot(1, across),
  };
}

function hipStock({ spec }: Frame, piece: Piece): Shape {
  const { mark, section, slope, overhang, stands } = piece;
  const hip = stands[0] as Hip;
  const { sin, cos } = hip.near;
  const along = alongSlope(slope);
  const farthest = Math.max(...planOf(hip).map(({ x }) => x));
  return {
    name: mark,
    size: section.name,
    length: (farthest + overhang) * along,
    ...lowEnd(piece),
    slant: `slope ${slope}`,
    ...(spec.hipHead === "ridge"
      ? { turn: ((section.thickness * cos) / sin) * along, spread: along / sin }
      : { turn: 0, spread: along }),
  };
}

function jointsOf(frame: Frame, boards: readonly RidgeBoard[]): readonly number[] {
  const ridge = ridgeIn(frame);
  if (!ridge?.section) return [];
  const first = frame.blocks[ridge.block]!.ends[0]!.run - endReach(ridge.tail, 0);
  return (
    ridgeJoints(
      boardRun(ridge),
      frame.commons.stations.map((station) => station - first),
      boards,
    ) ?? []
  );
}

function ridgeStock({ mark, section, longPoint }: Piece, joints: readonly number[]): RoofStock[] {
  const stops = [0, ...joints, longPoint];
  return stops
    .slice(1)
    .map((to, i) => ({
      name: joints.length === 0 ? mark : `${mark} ${i + 1} of ${joints.length + 1}`,
      size: section.name,
      length: to - stops[i]!,
      count: 1,
      lean: 0,
      slant: "square",
      hand: "plain" as const,
      turn: 0,
      toe: 0,
      spread: 1,
    }));
}
