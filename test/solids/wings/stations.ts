import { beyond } from "../half.ts";
import { ON } from "../measure.ts";
import { jackPlaces } from "../settingOut.ts";
import type { RoofPlan } from "../roofPlan.ts";
import type { Shop } from "../shop.ts";
import { add, dot, scale, sub, UP } from "../vector.ts";
import type { Vec } from "../vector.ts";
import { faceTo } from "./bearer.ts";
import type { Bearers } from "./bearers.ts";
import { offPlateLine } from "./laid.ts";
import { meet } from "./layout.ts";
import type { Layout, Plane, Wing } from "./layout.ts";
import type { Side } from "./plan.ts";

/** Where a rafter of a plane stands: a point of its plate line. */
export interface Station {
  readonly plane: Plane;
  readonly at: Vec;
  /** It meets an apex, as a king common does. */
  readonly king: boolean;
  /** The letter of the wing that it is set out from, "" for the main roof. */
  readonly of: string;
  /** How far it was moved sideways to clear the end of a bearer, 0 mostly. */
  readonly slid: number;
}

/** All stations of a roof. */
export function stationsOf(shop: Shop, layout: Layout, bearers: Bearers): Station[] {
  const sides = [layout.front, layout.back].flatMap((plane) =>
    mainPlaces(shop, layout, bearers).map(({ along, king }) => ({
      plane,
      // The main roof's stations are the same on the front and on the back.
      at: add(plane.at, scale(plane.plate, plane === layout.front ? along : layout.plan.length - along)),
      king,
      of: "",
      slid: 0,
    })),
  );
  const ends = (["left", "right"] as const).flatMap((side) => endStations(layout, side));
  const wings = layout.wings.flatMap((wing) => wingStations(shop, layout, bearers, wing));
  return thinned(layout, [...sides, ...ends, ...wings])
    .map((station) => slidClear(layout, bearers, station))
    .map((station) => offPlateLine(layout, station));
}

const kingsAt = ({ plan }: Layout): boolean => plan.hipHead === "king commons";
const jacks = (layout: Layout, king: number): number[] => jackPlaces(layout.plan as unknown as RoofPlan, king);
const steps = (count: number): number[] => Array.from({ length: count }, (_, i) => i + 1);

/** Along the front plate from its left end: king commons, commons between them, jacks outside them. */
function mainPlaces(shop: Shop, layout: Layout, bearers: Bearers): { along: number; king: boolean }[] {
  const { plan, ends, apex, front } = layout;
  const t = plan.rafter.thickness;
  const x = (point: Vec): number => dot(front.plate, sub(point, front.at));
  const [left, right] = [x(apex.left), x(apex.right)];
  const kings = kingsAt(layout);
  /** Where commons may begin behind an end. */
  const clear = (side: Side): number => {
    const way = side === "left" ? 1 : -1;
    const from = side === "left" ? left : right;
    if (!ends[side]) return from + way * t;
    if (kings) return (side === "left" ? left : right) + (way * t) / 2;
    const hips = bearers.all.filter(({ kind, to }) => kind !== "ridge" && kind !== "valley" && to === apex[side]);
    // Never nearer the apex than a thickness, center to center, though thin hips would leave room.
    const reach = hips.flatMap(({ solid }) => shop.corners(solid).map((c) => way * x(c)));
    return way * Math.max(way * from + t / 2, ...reach);
  };
  const [low, high] = [clear("left"), clear("right")];
  const count = Math.ceil(plan.length / plan.spacing);
  // From the left king common; with a gable there, from the right one; with two gables from the left plate line.
  const forward = ends.left !== null || ends.right === null;
  const commons = steps(count)
    .map((k) => (forward ? left + k * plan.spacing : right - k * plan.spacing))
    .filter((at) => at - t / 2 >= low - ON && at + t / 2 <= high + ON);
  const apexes = (["left", "right"] as const).flatMap((side) => {
    const [at, way] = side === "left" ? [left, 1] : [right, -1];
    if (!ends[side]) return [{ along: at + (way * t) / 2, king: false }];
    const outside = jacks(layout, side === "left" ? left : plan.length - right).map((offset) => ({
      along: side === "left" ? offset : plan.length - offset,
      king: false,
    }));
    return kings ? [{ along: at, king: true }, ...outside] : outside;
  });
  return [...commons.map((along) => ({ along, king: false })), ...apexes];
}

/** A hipped end of the main roof: its king common and the jacks to both sides. */
function endStations(layout: Layout, side: Side): Station[] {
  const plane = layout.ends[side];
  if (!plane) return [];
  const middle = layout.plan.span / 2;
  return evenly(layout, plane, plane.at, middle, "");
}

function evenly(layout: Layout, plane: Plane, start: Vec, middle: number, of: string): Station[] {
  const at = (along: number, king = false): Station => ({
    plane,
    at: add(start, scale(plane.plate, along)),
    king,
    of,
    slid: 0,
  });
  return [
    ...(kingsAt(layout) ? [at(middle, true)] : []),
    ...jacks(layout, middle).flatMap((offset) => [at(offset), at(2 * middle - offset)]),
  ];
}

/** A wing's sides from its outer end to its crossing, and its hipped end. */
function wingStations(shop: Shop, layout: Layout, { all }: Bearers, wing: Wing): Station[] {
  const { plan } = layout;
  const t = plan.rafter.thickness;
  const into = wing.wall.inward;
  const depth = (point: Vec): number => dot(into, sub(point, wing.outer.left));
  const [apex, end] = [depth(wing.apex), depth(wing.crossing)];
  const count = Math.ceil((end + plan.spacing) / plan.spacing);
  let places: { along: number; king: boolean }[];
  if (wing.end) {
    const hips = all.filter(({ kind, wing: letter }) => kind === "hip" && letter === wing.letter);
    const clear = kingsAt(layout)
      ? apex + t / 2
      : Math.max(apex + t / 2, ...hips.flatMap(({ solid }) => shop.corners(solid).map(depth)));
    places = [
      ...(kingsAt(layout) ? [{ along: apex, king: true }] : []),
      ...jacks(layout, apex).map((along) => ({ along, king: false })),
      ...steps(count)
        .map((k) => apex + k * plan.spacing)
        .filter((at) => at - t / 2 >= clear - ON)
        .map((along) => ({ along, king: false })),
    ];
  } else {
    places = [
      t / 2,
      ...steps(count)
        .map((k) => k * plan.spacing)
        .filter((at) => at - t / 2 >= t - ON),
    ].map((along) => ({ along, king: false }));
  }
  const sides = (["left", "right"] as const).flatMap((side) =>
    places
      .filter(({ along }) => along <= end + ON)
      .map(({ along, king }) => ({
        plane: wing[side],
        at: add(wing.outer[side], scale(into, along)),
        king,
        of: wing.letter,
        slid: 0,
      })),
  );
  return wing.end ? [...sides, ...evenly(layout, wing.end, wing.outer.left, wing.plan.span / 2, wing.letter)] : sides;
}

/** On a plane that wing and end share, wing stations end at the crossing and the end's begin there, a clear thickness apart; a king common stays. */
function thinned(layout: Layout, all: readonly Station[]): Station[] {
  const apart = 2 * layout.plan.rafter.thickness - ON;
  return all.filter((one) => {
    const wings = layout.wings.filter((wing) => wing.flush && wing[wing.flush] === one.plane);
    const inWing = ({ at }: Station): boolean =>
      wings.some((wing) => dot(wing.wall.inward, sub(at, wing.crossing)) <= ON);
    if (one.king || wings.length === 0) return true;
    if (one.of === "" && inWing(one)) return false;
    const near = all.filter(
      ({ plane, of, at }) =>
        plane === one.plane && of !== one.of && Math.abs(dot(plane.plate, sub(at, one.at))) < apart,
    );
    // Where the two settings crowd each other the wing's stays, but for the end's king common.
    return one.of === "" ? !near.some(inWing) : !near.some(({ king }) => king);
  });
}

/** Where a board ends under a rafter, so that the rafter's two faces would meet two boards: it moves to the nearer clear side. */
function slidClear(layout: Layout, { ridge, wingRidges, all }: Bearers, station: Station): Station {
  const { plane, at } = station;
  const half = layout.plan.rafter.thickness / 2;
  const limits = layout.wings.flatMap((wing): Vec[] => {
    if (wing.wall === plane) {
      const long = all.find(({ role, wing: letter }) => role === "supporting" && letter === wing.letter);
      if (!long) return [];
      const side = long.planes[1]!;
      const face = faceTo(long, side.inward);
      return [meet(face, faceTo(ridge, scale(plane.inward, -1)), beyond(UP, [0, 0, 0]))];
    }
    if (wing.flush && wing[wing.flush] === plane && !wing.level) {
      const [stop] = wingRidges.get(wing)!.heads;
      return [scale(stop!.normal, stop!.offset)];
    }
    return [];
  });
  for (const limit of limits) {
    const past = dot(plane.plate, sub(at, limit));
    if (Math.abs(past) >= half - ON) continue;
    const slid = (past < 0 ? -half : half) - past;
    return { ...station, at: add(at, scale(plane.plate, slid)), slid };
  }
  return station;
}
