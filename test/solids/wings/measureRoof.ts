import { heading, seenFrom } from "../frame.ts";
import { beyond, depthIn } from "../half.ts";
import type { Half } from "../half.ts";
import { arris, edgeAngle, extent, lengthsFromPlate, ON, sawCut } from "../measure.ts";
import type { Edge, Hand } from "../measure.ts";
import { member } from "../member.ts";
import type { Member } from "../member.ts";
import type { Shop } from "../shop.ts";
import { add, angle, distance, dot, leftOf, plan as fromAbove, scale, sub, unit, UP } from "../vector.ts";
import type { Vec } from "../vector.ts";
import { lineAt } from "./bearer.ts";
import type { Bearer } from "./bearer.ts";
import type { BearerFigures, Part, RafterFigures, RoofFigures } from "./figures.ts";
import { edgesOf, planesOf } from "./skin.ts";
import { plateLists, ridgeLists } from "./lists.ts";
import type { Layout, Plane } from "./layout.ts";
import type { Against, Rafter } from "./rafters.ts";
import type { WingedRoof } from "./winged.ts";

const HANDS = ["left", "right"] as const;

/** Everything that is measured on a framed roof. */
export function measureRoof(shop: Shop, roof: WingedRoof): RoofFigures {
  return {
    rafters: roof.rafters.map((rafter) => measureRafter(shop, roof, rafter)),
    bearers: roof.bearers.all.map((bearer) => measureBearer(shop, bearer)),
    planes: planesOf(shop, roof.layout),
    edges: edgesOf(shop, roof.layout),
    plates: plateLists(shop, roof),
    ridges: ridgeLists(shop, roof),
  };
}

/** The part of the roof that a plane belongs to; a plane that a wing shares with an end is the end's. */
export function partOf({ front, back, ends, wings }: Layout, plane: Plane): Part {
  if (plane === front || plane === back) return "main";
  if (plane === ends.left || plane === ends.right) return "end";
  const wing = wings.find(({ left, right, end }) => [left, right, end].includes(plane))!;
  return wing.end === plane ? `wing ${wing.letter} end` : `wing ${wing.letter}`;
}

/** Along a board's top, from the plumb line over a point squared across, to a point. */
function along({ frame }: Member, from: Vec, to: Vec): number {
  const ahead = heading(frame);
  return dot(ahead, sub(to, from)) / dot(ahead, frame.along);
}

const middle = (a: Vec, b: Vec): Vec => scale(add(a, b), 0.5);

/** The plumb plane along a bearer's line. */
const lineOf = ({ frame: { along }, from }: Bearer): Half => beyond(unit(leftOf(fromAbove(along))), from);

export function measureRafter(shop: Shop, { layout }: WingedRoof, rafter: Rafter): RafterFigures {
  const { station, foot, head, tailOn, hand, kind, name, overCorner } = rafter;
  const { plane, at } = station;
  const corners = shop.corners(rafter.solid);
  const whole = { left: arris(rafter, corners, "left"), right: arris(rafter, corners, "right") };
  const plateLine = beyond(plane.inward, at);
  const fromPlate = foot ? null : lengthsFromPlate(shop, rafter, plateLine);
  const [left, right] = fromPlate ? [fromPlate.left, fromPlate.right] : [whole.left.length, whole.right.length];
  const tails = HANDS.map((side) => whole[side].length - (side === "left" ? left : right));

  // Where its own line crosses the lines of what it stands on and meets.
  const end = head.bearer.planes.includes(plane)
    ? lineAt(rafter.frame, lineOf(head.bearer))
    : lineAt(rafter.frame, beyond(plane.inward, nearest(head.bearer, plane)));
  const start = foot ? lineAt(rafter.frame, lineOf(foot.bearer)) : lineAt(rafter.frame, plateLine);
  const mark = (on: Against | null, which: keyof Omit<Edge, "length">): number =>
    on?.bearer.kind === "valley board"
      ? distance(startOf(shop, on.bearer), middle(whole.left[which], whole.right[which]))
      : on && on.bearer.kind !== "ridge"
        ? along(on.bearer, cornerOf(on.bearer), middle(whole.left[which], whole.right[which]))
        : 0;
  const onBoard = foot?.bearer.kind === "valley board";
  const seats = HANDS.map((side) => {
    const off = (side === "left" ? 1 : -1) * (rafter.thickness / 2);
    const level = corners.filter(
      (c) => Math.abs(c[2]) < ON && Math.abs(dot(rafter.frame.left, sub(c, rafter.frame.at)) - off) < ON,
    );
    const deep = level.map((c) => dot(plane.inward, sub(c, at)));
    return deep.length ? Math.max(...deep) - Math.min(...deep) : 0;
  });
  return {
    kind,
    name,
    plane: plane.name,
    part: partOf(layout, plane),
    station: dot(plane.plate, sub(at, plane.at)),
    hand,
    long: Math.max(left, right),
    short: Math.min(left, right),
    longFace: Math.abs(left - right) < ON ? "both" : left > right ? "left" : "right",
    line: distance(start, end),
    headTilt: sawCut(rafter, corners, head.face).tilt,
    footTilt: foot ? (onBoard ? leanOf(foot.face, rafter) : sawCut(rafter, corners, foot.face).tilt) : 0,
    headEdge: edgeAngle(rafter, corners),
    footEdge: foot ? angle(sub(whole.left.low, whole.right.low), rafter.frame.left) : 0,
    head: head.bearer.name,
    foot: foot?.bearer.name ?? "",
    headMark: mark(head, "high"),
    footMark: mark(foot, "low"),
    tape: fromPlate?.tape ?? 0,
    tail: foot ? [0, 0] : [Math.max(...tails), Math.min(...tails)],
    tailTilt: tailOn ? sawCut(rafter, corners, tailOn.face).tilt : 0,
    tailMark: tailOn?.bearer.kind === "valley board" ? 0 : mark(tailOn, "low"),
    seat: [Math.max(...seats), Math.min(...seats)],
    board: extent(rafter, corners),
    footHang: foot && !onBoard ? hang(foot, corners) : 0,
    headHang: head.bearer.kind === "ridge" ? 0 : hang(head, corners),
    overCorner,
    slid: Math.abs(station.slid),
  };
}

/** How far a flat cut leans from square across a board. */
const leanOf = ({ normal }: Half, { frame: { left } }: Member): number => Math.abs(90 - angle(normal, left));

/** Its upper edge that lies in the wing's plane, the ends of which are nearest to and farthest from the plate line. */
function outerEdge(shop: Shop, { solid, planes, frame }: Bearer): [Vec, Vec] {
  const on = shop
    .corners(solid)
    .filter((c) => Math.abs(depthIn(planes[1]!.above, c)) < ON)
    .sort((a, b) => dot(frame.along, a) - dot(frame.along, b));
  return [on[0]!, on.at(-1)!];
}

const startOf = (shop: Shop, board: Bearer): Vec => outerEdge(shop, board)[0];

/** A valley board's outer and inner edge on its upper side. */
function measureBoard(shop: Shop, board: Bearer): BearerFigures {
  const corners = shop.corners(board.solid);
  const [low, high] = outerEdge(shop, board);
  const upper = corners.filter((c) => Math.abs(seenFrom(board.frame, c)[2]) < ON);
  const across = (c: Vec): number => Math.abs(dot(board.frame.left, sub(c, low)));
  const wide = Math.max(...upper.map(across));
  const inner = upper.filter((c) => across(c) > wide - ON).map((c) => dot(board.frame.along, c));
  return {
    kind: board.kind,
    role: "",
    name: board.name,
    wing: board.wing!,
    side: board.name.includes("left") ? "left" : "right",
    hand: board.name.includes("left") ? "left" : "right",
    line: distance(board.from, board.to),
    center: 0,
    left: distance(low, high),
    right: Math.max(...inner) - Math.min(...inner),
    headTilts: [],
    footTilts: [],
    tail: 0,
    board: extent(board, corners),
    heel: 0,
    proud: 0,
  };
}

/** How far a cut against a face hangs below the lower edge of its board, plumb. */
function hang({ bearer: { frame, depth }, face }: Against, corners: readonly Vec[]): number {
  const ahead = heading(frame);
  const edge = add(frame.at, scale(frame.top, -depth));
  const below = corners
    .filter((c) => Math.abs(depthIn(face, c)) < ON)
    .map((c) => edge[2] + (dot(ahead, sub(c, edge)) / dot(ahead, frame.along)) * frame.along[2] - c[2]);
  const most = Math.max(0, ...below);
  return most < ON ? 0 : most;
}

/** The end of a ridge line that lies in a plane: its apex. */
const nearest = ({ from, to }: Bearer, { above }: Plane): Vec =>
  Math.abs(depthIn(above, from)) < Math.abs(depthIn(above, to)) ? from : to;

/** Over the corner that a hip's or valley's marks run from; a broken hip's is the corner that is not there. */
function cornerOf(bearer: Bearer): Vec {
  if (bearer.kind !== "broken hip") return bearer.from;
  const [plane] = bearer.planes;
  const heel = -depthIn(plane!.above, plane!.at);
  return lineAt({ ...bearer.frame, at: bearer.from }, beyond(UP, [0, 0, heel]));
}

export function measureBearer(shop: Shop, bearer: Bearer): BearerFigures {
  if (bearer.kind === "valley board") return measureBoard(shop, bearer);
  const corners = shop.corners(bearer.solid);
  const { kind, role, name, wing, from, to, heads, feet } = bearer;
  const start = kind === "broken hip" ? from : cornerOf(bearer);
  const ahead = heading(bearer.frame);
  const tips = HANDS.map((hand) => along(bearer, start, point(ahead, bearer.reach[hand][1])));
  const tilts = (planes: readonly Half[]): number[] =>
    planes
      // A ridge's end on sheathing is no plumb cut.
      .filter(({ normal }) => Math.abs(normal[2]) < ON)
      .filter((half) => corners.filter((c) => Math.abs(depthIn(half, c)) < ON).length > 2)
      .map((half) => sawCut(bearer, corners, half).tilt);
  // The top's center line: the same board between the same upper cuts, opened along it.
  const open = shop.corners(shop.trim(bearer.solid, beyond(bearer.frame.left, bearer.frame.at)));
  const onCenter = open
    .filter((c) => Math.abs(dot(bearer.frame.left, sub(c, bearer.frame.at))) < ON)
    .map((c) => dot(ahead, c));
  const [low, high] = [Math.min(...onCenter), Math.max(...onCenter)];
  const over = member(shop, bearer.frame, bearer, {
    ends: [beyond(ahead, start), { normal: scale(ahead, -1), offset: -dot(ahead, start) - 12 }],
  });
  return {
    kind,
    role: role ?? "",
    name,
    wing: wing ?? "",
    side: kind === "valley" ? (name.includes("left") ? "left" : "right") : "",
    hand: handOf(bearer),
    line: distance(from, to),
    center: along(bearer, start, point(ahead, high)),
    left: tips[0]!,
    right: tips[1]!,
    headTilts: tilts(heads).sort((a, b) => a - b),
    footTilts: tilts(feet).sort((a, b) => a - b),
    tail: kind === "hip" || kind === "valley" ? -along(bearer, start, point(ahead, low)) : 0,
    board: extent(bearer, corners),
    heel: arris(over, shop.corners(over.solid), "left").low[2],
    proud: role === "supporting" ? above(bearer, corners) : 0,
  };
}

function handOf({ kind, name, planes, frame, wing }: Bearer): Hand | "plain" {
  if (kind === "ridge") return "plain";
  if (kind === "valley") return name.includes("left") ? "left" : "right";
  const ends = wing && kind === "hip" ? /end$/ : /^(Left|Right)$/;
  const side = planes.find((plane) => !ends.test(plane.name))!;
  // A plane rises towards its hip: the side that it lies on is against its way in.
  return dot(frame.left, side.inward) < 0 ? "left" : "right";
}

/** How far the higher top corner of a board stands above the first of its planes. */
const above = ({ frame, planes }: Bearer, corners: readonly Vec[]): number =>
  Math.max(...corners.filter((c) => Math.abs(seenFrom(frame, c)[2]) < ON).map((c) => depthIn(planes[0]!.above, c)));

/** A point of the plan that lies so far along a heading. */
const point = (ahead: Vec, at: number): Vec => scale(ahead, at);
