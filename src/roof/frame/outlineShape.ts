import type { Point } from "../../geometry/point.ts";
import { plumbDepthOf } from "../members/commonRafter.ts";
import { endReach, stopsOf } from "../members/plumbEnd.ts";
import type { Bearer, Hip } from "./bearers.ts";
import type { Hand, Piece } from "./piece.ts";

/**
 * What a piece is cut to, seen from above: all its end cuts are plumb, so its plan and a few heights tell everything.
 *
 * In plan x runs level up the piece from the plate line (a hip: from the corner), y across it, to the left for someone who looks up the slope;
 * y is 0 on the piece's own line, which on a shifted hip is not the middle of the board.
 */
export interface OutlineShape {
  readonly slope: number;
  /** Plumb, from the plate's top to the top edge over x = 0. */
  readonly heel: number;
  readonly plumbDepth: number;
  /** Convex, counterclockwise. */
  readonly plan: readonly Point[];
  /** Where across its two side faces stand. */
  readonly left: number;
  readonly right: number;
  /** Plumb, how much lower than on its own line a backed top is at each face; 0 for a square top. */
  readonly leftFall: number;
  readonly rightFall: number;
  /** Where along each face the heel cut stands: 0 but on a hip, which crosses two plate lines. */
  readonly leftHeel: number;
  readonly rightHeel: number;
  /** Level, from x = 0 to where the seat runs out of the underside; null for a piece without a seat. */
  readonly seat: number | null;
}

/** A common, king common, jack or ridge. A left jack has its long point on its left face, a right one on its right: they are mirror images. */
export function rafterShape(piece: Piece, hand: Hand): OutlineShape {
  const { longRun, shortRun, overhang, section, slope, heel, seat, member } = piece;
  const half = section.thickness / 2;
  const leftRun = hand === "right" ? shortRun : longRun;
  const rightRun = hand === "left" ? shortRun : longRun;
  return {
    slope,
    heel,
    seat: member === "ridge" ? null : seat,
    plumbDepth: plumbDepthOf(slope, section.depth),
    plan: [
      { x: -overhang, y: -half },
      { x: rightRun, y: -half },
      { x: leftRun, y: half },
      { x: -overhang, y: half },
    ],
    left: half,
    right: -half,
    leftFall: 0,
    rightFall: 0,
    leftHeel: 0,
    rightHeel: 0,
  };
}

/**
 * A hip. A left hip has the main side on its left; a plain one is cut like a right one, which it equals.
 *
 * Its head is cut to the faces it meets, its tail to stay inside both fascias.
 */
export function hipShape(hip: Hip, hand: Hand): OutlineShape {
  const { near, far, slope, height, seat, section, backing } = hip;
  const shape: OutlineShape = {
    slope,
    heel: height,
    seat,
    plumbDepth: plumbDepthOf(slope, section.depth),
    // With the far side to the left; mirrored below for a left hip.
    plan: planOf(hip),
    left: far.face,
    right: -near.face,
    leftFall: backing ? far.fall : 0,
    rightFall: backing ? near.fall : 0,
    leftHeel: far.face / far.tan,
    rightHeel: near.face / near.tan,
  };
  return hand === "left" ? mirrored(shape) : shape;
}

/** A bearer's board seen from above, in its own plan: between its two faces, as far as each of its cuts lets it run. */
export function planOf({ near, far, tail, head }: Bearer): Point[] {
  const [from, to] = [-near.face, far.face];
  const low = (y: number): Point => ({ x: 0 - endReach(tail, y), y });
  return [
    ...stopsOf(tail, from, to).slice(1, -1).reverse().map(low),
    low(from),
    ...stopsOf(head, from, to).map((y) => ({ x: endReach(head, y), y })),
    low(to),
  ];
}

function mirrored(shape: OutlineShape): OutlineShape {
  return {
    ...shape,
    plan: shape.plan.map(({ x, y }) => ({ x, y: -y })).reverse(),
    left: -shape.right,
    right: -shape.left,
    leftFall: shape.rightFall,
    rightFall: shape.leftFall,
    leftHeel: shape.rightHeel,
    rightHeel: shape.leftHeel,
  };
}
