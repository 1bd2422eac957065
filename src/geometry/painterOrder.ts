import type { Vector3 } from "./vector.ts";

/** A flat side of a solid, its corners counterclockwise seen from outside. */
export interface Side {
  readonly corners: readonly Vector3[];
}

/** What doubles lose on a roof of any size and unit. */
const TOUCH = 1e-6;

/**
 * The order in which convex solids that only touch are painted: each after all that it may hide.
 *
 * Of two solids some side of one has the other wholly before it; where that side faces the reader, the other is nearer, else it is
 * farther (the separating planes of a painter's order). Where three hide one another in a ring, the ring is broken at one of them.
 *
 * @returns their indices, farthest first.
 *
 * @example
 * painterOrder([], { x: 1, y: 1, z: 1 }) // => []
 */
export function painterOrder(solids: readonly (readonly Side[])[], towards: Vector3): number[] {
  const planes = solids.map((sides) => sides.map(planeOf));
  // Every corner belongs to several sides, and is wanted once.
  const corners = solids.map((sides) => [
    ...new Map(
      sides.flatMap((side) => side.corners).map((corner) => [`${corner.x} ${corner.y} ${corner.z}`, corner]),
    ).values(),
  ]);
  const shadows = corners.map((points) => shadowOf(points, towards));
  const farther: number[][] = solids.map(() => []);
  for (let i = 0; i < solids.length; i++) {
    for (let j = i + 1; j < solids.length; j++) {
      if (!meets(shadows[i]!, shadows[j]!)) continue;
      const nearer = before(planes[i]!, corners[j]!, towards) - before(planes[j]!, corners[i]!, towards);
      if (nearer > 0) farther[j]!.push(i);
      if (nearer < 0) farther[i]!.push(j);
    }
  }
  // To what doubles lose, so that their last bits do not settle an order.
  const depth = corners.map((points) =>
    Math.round(points.reduce((sum, point) => sum + dot(point, towards), 0) / points.length / TOUCH),
  );
  const order: number[] = [];
  const state = new Uint8Array(solids.length);
  const visit = (i: number): void => {
    if (state[i] !== 0) return;
    state[i] = 1;
    for (const j of farther[i]!) visit(j);
    order.push(i);
  };
  for (const i of solids.map((_, k) => k).sort((a, b) => depth[a]! - depth[b]!)) visit(i);
  return order;
}

/** 1 where the points lie nearer to the reader than a solid of these planes, -1 where farther, 0 where no plane tells. */
function before(planes: readonly Plane[], points: readonly Vector3[], towards: Vector3): number {
  for (const { normal, offset } of planes) {
    const facing = dot(normal, towards);
    if (Math.abs(facing) > 1e-9 && points.every((point) => dot(normal, point) >= offset - TOUCH))
      return Math.sign(facing);
  }
  return 0;
}

interface Plane {
  readonly normal: Vector3;
  readonly offset: number;
}

/** By Newell's sum, which a sliver of a corner does not upset; a side of no size has no normal, and so tells nothing. */
function planeOf({ corners }: Side): Plane {
  let [x, y, z] = [0, 0, 0];
  for (const [i, b] of corners.entries()) {
    const a = corners.at(i - 1)!;
    x += (a.y - b.y) * (a.z + b.z);
    y += (a.z - b.z) * (a.x + b.x);
    z += (a.x - b.x) * (a.y + b.y);
  }
  const length = Math.hypot(x, y, z);
  const normal = length > TOUCH ? { x: x / length, y: y / length, z: z / length } : { x: 0, y: 0, z: 0 };
  return { normal, offset: Math.max(...corners.map((corner) => dot(normal, corner))) };
}

const dot = (a: Vector3, b: Vector3) => a.x * b.x + a.y * b.y + a.z * b.z;

/** Extents of a solid along some directions square to the line of sight: solids whose extents miss each other cannot hide each other. */
function shadowOf(corners: readonly Vector3[], towards: Vector3): readonly (readonly [number, number])[] {
  const level = Math.hypot(towards.x, towards.y);
  const right: Vector3 = { x: -towards.y / level, y: towards.x / level, z: 0 };
  const up: Vector3 = { x: -towards.z * right.y, y: towards.z * right.x, z: towards.x * right.y - towards.y * right.x };
  const seen = corners.map((corner) => [dot(corner, right), dot(corner, up)] as const);
  return DIRECTIONS.map(([cos, sin]) => {
    let [least, most] = [Infinity, -Infinity];
    for (const [x, y] of seen) {
      const reach = cos * x + sin * y;
      if (reach < least) least = reach;
      if (reach > most) most = reach;
    }
    return [least, most] as const;
  });
}

const DIRECTIONS = Array.from(
  { length: 8 },
  (_, k) => [Math.cos((k * Math.PI) / 8), Math.sin((k * Math.PI) / 8)] as const,
);

function meets(one: readonly (readonly [number, number])[], two: readonly (readonly [number, number])[]): boolean {
  return one.every(([least, most], k) => least < two[k]![1] - TOUCH && two[k]![0] < most - TOUCH);
}
