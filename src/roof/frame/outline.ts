import type { Point } from "../../geometry/point.ts";
import type { Bearer, Hip, Valley, ValleyBoard } from "./bearers.ts";
import type { Frame } from "./frame.ts";
import { onBoard, outlineFace, type OutlineFace } from "./outlineFace.ts";
import { outlineMarks, type OutlineMark } from "./outlineMarks.ts";
import { valleyBoardShape, hipShape, rafterShape, ridgeShape, type OutlineShape } from "./outlineShape.ts";
import type { Hand, Piece } from "./piece.ts";
import type { Rafter } from "./rafterLines.ts";

/** What a piece looks like from its two sides and from above: all that a drawing of it needs. Lengths in the roof's unit. */
export interface Outline {
  readonly shape: OutlineShape;
  readonly left: OutlineFace;
  readonly right: OutlineFace;
  /** The plumb section on the piece's own line: of a hip, where its seat corner is. */
  readonly middle: OutlineFace;
  /** The side face that has the long point; left where both are alike. */
  readonly longFace: "left" | "right";
  /** Looking square down on the top edge: x along it as on the faces, y across, left positive. */
  readonly edge: readonly Point[];
  /** Where other pieces meet it, along the top edge. */
  readonly marks: readonly OutlineMark[];
}

/** The outline of a piece for one hand: side faces, top edge, and the marks on a hip or ridge. */
export function outline(frame: Frame, piece: Piece, hand: Hand): Outline {
  return { ...outlineOf(shapeOf(piece, hand)), marks: outlineMarks(frame, piece, hand) };
}

/** What the outline of a piece follows from. */
export function shapeOf(piece: Piece, hand: Hand): OutlineShape {
  const [stand] = piece.stands as readonly [Rafter | Bearer | Hip | Valley];
  if (stand.kind === "rafter") return rafterShape(piece, hand);
  if (stand.kind === "valley board") return valleyBoardShape(stand as ValleyBoard, hand);
  return stand.kind === "ridge" ? ridgeShape(stand) : hipShape(stand as Hip | Valley, hand);
}

/** The outline of a rafter, which needs nothing but the piece. */
export function rafterOutline(piece: Piece, hand: Hand): Outline {
  return { ...outlineOf(rafterShape(piece, hand)), marks: [] };
}

function outlineOf(shape: OutlineShape): Omit<Outline, "marks"> {
  const left = outlineFace(shape, shape.left);
  const right = outlineFace(shape, shape.right);
  return {
    shape,
    left,
    right,
    middle: outlineFace(shape, 0),
    longFace: right.points.head!.x > left.points.head!.x ? "right" : "left",
    edge: edgeOf(shape),
  };
}

/** A backed top falls away from its line, which brings what lies off it a little down the slope. */
function edgeOf(shape: OutlineShape): Point[] {
  const { slope, plan, heel, left, right, leftFall, rightFall } = shape;
  return plan.map(({ x, y }) => {
    const fall = y > 0 ? (leftFall * y) / left : (rightFall * y) / right;
    return { x: onBoard(shape, x, heel + slope * x - fall).x, y };
  });
}
