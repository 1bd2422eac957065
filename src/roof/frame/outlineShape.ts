import type { Point } from "../../geometry/point.ts";
import { alongSlope } from "../../geometry/alongSlope.ts";
import { plumbDepthOf } from "../members/commonRafter.ts";
import { endReach, stopsOf } from "../members/plumbEnd.ts";
import { heightOver } from "../../geometry/plane.ts";
import { tailReach, type Bearer, type Hip, type Valley, type ValleyBoard } from "./bearers.ts";
import type { Hand, Piece } from "./piece.ts";
import { PLUMB_END, type TailEnd } from "./tailEnd.ts";
import { handOf, lowReach, type Rafter } from "./rafterLines.ts";

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
  /** Counterclockwise; convex but for the notched tail of a valley. */
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
  /** How its tail is cut. */
  readonly tailEnd: TailEnd;
  /** Level, from x = 0 to where the seat runs out of the underside; null for a piece without a seat. */
  readonly seat: number | null;
  /** Its foot is a level seat that starts at its top edge, on a valley board. */
  readonly feather?: boolean;
  /** Level, how far the lower edge of its head stops short of its top: 0 where that cut is plumb. */
  readonly headLean: number;
}

/**
 * A rafter. A left one and a right one are mirror images; of what stands on the plate the long point is on the face of its hand.
 *
 * Its foot and tail are cut to the valley that it stands on or meets, its head to the face that it meets.
 */
export function rafterShape(piece: Piece, hand: Hand): OutlineShape {
  const rafter = drawnAs(piece, hand);
  const { section, slope, longRun, shortRun, over } = piece;
  const { plane, foot, spot } = rafter;
  const half = section.thickness / 2;
  const standing = foot.bearer === null;
  // From the piece's own figures where it stands on the plate, so that both hands are alike to the last bit.
  const long = handOf(rafter) === "right" ? -half : half;
  const head = (y: number): Point => ({
    x: standing ? (y === long ? longRun : shortRun) : endReach([rafter.head], y),
    y,
  });
  const low = (y: number): Point => ({ x: lowReach(rafter, y), y });
  // Where a valley and the fascia both cut it, the two cuts meet between its faces, once at most.
  const cut = foot.bearer ? foot : rafter.tailCut;
  const stops = cut && cut.per !== 0 ? stopsOf([cut, { at: -plane.overhang, per: 0 }], -half, half).slice(1, -1) : [];
  const shape: OutlineShape = {
    slope,
    heel: standing ? piece.heel : heightOver(plane, spot),
    seat: standing || over ? plane.seat : null,
    feather: foot.bearer?.kind === "valley board",
    headLean: 0,
    tailEnd: piece.tailEnd,
    plumbDepth: plumbDepthOf(slope, section.depth),
    plan: [low(-half), head(-half), head(half), low(half), ...stops.map(low)],
    left: half,
    right: -half,
    leftFall: 0,
    rightFall: 0,
    leftHeel: 0,
    rightHeel: 0,
  };
  return [hand, "plain"].includes(handOf(rafter)) ? shape : mirrored(shape);
}

/** The rafter that a piece of a hand is drawn as: the first of that hand, else one to be mirrored. */
export function drawnAs({ stands }: Piece, hand: Hand): Rafter {
  const rafters = stands as readonly Rafter[];
  return rafters.find((one) => handOf(one) === hand) ?? rafters[0]!;
}

/** A ridge, from the end of its board. */
export function ridgeShape(ridge: Bearer): OutlineShape {
  const past = endReach(ridge.tail, 0);
  const { near, far, section } = ridge;
  return {
    slope: 0,
    heel: 0,
    seat: null,
    headLean: ridge.headLean,
    tailEnd: PLUMB_END,
    plumbDepth: section!.depth,
    plan: planOf(ridge).map(({ x, y }) => ({ x: x + past, y })),
    left: far.face,
    right: -near.face,
    leftFall: 0,
    rightFall: 0,
    leftHeel: 0,
    rightHeel: 0,
  };
}

/**
 * A hip or a valley. A left one has the main side on its left; a plain one is cut like a right one, which it equals.
 *
 * A hip's head is cut to the faces it meets, its tail to stay inside both fascias; the heel cut crosses its faces farther in than its own line, a valley's farther out.
 */
export function hipShape(hip: Hip | Valley, hand: Hand): OutlineShape {
  const { near, far, slope, height, seat, section, kind, start } = hip;
  const backing = kind === "hip" ? hip.backing : null;
  const way = kind === "hip" ? 1 : -1;
  const shape: OutlineShape = {
    slope,
    heel: height,
    // A broken hip stands on no plate.
    seat: start > 0 ? null : seat,
    headLean: 0,
    tailEnd: PLUMB_END,
    plumbDepth: plumbDepthOf(slope, section.depth),
    // With the far side to the left; mirrored below for a left hip.
    plan: planOf(hip),
    left: far.face,
    right: -near.face,
    leftFall: backing ? far.fall : 0,
    rightFall: backing ? near.fall : 0,
    leftHeel: (way * far.face) / far.tan,
    rightHeel: (way * near.face) / near.tan,
  };
  return hand === "left" ? mirrored(shape) : shape;
}

/**
 * A valley board as it lies on the saw horses, flat: x along its outer edge from its lower end, y across it; its depth is its thickness. The outer edge of a left one is
 * on its left.
 */
export function valleyBoardShape({ outer, inner, section, near }: ValleyBoard, hand: Hand): OutlineShape {
  const half = section.depth / 2;
  const tan = near.tan * alongSlope(near.pitch);
  // Where its two ends meet before the inner edge it is a triangle.
  const wide = inner > 0 ? section.depth : outer / (tan + 1 / tan);
  const plan = [
    { x: 0, y: half },
    { x: wide / tan, y: half - wide },
    ...(inner > 0 ? [{ x: wide / tan + inner, y: half - wide }] : []),
    { x: outer, y: half },
  ];
  const shape: OutlineShape = {
    slope: 0,
    heel: 0,
    seat: null,
    headLean: 0,
    tailEnd: PLUMB_END,
    plumbDepth: section.thickness,
    plan,
    left: half,
    right: half - wide,
    leftFall: 0,
    rightFall: 0,
    leftHeel: 0,
    rightHeel: 0,
  };
  return hand === "right" ? mirrored(shape) : shape;
}

/** A bearer's board seen from above, in its own plan: between its two faces, as far as each of its cuts lets it run. */
export function planOf(bearer: Bearer): Point[] {
  const { near, far, tail, head } = bearer;
  const [from, to] = [-near.face, far.face];
  const low = (y: number): Point => ({ x: 0 - tailReach(bearer, y), y });
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
