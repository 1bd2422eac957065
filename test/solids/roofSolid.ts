import { beyond, depthIn, opposite } from "./half.ts";
import type { Half } from "./half.ts";
import { frameOf } from "./frame.ts";
import { ON } from "./measure.ts";
import { mainOf } from "./settingOut.ts";
import { cross, distance, dot, plan as fromAbove, scale, size, sub, unit } from "./vector.ts";
import type { Corners } from "./settingOut.ts";
import type { RoofPlan } from "./roofPlan.ts";
import type { Shop } from "./shop.ts";
import type { Vec } from "./vector.ts";

/** The building under its roof as one solid: fascias plumb all around, the roof planes on top. */
export interface RoofSolid {
  readonly corners: readonly Vec[];
  readonly main: readonly Half[];
  readonly end: readonly Half[];
  /** The plumb planes of the fascias, and of a gable's rake. */
  readonly walls: { readonly main: readonly Half[]; readonly end: readonly Half[]; readonly gable: readonly Half[] };
}

/** All planes over a block as wide and long as the roof with its overhangs. */
export function roofSolid(shop: Shop, plan: RoofPlan, { all }: Corners): RoofSolid {
  const [a, b, , d] = all;
  const level = (plan.overhang * plan.pitch.slope) / plan.endPitch.slope;
  const gable = plan.ends === "hip and gable";
  const endOut = plan.endOverhang ?? level;
  const gableOut = plan.endOverhang ?? plan.overhang;
  const { span, length, overhang } = plan;
  const main = [a, d].map((corner) => corner.sides[mainOf(corner)].above);
  // One plane for each hipped end, whichever of its two corners it is taken from.
  const end = (gable ? [a] : [a, b]).map((corner) => corner.sides[1 - mainOf(corner)]!.above);
  const far = length + (gable ? gableOut : endOut);
  const floor = -400;
  const block = shop.board(
    frameOf([-endOut, span / 2, 4000], [1, 0, 0]),
    span + 2 * overhang,
    4000 - floor,
    0,
    far + endOut,
  );
  const solid = shop.trim(block, ...[...main, ...end].map(opposite));
  const west = beyond([-1, 0, 0], [-endOut, 0, 0]);
  const east = beyond([1, 0, 0], [far, 0, 0]);
  const walls = {
    main: [beyond([0, -1, 0], [0, -overhang, 0]), beyond([0, 1, 0], [0, span + overhang, 0])],
    end: gable ? [west] : [west, east],
    gable: gable ? [east] : [],
  };
  return { corners: shop.corners(solid), main, end, walls };
}

const on = (half: Half, point: Vec): boolean => Math.abs(depthIn(half, point)) < ON * size(half.normal);

/** The corners of a face, in order around it. */
function around({ corners }: RoofSolid, half: Half): Vec[] {
  const face = corners.filter((c) => on(half, c));
  const middle = scale(
    face.reduce((sum, c): Vec => [sum[0] + c[0], sum[1] + c[1], sum[2] + c[2]], [0, 0, 0]),
    1 / face.length,
  );
  const first = unit(sub(face[0]!, middle));
  const second = cross(unit(half.normal), first);
  const turn = (c: Vec): number => Math.atan2(dot(sub(c, middle), second), dot(sub(c, middle), first));
  return face.sort((p, q) => turn(p) - turn(q));
}

const polygon = (points: readonly Vec[]): number =>
  size(
    points.reduce(
      (sum, p, i): Vec => {
        const c = cross(sub(p, points[0]!), sub(points[(i + 1) % points.length]!, points[0]!));
        return [sum[0] + c[0], sum[1] + c[1], sum[2] + c[2]];
      },
      [0, 0, 0],
    ),
  ) / 2;

/** The area of a face along its slope, and as seen from above. */
export function areas(roof: RoofSolid, half: Half): { sloped: number; plan: number } {
  const face = around(roof, half);
  return { sloped: polygon(face), plan: polygon(face.map(fromAbove)) };
}

/** The length of the edge in which two faces meet; 0 when they do not, or only in a point. */
export function edge({ corners }: RoofSolid, one: Half, two: Half): number {
  const shared = corners.filter((c) => on(one, c) && on(two, c));
  return Math.max(0, ...shared.flatMap((p) => shared.map((q) => distance(p, q))));
}
