import { clipped, type Point } from "../../geometry/clipped.ts";
import { plumbDepthOf } from "../members/commonRafter.ts";
import type { Frame } from "./frame.ts";
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

/** A common, king common or jack. A left jack has its long point on its left face, a right one on its right: they are mirror images. */
export function rafterShape(piece: Piece, hand: Hand): OutlineShape {
  const { longRun, shortRun, overhang, section, slope, heel, seat } = piece;
  const half = section.thickness / 2;
  const leftRun = hand === "right" ? shortRun : longRun;
  const rightRun = hand === "left" ? shortRun : longRun;
  return {
    slope,
    heel,
    seat,
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
export function hipShape(
  { main, end, hip, spec, kings, ridgeThickness }: Frame,
  piece: Piece,
  hand: Hand,
): OutlineShape {
  const { near, far } = main.at;
  const { run, mainFace, endFace } = hip;
  const { overhang } = piece;
  // Worked out with the end side to the left; mirrored below for a left hip.
  const reach = run + spec.hip.thickness + overhang;
  let plan: Point[] = [
    { x: -2 * reach, y: -mainFace },
    { x: 2 * reach, y: -mainFace },
    { x: 2 * reach, y: endFace },
    { x: -2 * reach, y: endFace },
  ];
  plan = clipped(plan, -near.sin, -near.cos, main.overhang);
  plan = clipped(plan, -far.sin, far.cos, end.overhang);
  if (kings) {
    const half = spec.rafter.thickness / 2;
    plan = clipped(plan, near.cos, -near.sin, run * near.cos - half);
    plan = clipped(plan, far.cos, far.sin, run * far.cos - half);
  } else {
    plan = clipped(plan, near.sin, near.cos, run * near.sin - ridgeThickness / 2);
  }
  const backed = spec.hipTop === "backed";
  const shape = {
    slope: piece.slope,
    heel: piece.heel,
    seat: piece.seat,
    plumbDepth: plumbDepthOf(piece.slope, spec.hip.depth),
    plan,
    left: endFace,
    right: -mainFace,
    leftFall: backed ? hip.endFall : 0,
    rightFall: backed ? hip.mainFall : 0,
    leftHeel: endFace / far.tan,
    rightHeel: mainFace / near.tan,
  };
  return hand === "left" ? mirrored(shape) : shape;
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

/** The ridge: a plain board from end to end, its top edge at height 0 of its own. */
export function ridgeOutlineShape({ longRun, section }: Piece): OutlineShape {
  const half = section.thickness / 2;
  return {
    slope: 0,
    heel: 0,
    seat: null,
    plumbDepth: section.depth,
    plan: [
      { x: 0, y: -half },
      { x: longRun, y: -half },
      { x: longRun, y: half },
      { x: 0, y: half },
    ],
    left: half,
    right: -half,
    leftFall: 0,
    rightFall: 0,
    leftHeel: 0,
    rightHeel: 0,
  };
}
