import { alongSlope } from "../../geometry/alongSlope.ts";
import type { Point } from "../../geometry/point.ts";
import type { OutlineShape } from "./outlineShape.ts";

/**
 * Points of a piece by their names in the trade. "over plate" is the top edge on the plumb line over the plate line; "seat corner"
 * the plate's outer top edge, "seat end" where the seat runs out of the underside, "heel" the foot of the heel cut; "toe" is the lower end of a head
 * cut, "tail tip" and "tail toe" the upper and lower end of the tail cut, "soffit end" where a level cut from there runs out of the underside.
 */
export type PointName =
  "head" | "toe" | "over plate" | "seat corner" | "seat end" | "heel" | "soffit end" | "tail tip" | "tail toe";

/** One side face of a piece lying as on the saw horses: x along the top edge up the slope from over the plate line, y square to it, 0 at the top edge. */
export interface OutlineFace {
  /** Where across the piece it stands, left positive. */
  readonly across: number;
  readonly polygon: readonly Point[];
  readonly points: Readonly<Partial<Record<PointName, Point>>>;
}

/** How far along the plan line a piece reaches at a level distance across. */
export function reachAt(plan: readonly Point[], across: number): { from: number; to: number } {
  const crossings = plan.flatMap((b, i) => {
    const a = plan.at(i - 1)!;
    if (Math.min(a.y, b.y) > across || Math.max(a.y, b.y) < across) return [];
    // A corner just there is given as it is: a quotient could differ in its last bit from one end of the side to the other.
    const corners = [a, b].filter(({ y }) => y === across).map(({ x }) => x);
    return corners.length > 0 ? corners : [a.x + ((across - a.y) / (b.y - a.y)) * (b.x - a.x)];
  });
  return { from: Math.min(...crossings), to: Math.max(...crossings) };
}

/** A point so far level up the piece and so high above the plate, on the board. */
export function onBoard({ slope, heel }: Pick<OutlineShape, "slope" | "heel">, level: number, height: number): Point {
  const along = alongSlope(slope);
  return { x: (level + slope * (height - heel)) / along, y: (height - heel - slope * level) / along };
}

/** Less than this is no tail at all, in any unit: what a double loses in clipping. */
const NONE = 1e-9;

/**
 * The outline of a piece in a plumb section along it at a level distance across, such as one of its side faces.
 *
 * With no overhang the heel cut is the tail cut, and all that lies below the plate's top is gone.
 */
export function outlineFace(shape: OutlineShape, across: number): OutlineFace {
  const { slope, heel, plumbDepth, seat, plan, left, right, feather, headLean } = shape;
  // What a face has, anything between it and the piece's own line has in proportion.
  const part = (atLeft: number, atRight: number) =>
    across > 0 ? (atLeft * across) / left : across < 0 ? (atRight * across) / right : 0;
  const fall = part(shape.leftFall, shape.rightFall);
  const { from, to } = reachAt(plan, across);
  // Over an inner corner the wood begins inside of the plate line, and its seat with it.
  const heel0 = part(shape.leftHeel, shape.rightHeel);
  const heelAt = from > heel0 + NONE ? from : heel0;
  const top = (level: number) => onBoard(shape, level, heel - fall + slope * level);
  const under = (level: number) => onBoard(shape, level, heel - plumbDepth + slope * level);
  const upper = { "tail tip": top(from), head: top(to), toe: under(to - headLean) };
  if (feather) {
    // The level seat runs out of the underside, or at the head of a wedge out of that.
    const [low, out] = [heel + slope * from, from + plumbDepth / slope];
    return face(
      across,
      out < to - NONE
        ? { "seat corner": top(from), head: top(to), toe: under(to), "seat end": under(out) }
        : { "seat corner": top(from), head: top(to), toe: onBoard(shape, to, low) },
    );
  }
  if (seat === null) return face(across, { ...upper, "tail toe": under(from) });
  const notched = heelAt < seat;
  const tail = from < heelAt - NONE;
  const notch = notched ? { "seat end": under(seat), "seat corner": onBoard(shape, heelAt, 0) } : {};
  return face(
    across,
    {
      ...upper,
      ...notch,
      ...(tail ? tailPoints(shape, from, heelAt, notched) : notched ? {} : { "tail toe": under(from) }),
    },
    { "over plate": top(heelAt) },
  );
}

/** The lower points of a tail, from the notch out: a cut that is not plumb may end at the notch already. */
function tailPoints(
  { slope, heel, plumbDepth, tailEnd }: OutlineShape,
  from: number,
  heelAt: number,
  notched: boolean,
): OutlineFace["points"] {
  const shape = { slope, heel };
  const on = (level: number, height: number) => onBoard(shape, level, height);
  const under = (level: number) => on(level, heel - plumbDepth + slope * level);
  const top = heel + slope * from;
  if (tailEnd.plumb !== null) {
    const soffit = top - tailEnd.plumb;
    const end = from + (plumbDepth - tailEnd.plumb) / slope;
    const toe = { "tail toe": on(from, soffit) };
    if (notched && end > heelAt) return { heel: on(heelAt, soffit), ...toe };
    return { ...(notched ? { heel: under(heelAt) } : {}), "soffit end": under(end), ...toe };
  }
  if (tailEnd.cut === "square") {
    const along = alongSlope(slope);
    const depth = plumbDepth / along;
    const end = from + (depth * slope) / along;
    if (notched && end > heelAt) return { heel: on(heelAt, top - (heelAt - from) / slope) };
    return { ...(notched ? { heel: under(heelAt) } : {}), "tail toe": on(end, top - depth / along) };
  }
  return { ...(notched ? { heel: under(heelAt) } : {}), "tail toe": under(from) };
}

/** Its points in the order in which they stand round the face, and others that only have a name. */
function face(across: number, round: OutlineFace["points"], others: OutlineFace["points"] = {}): OutlineFace {
  return { across, polygon: Object.values(round), points: { ...round, ...others } };
}
