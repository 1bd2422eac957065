import { frameOf, heading } from "../frame.ts";
import { beyond, depthIn } from "../half.ts";
import type { Half } from "../half.ts";
import { member } from "../member.ts";
import type { Member } from "../member.ts";
import { ON } from "../measure.ts";
import type { Hand } from "../measure.ts";
import type { Shop } from "../shop.ts";
import { add, dot, scale, sub, UP } from "../vector.ts";
import type { Vec } from "../vector.ts";
import { sideFace } from "./bearer.ts";
import type { Bearer } from "./bearer.ts";
import type { Bearers } from "./bearers.ts";
import { boardUnder, tailAgainst } from "./laid.ts";
import { isRoof } from "./layout.ts";
import type { Layout, Plane } from "./layout.ts";
import type { Station } from "./stations.ts";

export type Kind =
  | "common"
  | "king common"
  | "jack"
  | "valley jack"
  | "king valley jack"
  | "hip-valley cripple"
  | "valley cripple"
  | "jack to the valley";

/** A side face of a bearer that a rafter stands on or meets. */
export interface Against {
  readonly bearer: Bearer;
  readonly hand: Hand;
  readonly face: Half;
}

/** A rafter in its place. */
export interface Rafter extends Member {
  readonly kind: Kind;
  readonly name: string;
  readonly station: Station;
  readonly hand: Hand | "plain";
  /** The valley that it stands on; null for a plate. */
  readonly foot: Against | null;
  readonly head: Against;
  /** A valley that cuts its tail. */
  readonly tailOn: Against | null;
  /** It stands on the valley and on the plate beside an inner corner. */
  readonly overCorner: boolean;
}

/** A crossing of a rafter's line with a face, level from the plate line. */
interface Event extends Against {
  readonly run: number;
  /** The board lies ahead: a head; else behind: a foot. */
  readonly ahead: boolean;
}

/** Where a rafter's line over a point of the plate line crosses the faces of the bearers in its plane, from below. */
function events(plane: Plane, from: Vec, bearers: readonly Bearer[]): Event[] {
  return bearers
    .filter(({ kind, planes }) => planes.includes(plane) && kind !== "valley board")
    .flatMap((bearer) => (["left", "right"] as const).map((hand) => ({ bearer, hand, face: sideFace(bearer, hand) })))
    .flatMap((against): Event[] => {
      const turn = dot(against.face.normal, plane.inward);
      if (Math.abs(turn) < 1e-9) return [];
      const run = -depthIn(against.face, from) / turn;
      return inReach(against, add(from, scale(plane.inward, run))) ? [{ ...against, run, ahead: turn < 0 }] : [];
    })
    .sort((a, b) => a.run - b.run);
}

/** True where a bearer's face reaches to a point of the plan. */
function inReach({ bearer, hand }: Against, point: Vec): boolean {
  const at = dot(heading(bearer.frame), point);
  const [low, high] = bearer.reach[hand];
  return at >= low - 10 * ON && at <= high + 10 * ON;
}

/** Where the underside of a plane's rafters comes up through the plate's top, level from the plate line: the width of the seat. */
export function seatWidth({ at, inward, pitch }: Plane, { plan }: Layout): number {
  const frame = frameOf(add(at, [0, 0, plan.heel]), add(inward, [0, 0, pitch]));
  const below = add(frame.at, scale(frame.top, -plan.rafter.depth));
  const through = add(below, scale(frame.along, -below[2] / frame.along[2]));
  return dot(inward, sub(through, at));
}

/** Every rafter of a roof. */
export function raftersOf(shop: Shop, layout: Layout, bearers: Bearers, stations: readonly Station[]): Rafter[] {
  return stations.flatMap((station) => rafter(shop, layout, bearers, station));
}

/** The end of the ridge that an end king common butts; the other king commons' faces are in its plane. */
function ridgeEnd(layout: Layout, { ridge, wingRidges }: Bearers, { plane, of, king }: Station): Against | null {
  const wing = layout.wings.find(({ letter, end }) => letter === of && end === plane);
  const main = of === "" && (plane === layout.ends.left || plane === layout.ends.right);
  if (!king || !(wing || main)) return null;
  const bearer = wing ? wingRidges.get(wing)! : ridge;
  const [end] = wing || plane === layout.ends.left ? bearer.feet : bearer.heads;
  return { bearer, hand: "left", face: { normal: scale(end!.normal, -1), offset: -end!.offset } };
}

/** Level from the plate line to where a rafter's top line comes up through a plane. */
function runUp(half: Half, { plane, at }: Station, { plan }: Layout): number {
  const foot = add(at, [0, 0, plan.heel]);
  return -depthIn(half, foot) / dot(half.normal, add(plane.inward, [0, 0, plane.pitch]));
}

const runTo = (half: Half, { inward }: Plane, from: Vec): number => -depthIn(half, from) / dot(half.normal, inward);

function rafter(shop: Shop, layout: Layout, bearers: Bearers, station: Station): Rafter[] {
  const { plane, at } = station;
  const end = ridgeEnd(layout, bearers, station);
  if (end) return [build(shop, layout, bearers, station, null, end, true)!];
  const found: Rafter[] = [];
  const laid = boardUnder(layout, bearers.all, station);
  let foot: Event | null = laid && { ...laid, run: runUp(laid.face, station, layout), ahead: false };
  let open = true;
  for (const event of events(plane, at, bearers.all)) {
    if (!event.ahead) {
      foot = event;
      open = true;
      continue;
    }
    const middle = (Math.max(foot?.run ?? 0, 0) + event.run) / 2;
    if (open && event.run > 0 && isRoof(layout, plane, add(at, scale(plane.inward, middle)))) {
      const made = build(shop, layout, bearers, station, foot, event, false);
      if (made) found.push(made);
    }
    open = false;
  }
  return found;
}

/** Cuts a rafter; null where it is too short to stand, and is blocking instead. */
function build(
  shop: Shop,
  layout: Layout,
  { all }: Bearers,
  station: Station,
  center: Event | null,
  head: Against,
  butts: boolean,
): Rafter | null {
  const { plan } = layout;
  const { plane, at } = station;
  const { inward, overhang } = plane;
  const t = plan.rafter.thickness;
  const lines = [-t / 2, t / 2].map((off) => add(at, scale(plane.plate, off)));
  const heads = lines.map((line) => runTo(head.face, plane, line));

  // A valley under either of its faces, or under its center, cuts the foot or the tail.
  const cuts = [center, ...lines.flatMap((line) => events(plane, line, all))].filter(
    (event): event is Event =>
      event !== null &&
      event.bearer.kind === "valley" &&
      !event.ahead &&
      event.run > -overhang + ON &&
      event.run < Math.max(...heads),
  );
  const onBoard = center?.bearer.kind === "valley board";
  const valley = center ?? cuts.at(-1) ?? null;
  const feet = onBoard
    ? lines.map((line) => runUp(center.face, { ...station, at: line }, layout))
    : valley
      ? lines.map((line) => runTo(valley.face, plane, line))
      : [-Infinity, -Infinity];
  const laidTail = onBoard ? null : tailAgainst(layout, all, station);
  const seat = seatWidth(plane, layout);
  const onValley = Math.max(...feet) > ON;
  const onPlate = !onBoard && Math.min(...feet) < seat - ON;
  const short = Math.min(...heads.map((run, i) => run - (onValley ? feet[i]! : 0)));
  const onRidge = head.bearer.kind === "ridge";
  if (onValley ? short < t - ON : !onRidge && short < seat - ON) return null;

  const what = `${plane.name} at (${at.map((c) => Number(c.toFixed(4))).join(", ")})`;
  if (!butts && lines.some((line, i) => !inReach(head, add(line, scale(inward, heads[i]!)))))
    throw new Error(`${what}: its faces do not both meet the ${head.bearer.name}`);
  const fascia = beyond(inward, add(at, scale(inward, -overhang)));
  const plate = [beyond(scale(UP, -1), at), beyond(inward, at)];
  const ends = [
    ...(valley ? [valley.face] : []),
    ...(Math.min(...feet) < 0 ? [fascia] : []),
    ...(laidTail ? [laidTail.half] : []),
    head.face,
  ];
  const bare = onPlate && (overhang === 0 || laidTail?.on === null);
  const piece = member(
    shop,
    frameOf(add(at, [0, 0, plan.heel]), add(inward, [0, 0, plane.pitch])),
    plan.rafter,
    bare ? { ends: [...ends, beyond(UP, at)] } : { ends, ...(onPlate ? { seat: plate } : {}) },
  );
  const foot = onValley ? valley : null;
  const tailOn = onValley ? null : (laidTail?.on ?? valley);
  const kind = kindOf(station, foot, head);
  return {
    ...piece,
    kind,
    name: `${kind} of ${what}`,
    station,
    hand: (foot ?? (onRidge ? tailOn : head))?.hand ?? "plain",
    foot,
    head,
    tailOn,
    overCorner: onValley && onPlate,
  };
}

function kindOf({ king }: Station, foot: Against | null, { bearer: { kind } }: Against): Kind {
  if (kind === "ridge") return `${king ? "king " : ""}${foot ? "valley jack" : "common"}`;
  if (kind === "valley") return foot ? "valley cripple" : "jack to the valley";
  return foot ? "hip-valley cripple" : "jack";
}
