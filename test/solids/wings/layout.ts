import { beyond, depthIn } from "../half.ts";
import type { Half } from "../half.ts";
import { add, cross, dot, leftOf, scale, sub, UP } from "../vector.ts";
import type { Vec } from "../vector.ts";
import { letterOf } from "./plan.ts";
import type { Side, WingedPlan, WingPlan } from "./plan.ts";

/** A roof plane over its plate line. */
export interface Plane {
  readonly name: string;
  /** The left end of its plate line as seen from outside, at the plate's top. */
  readonly at: Vec;
  /** Along the plate line, to the right as seen from outside. */
  readonly plate: Vec;
  readonly inward: Vec;
  readonly length: number;
  readonly pitch: number;
  readonly overhang: number;
  /** Everything above the plane. */
  readonly above: Half;
}

/** A wing in its place. */
export interface Wing {
  readonly letter: string;
  readonly plan: WingPlan;
  /** The main plane that it runs into. */
  readonly wall: Plane;
  readonly left: Plane;
  readonly right: Plane;
  readonly end: Plane | null;
  /** The side on which it is flush with a hipped end. */
  readonly flush: Side | null;
  /** Inner corners that there are: none on the flush side. */
  readonly inner: Readonly<Partial<Record<Side, Vec>>>;
  /** Outer corners, at the plate's top. */
  readonly outer: Readonly<Record<Side, Vec>>;
  /** Where the wing's ridge line meets the main plane. */
  readonly crossing: Vec;
  readonly level: boolean;
  /** Where the wing's ridge line ends outside: apex, or gable plate line. */
  readonly apex: Vec;
}

/** Where everything stands: planes and the points in which they meet. */
export interface Layout {
  readonly plan: WingedPlan;
  readonly front: Plane;
  readonly back: Plane;
  readonly ends: Readonly<Record<Side, Plane | null>>;
  /** The ends of the main ridge line: an apex, or over a gable's plate line. */
  readonly apex: Readonly<Record<Side, Vec>>;
  readonly wings: readonly Wing[];
  /** Every plane once. */
  readonly planes: readonly Plane[];
}

/** The point in which three planes meet. */
export function meet(a: Half, b: Half, c: Half): Vec {
  const [bc, ca, ab] = [cross(b.normal, c.normal), cross(c.normal, a.normal), cross(a.normal, b.normal)];
  const sum = add(add(scale(bc, a.offset), scale(ca, b.offset)), scale(ab, c.offset));
  return scale(sum, 1 / dot(a.normal, bc));
}

function planeOf(
  name: string,
  at: Vec,
  plate: Vec,
  length: number,
  pitch: number,
  overhang: number,
  heel: number,
): Plane {
  const inward = leftOf(plate);
  const above = beyond(add(UP, scale(inward, -pitch)), add(at, [0, 0, heel]));
  return { name, at, plate, inward, length, pitch, overhang, above };
}

/** The height of a plane over a point of the plan. */
export const heightOf = ({ above }: Plane, [x, y]: Vec): number => -depthIn(above, [x, y, 0]);

/** Sets the planes of a roof out. */
export function layoutOf(plan: WingedPlan): Layout {
  const { span, length, heel } = plan;
  const main = plan.pitch.slope;
  const end = plan.endPitch.slope;
  const front = planeOf("Front", [0, 0, 0], [1, 0, 0], length, main, plan.overhang, heel);
  const back = planeOf("Back", [length, span, 0], [-1, 0, 0], length, main, plan.overhang, heel);
  // A level fascia: every eave falls as far below its plate.
  const fall = plan.overhang * main;
  const endOut = plan.endOverhang ?? fall / end;
  const left = planeOf("Left", [0, span, 0], [0, -1, 0], span, end, endOut, heel);
  const right = planeOf("Right", [length, 0, 0], [0, 1, 0], span, end, endOut, heel);
  const ends = { left: plan.ends[0] === "hip" ? left : null, right: plan.ends[1] === "hip" ? right : null };
  const apex = {
    left: meet(front.above, back.above, ends.left?.above ?? beyond(left.inward, left.at)),
    right: meet(front.above, back.above, ends.right?.above ?? beyond(right.inward, right.at)),
  };
  const ridgeTop = apex.left[2];

  const wings = plan.wings.map((wing, i): Wing => {
    const letter = letterOf(i);
    const wall = wing.wall === "front" ? front : back;
    const flush: Side | null = wing.from === "flush left" ? "left" : wing.from === "flush right" ? "right" : null;
    const from = typeof wing.from === "number" ? wing.from : flush === "left" ? 0 : length - wing.span;
    const slope = (wing.pitch ?? plan.pitch).slope;
    const endSlope = (wing.endPitch ?? wing.pitch ?? plan.pitch).slope;
    const out = wing.overhang ?? fall / slope;
    const [along, into] = [wall.plate, wall.inward];
    const mouth = { left: add(wall.at, scale(along, from)), right: add(wall.at, scale(along, from + wing.span)) };
    const outer = { left: add(mouth.left, scale(into, -wing.out)), right: add(mouth.right, scale(into, -wing.out)) };
    // The end of the main roof that lies at the wing's left for someone who faces the wall.
    const shared = flush && (wing.wall === "front") === (flush === "left") ? ends.left : flush ? ends.right : null;
    if (flush && !shared) throw new Error(`Wing ${letter} is flush with a gable.`);
    if (shared && Math.abs(shared.pitch - slope) > 1e-12) throw new Error(`Wing ${letter} has not its end's pitch.`);
    const side = (which: Side): Plane =>
      flush === which
        ? shared!
        : which === "left"
          ? planeOf(`Wing ${letter} left`, mouth.left, scale(into, -1), wing.out, slope, out, heel)
          : planeOf(`Wing ${letter} right`, outer.right, into, wing.out, slope, out, heel);
    const planes = { left: side("left"), right: side("right") };
    const hipped = wing.end === "hip";
    const endPlane = hipped
      ? planeOf(`Wing ${letter} end`, outer.left, along, wing.span, endSlope, wing.endOverhang ?? fall / endSlope, heel)
      : null;
    const crossing = meet(planes.left.above, planes.right.above, wall.above);
    return {
      letter,
      plan: wing,
      wall,
      ...planes,
      end: endPlane,
      flush,
      inner: {
        ...(flush === "left" ? {} : { left: mouth.left }),
        ...(flush === "right" ? {} : { right: mouth.right }),
      },
      outer,
      crossing,
      level: Math.abs(crossing[2] - ridgeTop) < 1e-9 * ridgeTop,
      apex: meet(planes.left.above, planes.right.above, endPlane?.above ?? beyond(into, outer.left)),
    };
  });
  const all = [front, back, ends.left, ends.right, ...wings.flatMap((wing) => [wing.left, wing.right, wing.end])];
  return { plan, front, back, ends, apex, wings, planes: [...new Set(all.filter((p): p is Plane => p !== null))] };
}

/** The height of the finished roof over a point of the plan: the highest block's lowest plane. */
export function roofHeight(
  { plan, front, back, ends, wings }: Layout,
  point: Vec,
  counts: (wing: Wing) => boolean = () => true,
): number {
  const lowest = (planes: readonly (Plane | null)[]): number =>
    Math.min(...planes.map((plane) => (plane ? heightOf(plane, point) : Infinity)));
  // A wing's block runs from its outer end in to the main ridge line.
  const over = wings.filter(counts).filter(({ wall, end, plan: { out } }) => {
    const depth = dot(wall.inward, sub(point, wall.at));
    return depth <= plan.span / 2 && (end !== null || depth >= -out);
  });
  return Math.max(
    lowest([front, back, ends.left, ends.right]),
    ...over.map(({ left, right, end }) => lowest([left, right, end])),
  );
}

/** True where a plane is the finished roof over a point of the plan, or would be if the wings laid over it were not there. */
export function isRoof(layout: Layout, plane: Plane, point: Vec): boolean {
  const framed = ({ plan, left, right, end }: Wing) =>
    plan.framing !== "laid over" || [left, right, end].includes(plane);
  return Math.abs(roofHeight(layout, point, framed) - heightOf(plane, point)) < 1e-9;
}
