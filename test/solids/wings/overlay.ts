import { frameOf } from "../frame.ts";
import { beyond, depthIn } from "../half.ts";
import type { Half } from "../half.ts";
import { arris, extent, ON } from "../measure.ts";
import { member } from "../member.ts";
import type { Shop } from "../shop.ts";
import { add, angle, distance, dot, scale, size, sub, unit } from "../vector.ts";
import type { Vec } from "../vector.ts";
import { faceTo, lineAt, meetingLine } from "./bearer.ts";
import type { Placed } from "./bearer.ts";
import { heightOf, meet } from "./layout.ts";
import type { Layout, Plane, Wing } from "./layout.ts";

/** What lies between the main rafters and an overlay: sheathing and, flat on it, the valley boards; thicknesses square to the slope. */
export interface Between {
  readonly sheathing: number;
  readonly board: number;
}

/** A jack of an overlay: from its seat on the valley board to the wing's ridge. */
export interface OverlayJack {
  /** Along the top edge on both faces, from the feather edge of the toe to the ridge. */
  readonly long: number;
  readonly short: number;
  /** The longer face is the one nearer the main eave. */
  readonly longNearEave: boolean;
  /** The seat along a side face, where the board's end is whole. */
  readonly seat: number;
  /** The seat's angle with the top edge on the side face, and its tilt from square across the board, degrees. */
  readonly seatCut: number;
  readonly seatTilt: number;
  readonly board: number;
}

/** A plane so far out from a roof plane, square to it. */
const raised = (half: Half, by: number): Half => ({ ...half, offset: half.offset + by * size(half.normal) });

/** The wing's ridge board of an overlay: its top flush with the wing's rafters at its faces. */
function ridgeOf({ plan }: Layout, wing: Wing): Placed {
  const section = wing.plan.ridge ?? plan.ridge;
  const [x, y] = wing.crossing;
  const top = heightOf(wing.left, add([x, y, 0], scale(wing.left.inward, -section.thickness / 2)));
  return { frame: frameOf([x, y, top], wing.wall.inward), thickness: section.thickness };
}

/** The jack of a wing's left plane that stands over a point so far up the main plane, level from the plate line. */
export function overlayJack(shop: Shop, layout: Layout, wing: Wing, up: number, between: Between): OverlayJack {
  const { plan } = layout;
  const plane = wing.left;
  const seatPlane = raised(wing.wall.above, between.sheathing + between.board);
  const at = add(wing.inner.left!, scale(wing.wall.inward, up));
  const frame = frameOf(add(at, [0, 0, plan.heel]), add(plane.inward, [0, 0, plane.pitch]));
  const head = faceTo(ridgeOf(layout, wing), scale(plane.inward, -1));
  const piece = member(shop, frame, plan.rafter, { ends: [seatPlane, head] });
  const corners = shop.corners(piece.solid);
  const [left, right] = [arris(piece, corners, "left"), arris(piece, corners, "right")];
  // The left face of a left plane's rafter, looking up it, is the one farther in: its station grows that way.
  const leftIsFartherIn = dot(frame.left, wing.wall.inward) > 0;
  const near = leftIsFartherIn ? right : left;
  const far = leftIsFartherIn ? left : right;
  // The corners of the seat on the face nearer the eave.
  const onSeat = corners.filter(
    (c) => Math.abs(depthIn(seatPlane, c)) < ON && Math.abs(dot(frame.left, sub(c, near.low))) < ON,
  );
  const lengths = onSeat.map((c) => distance(c, near.low));
  const heel = onSeat[lengths.indexOf(Math.max(...lengths))]!;
  return {
    long: Math.max(left.length, right.length),
    short: Math.min(left.length, right.length),
    longNearEave: near.length > far.length,
    seat: Math.max(...lengths),
    seatCut: angle(sub(heel, near.low), frame.along),
    seatTilt: tiltOf(seatPlane, frame.left),
    board: extent(piece, corners),
  };
}

/** How far a cut leans from square across a board: the angle between its plane's normal and the board's side faces. */
const tiltOf = ({ normal }: Half, left: Vec): number => Math.abs(90 - angle(normal, left));

/** How far the square edge of a valley board lies from the valley line on the sheathing, on the slope and square to that line. */
export function setBack(wing: Wing, plane: Plane, between: Between): number {
  const line = (up: number): { at: Vec; along: Vec } => {
    const under = { ...wing.wall, above: raised(wing.wall.above, up) };
    const along = meetingLine(under, plane, [0, 0, 0]).along;
    return { at: meet(under.above, plane.above, beyond(wing.wall.inward, wing.wall.at)), along };
  };
  const [low, high] = [line(between.sheathing), line(between.sheathing + between.board)];
  // The upper edge of the board, brought down square to the main plane onto the sheathing.
  const out = unit(wing.wall.above.normal);
  const down = add(high.at, scale(out, -between.board));
  const from = sub(down, low.at);
  return size(sub(from, scale(low.along, dot(from, low.along))));
}

/** How far in from the main plate line the top of the wing's ridge runs, where its end is cut to lie on the sheathing. */
export function overlayRidgeEnd(layout: Layout, wing: Wing, { sheathing }: Between): number {
  const { frame } = ridgeOf(layout, wing);
  return dot(wing.wall.inward, sub(lineAt(frame, raised(wing.wall.above, sheathing)), wing.wall.at));
}
