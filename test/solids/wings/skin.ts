import { depthIn, beyond, opposite } from "../half.ts";
import type { Half } from "../half.ts";
import { frameOf } from "../frame.ts";
import type { Shop, Solid } from "../shop.ts";
import { add, cross, distance, plan as fromAbove, scale, size, sub } from "../vector.ts";
import type { Vec } from "../vector.ts";
import type { EdgeFigures, PlaneFigures } from "./figures.ts";
import type { Layout, Plane, Wing } from "./layout.ts";
import { partOf } from "./measureRoof.ts";

/** A plumb wall under an edge of the roof. */
interface Wall {
  readonly half: Half;
  /** A gable's: its top edges are rakes. */
  readonly gable: boolean;
}

/** The roof as one solid under its planes, its surface in triangles, each with the plane or wall it lies in. */
export interface Skin {
  readonly faces: readonly { readonly points: readonly [Vec, Vec, Vec]; readonly on: Plane | Wall | null }[];
}

const FLOOR = -500;
const TALL = 4000;
/** Corners this near to a plane lie in it: unions leave a little more rounding than cuts. */
const NEAR = 1e-6;

/** A block of the roof: everything under its planes, between plumb walls. */
function block(shop: Shop, planes: readonly Plane[], walls: readonly Half[], middle: Vec): Solid {
  const big = shop.board(frameOf([middle[0] - TALL, middle[1], TALL], [1, 0, 0]), 2 * TALL, TALL - FLOOR, 0, 2 * TALL);
  return shop.trim(big, ...planes.map(({ above }) => opposite(above)), ...walls.map(opposite));
}

const eave = ({ at, inward, overhang }: Plane): Half => beyond(scale(inward, -1), add(at, scale(inward, -overhang)));

/** The roof's blocks as solids and all their walls. */
function blocks(shop: Shop, { plan, front, back, ends, wings }: Layout): { solids: Solid[]; walls: Wall[] } {
  const walls: Wall[] = [];
  const wall = (half: Half, gable = false): Half => {
    walls.push({ half, gable });
    return half;
  };
  const middle: Vec = [plan.length / 2, plan.span / 2, 0];
  const gableOut = plan.endOverhang ?? plan.overhang;
  const endWall = (side: "left" | "right"): Half => {
    const plane = ends[side];
    if (plane) return wall(eave(plane));
    const out: Vec = [side === "left" ? -1 : 1, 0, 0];
    return wall(beyond(out, [side === "left" ? -gableOut : plan.length + gableOut, 0, 0]), true);
  };
  const main = block(
    shop,
    [front, back, ends.left, ends.right].filter((p): p is Plane => p !== null),
    [wall(eave(front)), wall(eave(back)), endWall("left"), endWall("right")],
    middle,
  );
  const solids = wings.map((wing: Wing): Solid => {
    const { wall: host, left, right, end, outer, plan: own } = wing;
    const out = own.endOverhang ?? own.overhang ?? left.overhang;
    const outside = end
      ? wall(eave(end))
      : wall(beyond(scale(host.inward, -1), add(outer.left, scale(host.inward, -out))), true);
    // In to the main ridge line: what is past it lies under the main roof.
    const inside = beyond(host.inward, middle);
    return block(
      shop,
      [left, right, ...(end ? [end] : [])],
      [wall(eave(left)), wall(eave(right)), outside, inside],
      scale(add(outer.left, outer.right), 0.5),
    );
  });
  return { solids: [main, ...solids], walls };
}

const known = new WeakMap<Layout, Skin>();

/** The roof's surface; made once for a layout. */
export function skinOf(shop: Shop, layout: Layout): Skin {
  const before = known.get(layout);
  if (before) return before;
  const made = makeSkin(shop, layout);
  known.set(layout, made);
  return made;
}

function makeSkin(shop: Shop, layout: Layout): Skin {
  const { solids, walls } = blocks(shop, layout);
  const whole = solids.reduce((a, b) => shop.join(a, b));
  const faces = shop.triangles(whole).map((points) => {
    const lies = (half: Half): boolean => points.every((p) => Math.abs(depthIn(half, p)) < NEAR);
    const up = cross(sub(points[1], points[0]), sub(points[2], points[0]))[2] > 0;
    return {
      points,
      on: (up && layout.planes.find(({ above }) => lies(above))) || walls.find(({ half }) => lies(half)) || null,
    };
  });
  return { faces };
}

const area = ([a, b, c]: readonly [Vec, Vec, Vec]): number => size(cross(sub(b, a), sub(c, a))) / 2;

/** The area of every plane, seen from above and along its slope. */
export function planesOf(shop: Shop, layout: Layout): PlaneFigures[] {
  const { faces } = skinOf(shop, layout);
  return layout.planes.map((plane) => {
    const own = faces.filter(({ on }) => on === plane).map(({ points }) => points);
    const flat = own.map((points) => points.map(fromAbove) as unknown as readonly [Vec, Vec, Vec]);
    return {
      plane: plane.name,
      part: partOf(layout, plane),
      plan: flat.reduce((sum, one) => sum + area(one), 0),
      sloped: own.reduce((sum, one) => sum + area(one), 0),
    };
  });
}

const key = (p: Vec): string => p.map((c) => Math.round(c * 1e5)).join(",");

interface Edge {
  readonly a: Vec;
  readonly b: Vec;
  /** The two faces that meet in it, each with its third corner. */
  readonly sides: { readonly on: Plane | Wall | null; readonly third: Vec }[];
}

function edges({ faces }: Skin): Edge[] {
  const found = new Map<string, Edge>();
  for (const { points, on } of faces)
    points.forEach((a, i) => {
      const b = points[(i + 1) % 3]!;
      const name = [key(a), key(b)].sort().join(" ");
      const edge = found.get(name) ?? { a, b, sides: [] };
      edge.sides.push({ on, third: points[(i + 2) % 3]! });
      found.set(name, edge);
    });
  return [...found.values()].filter(({ a, b, sides: [one, two] }) => distance(a, b) > NEAR && one?.on !== two?.on);
}

const isPlane = (on: Plane | Wall | null | undefined): on is Plane => !!on && "above" in on;
const isWall = (on: Plane | Wall | null | undefined): on is Wall => !!on && "half" in on;

/** The edges of the roof by what meets in them. */
export function edgesOf(shop: Shop, layout: Layout): EdgeFigures {
  const skin = skinOf(shop, layout);
  const sums = { ridges: 0, hips: 0, brokenHips: 0, valleys: 0, eaves: 0, rakes: 0, cornerRakes: 0 };
  const corners = { outer: new Set<string>(), inner: new Set<string>() };
  for (const { a, b, sides } of edges(skin)) {
    const [one, two] = sides;
    const length = distance(a, b);
    if (!one || !two) continue;
    if (isPlane(one.on) && isPlane(two.on)) {
      // Over a valley the neighbor's face rises out of a plane, over a ridge or hip it falls below it.
      if (depthIn(one.on.above, two.third) > NEAR) sums.valleys += length;
      else if (Math.abs(a[2] - b[2]) < NEAR) sums.ridges += length;
      else if (isBroken(layout, one.on, two.on)) sums.brokenHips += length;
      else sums.hips += length;
    } else if (isWall(one.on) && isWall(two.on)) {
      const inner = depthIn(one.on.half, two.third) > NEAR;
      if (distance(fromAbove(a), fromAbove(b)) < NEAR) corners[inner ? "inner" : "outer"].add(key(fromAbove(a)));
    } else {
      const [plane, wall] = isPlane(one.on) ? [one.on, two.on] : [two.on, one.on];
      if (!isPlane(plane) || !isWall(wall)) continue;
      if (wall.gable) sums.rakes += length;
      else if (Math.abs(a[2] - b[2]) < NEAR) sums.eaves += length;
      else sums.cornerRakes += length;
    }
  }
  return { ...sums, outerCorners: corners.outer.size, innerCorners: corners.inner.size };
}

/** A main plane and an end that a lower wing is flush with meet in what is left of the hip. */
const isBroken = ({ wings }: Layout, one: Plane, two: Plane): boolean =>
  wings.some(
    (wing) => wing.flush && !wing.level && [one, two].includes(wing.wall) && [one, two].includes(wing[wing.flush]),
  );
