import { frameOf, type Frame } from "../frame.ts";
import { beyond, depthIn } from "../half.ts";
import type { Half } from "../half.ts";
import { ON } from "../measure.ts";
import type { Shop } from "../shop.ts";
import { add, cross, dot, leftOf, plan as fromAbove, scale, size, sub, unit } from "../vector.ts";
import type { Vec } from "../vector.ts";
import { faceTo, lineAt, meetingLine } from "./bearer.ts";
import type { Bearer, Placed } from "./bearer.ts";
import type { Layout, Wing } from "./layout.ts";
import type { Side, WingedPlan } from "./plan.ts";
import type { Against } from "./rafters.ts";
import type { Station } from "./stations.ts";

/** Inches of sheathing under a wing that is laid over, where a plan does not say. */
const SHEATHING = 0.5;

/** A plane so far out from a roof plane, square to it. */
export const raised = (half: Half, by: number): Half => ({ ...half, offset: half.offset + by * size(half.normal) });

/** The upper side of the main roof's sheathing under a wing. */
export const sheathingUnder = ({ wall, plan }: Wing): Half => raised(wall.above, plan.sheathing ?? SHEATHING);

/** The upper side of a wing's valley boards. */
export const seatPlane = (wing: Wing, { valley }: WingedPlan): Half =>
  raised(wing.wall.above, (wing.plan.sheathing ?? SHEATHING) + valley.thickness);

/** A valley board in its place: flat on the sheathing, its outer upper edge in the wing's plane, from the plate line to the side of the wing's ridge. */
export function valleyBoard(shop: Shop, layout: Layout, wing: Wing, side: Side, ridge: Placed): Bearer {
  const { valley } = layout.plan;
  const { wall } = wing;
  const plane = wing[side];
  const top = seatPlane(wing, layout.plan);
  const up = unit(wall.above.normal);
  // Its outer edge runs where its upper side and the wing's plane meet; it starts plumb over the plate line.
  const along = unit(cross(top.normal, plane.above.normal));
  const rising = along[2] < 0 ? scale(along, -1) : along;
  const lines = [top, plane.above, beyond(wall.inward, wall.at)] as const;
  const start = meetThree(...lines);
  const left = cross(up, rising);
  const inside = dot(left, plane.inward) > 0 ? left : scale(left, -1);
  const frame: Frame = { at: add(start, scale(inside, valley.depth / 2)), along: rising, left, top: up };
  const face = faceTo(ridge, scale(plane.inward, -1));
  const slope = unit(add(wall.inward, [0, 0, wall.pitch]));
  const length = size(sub(lineAt({ ...frame, at: start }, face), start));
  const blank = shop.board(frame, valley.depth, valley.thickness, -4 * valley.depth, length + 4 * valley.depth);
  const solid = shop.trim(blank, beyond(slope, start), face);
  const corner = wing.inner[side]!;
  return {
    frame,
    solid,
    thickness: valley.depth,
    depth: valley.thickness,
    kind: "valley board",
    name: `valley board ${side} of wing ${wing.letter}`,
    wing: wing.letter,
    planes: [wall, plane],
    from: add(corner, [0, 0, layout.plan.heel]),
    to: wing.crossing,
    heads: [face],
    feet: [],
    reach: { left: [0, 0], right: [0, 0] },
  };
}

function meetThree(a: Half, b: Half, c: Half): Vec {
  const sum = add(
    add(scale(cross(b.normal, c.normal), a.offset), scale(cross(c.normal, a.normal), b.offset)),
    scale(cross(a.normal, b.normal), c.offset),
  );
  return scale(sum, 1 / dot(a.normal, cross(b.normal, c.normal)));
}

/** The wing that is laid over beside a station: whose plane it stands in, or into whose wall's plane it runs. */
const laidBeside = ({ wings }: Layout, { plane }: Station): Wing[] =>
  wings.filter(({ plan, wall, left, right }) => plan.framing === "laid over" && [wall, left, right].includes(plane));

/** The board that a wing's rafter stands on over the main roof, and its upper side; null for one on the wing's plate. */
export function boardUnder(layout: Layout, bearers: readonly Bearer[], station: Station): Against | null {
  const { plane, at } = station;
  const wing = laidBeside(layout, station).find(({ wall }) => wall !== plane);
  if (!wing || dot(wing.wall.inward, sub(at, wing.wall.at)) < ON) return null;
  const bearer = bearers.find((one) => one.kind === "valley board" && one.planes.includes(plane))!;
  // Named for someone who looks up the valley: the wing lies on that side of it.
  const line = meetingLine(wing.wall, plane, bearer.from);
  const hand = dot(line.left, plane.inward) > 0 ? "left" : "right";
  return { bearer, hand, face: seatPlane(wing, layout.plan) };
}

/** Where the tail of a rafter on a plate ends that a laid-over wing meets: over the plate line in its mouth, else on the valley's line. */
export function tailAgainst(layout: Layout, bearers: readonly Bearer[], station: Station): TailCut | null {
  const { plane, at } = station;
  const half = layout.plan.rafter.thickness / 2;
  const found = laidBeside(layout, station).flatMap((wing): TailCut[] => {
    if (plane === wing.wall) {
      const place = dot(plane.plate, sub(at, plane.at));
      const stops = [wing.outer.left, wing.outer.right].map((point) => dot(plane.plate, sub(point, plane.at)));
      const [from, to] = [Math.min(...stops), Math.max(...stops)];
      if (place > from - half + ON && place < to + half - ON) return [{ half: beyond(plane.inward, at), on: null }];
    }
    return (["left", "right"] as const).flatMap((side): TailCut[] => {
      if (plane !== wing.wall && plane !== wing[side]) return [];
      const corner = wing.inner[side]!;
      const line = meetingLine(wing.wall, wing[side], add(corner, [0, 0, layout.plan.heel]));
      const out = leftOf(fromAbove(line.along));
      const way = dot(out, sub(at, corner)) > 0 ? out : scale(out, -1);
      const cut = beyond(way, corner);
      // It reaches out as far as the nearer fascia, seen along the line.
      const ends = [wing.wall, wing[side]].map(({ inward, overhang }) =>
        lineAt(
          { ...line, at: corner, along: unit(fromAbove(line.along)) },
          beyond(inward, add(corner, scale(inward, -overhang))),
        ),
      );
      const ahead = unit(fromAbove(line.along));
      const least = Math.max(...ends.map((end) => dot(ahead, sub(end, corner))));
      const faces = [-half, half].map((off) => add(at, scale(plane.plate, off)));
      const hits = faces.filter((point) => {
        const run = -depthIn(cut, point) / dot(cut.normal, plane.inward);
        const on = add(point, scale(plane.inward, run));
        return run > -plane.overhang + ON && run < ON && dot(ahead, sub(on, corner)) > least + ON;
      });
      const board = bearers.find((one) => one.kind === "valley board" && one.planes.includes(wing[side]))!;
      const hand = dot(frameOf(corner, line.along).left, way) > 0 ? "left" : "right";
      return hits.length > 0 ? [{ half: cut, on: { bearer: board, hand, face: cut } }] : [];
    });
  });
  return found[0] ?? null;
}

/** A plane that ends a tail; `on` where it is the valley's line. */
export interface TailCut {
  readonly half: Half;
  readonly on: Against | null;
}

/** A station of a laid-over wing that straddles the main plate line, moved onto the wing's plate, or onto the board where that is nearer. */
export function offPlateLine(layout: Layout, station: Station): Station {
  const { plane, at, king, of } = station;
  const wing = layout.wings.find(({ letter, plan }) => letter === of && plan.framing === "laid over");
  if (!wing || king || plane === wing.end) return station;
  const half = layout.plan.rafter.thickness / 2;
  const past = dot(wing.wall.inward, sub(at, wing.wall.at));
  if (Math.abs(past) >= half - ON) return station;
  const slid = (past > ON ? half : -half) - past;
  return { ...station, at: add(at, scale(wing.wall.inward, slid)), slid };
}
