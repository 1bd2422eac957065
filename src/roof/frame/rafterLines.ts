import { heightOver } from "../../geometry/plane.ts";
import type { Point } from "../../geometry/point.ts";
import { endReach, type PlumbCut } from "../members/plumbEnd.ts";
import { sideOn, type Bearer, type Hip } from "./bearers.ts";
import { alongBlock, onPlane, planesOf, type Block, type RoofPlane } from "./blocks.ts";
import { crossings, dot, facingsOf, offsetFrom, ON, type Crossing, type Facing } from "./facings.ts";
import { isLaid, laidTail } from "./laidOver.ts";
import type { RoofSpec } from "./roofSpec.ts";
import type { Station } from "./stations.ts";

/** An end of a rafter: the bearer that it meets, or null for a plate or another rafter; level from the plate line on its own line, and how much farther for each unit across to the left. */
export interface RafterEnd extends PlumbCut {
  readonly bearer: Bearer | null;
  /** The face of the bearer that it meets, for someone who looks along that bearer from its foot; null where it meets none. */
  readonly face: "left" | "right" | null;
  /** Level to the bearer's own line. */
  readonly line: number;
}

export type RafterMember =
  "common" | "king common" | "jack" | "valley jack" | "hip-valley cripple" | "valley cripple" | "jack to the valley";

/** One rafter: where it stands on a plane, and what it runs from and to. */
export interface Rafter {
  readonly kind: "rafter";
  readonly member: RafterMember;
  readonly plane: RoofPlane;
  /** Its center, along the plate line from the left end; and the same point in plan. */
  readonly station: number;
  readonly spot: Point;
  /** The block that it is set out from, and how far it was moved sideways to clear the end of a board. */
  readonly of: number;
  readonly slid: number;
  /** From the foot of the hip or valley that its cuts are laid out from, along the plate line to its center: of a jack the hip's corner, of what stands on a valley that valley's. */
  readonly offset: number | null;
  readonly foot: RafterEnd;
  readonly head: RafterEnd;
  /** A valley that cuts the tail of a rafter which stands on the plate beside an inner corner. */
  readonly tailCut: RafterEnd | null;
  /** It stands on the valley and on the plate. */
  readonly over: boolean;
  /** The letter of the laid-over wing through whose mouth it goes, without a tail; else null. */
  readonly mouth: string | null;
}

/** The jacks of one plane at one hip, farthest from its corner first. */
export interface JackRow {
  readonly hip: Hip;
  readonly plane: RoofPlane;
  /** Offset of the king common from the corner (of the apex, where hips meet the ridge). */
  readonly king: number;
  readonly jacks: readonly Jack[];
  /** Positions nearer the corner whose head would land over their own seat: left out. */
  readonly dropped: number;
}

/** A jack: a rafter from the plate to a hip. */
export interface Jack extends Rafter {
  readonly member: "jack";
  readonly offset: number;
}

/** The foot of a rafter that stands on the plate. */
const PLATE: RafterEnd = { bearer: null, face: null, line: 0, at: 0, per: 0 };

/** Whether a rafter stands on a plate, by itself or beside a valley that it stands on too. */
export const isOnPlate = ({ foot, over }: Pick<Rafter, "foot" | "over">): boolean => foot.bearer === null || over;

/** Where a rafter's top edge ends at a level distance across: at the plate line, on its valley, or over the fascia. Level from the plate line. */
export function footReach({ foot, plane }: Pick<Rafter, "foot" | "plane">, across: number): number {
  return foot.bearer === null ? 0 : Math.max(foot.at + foot.per * across, -plane.overhang);
}

/** Where the wood of a rafter begins at a level distance across: at the fascia, or on a valley above it. Level from the plate line. */
export function lowReach(rafter: Rafter, across: number): number {
  const { foot, tailCut, plane, mouth } = rafter;
  if (foot.bearer) return footReach(rafter, across);
  if (mouth) return 0;
  return tailCut ? Math.max(tailCut.at + tailCut.per * across, -plane.overhang) : -plane.overhang;
}

/** Level runs of a rafter from its foot to its head on its longer and its shorter face: one formula for all of them. */
export function headRuns(rafter: Rafter, thickness: number): { readonly long: number; readonly short: number } {
  const [one, other] = [thickness / 2, -thickness / 2].map(
    (across) => endReach([rafter.head], across) - footReach(rafter, across),
  ) as [number, number];
  return { long: Math.max(one, other), short: Math.min(one, other) };
}

/**
 * The hand of a rafter: the side of the bearer that it is on, looking up that bearer from its foot; plain where it has none.
 *
 * Pieces on a valley take it from the valley, others from what their head meets; a common beside an inner corner from the valley that cuts its tail.
 */
export function handOf({ foot, head, tailCut }: Rafter): "left" | "right" | "plain" {
  if (foot.bearer) return foot.face ?? "plain";
  return (head.bearer === null || head.bearer.kind === "ridge" ? tailCut?.face : head.face) ?? "plain";
}

/** What the rafters of a roof follow from. */
export interface RafterGround {
  readonly blocks: readonly Block[];
  readonly bearers: readonly Bearer[];
  readonly spec: RoofSpec;
}

/** Every rafter of some stations; what is too short to stand is left out. */
export function rafterLines(stations: readonly Station[], { blocks, bearers, spec }: RafterGround): readonly Rafter[] {
  const planes = new Map<RoofPlane, PlaneFacings>();
  const rafters: Rafter[] = [];
  // A laid-over wing hides what is framed whole under it.
  const whole = blocks.filter((block) => !isLaid(block));
  for (const station of stations) {
    const { plane, at, king } = station;
    const over = isLaid(blocks[plane.block]!) ? blocks : whole;
    const square = (member: "common" | "king common", bearer: Bearer | null, short: number): Rafter =>
      rafterOf(station, member, PLATE, { bearer, face: null, line: plane.run, at: plane.run - short, per: 0 });
    const ridge = bearers.find((one) => one.kind === "ridge" && one.block === station.of) ?? null;
    // An end king common butts the ridge's end, or the side of a king common; without a ridge the side ones meet.
    if (king && plane.end && plane.block === station.of) {
      rafters.push(square("king common", ridge, spec.rafter.thickness / 2));
      continue;
    }
    if (king && ridge === null) {
      rafters.push(square("king common", null, 0));
      continue;
    }
    const facings = planes.get(plane) ?? planeFacings(plane, bearers);
    planes.set(plane, facings);
    let foot: Crossing | null = null;
    let open = true;
    for (const crossing of crossings(facings.all, at)) {
      if (!crossing.facing.ahead) {
        foot = crossing;
        open = true;
        continue;
      }
      const middle = (Math.max(foot?.up ?? 0, 0) + crossing.up) / 2;
      if (open && crossing.up > 0 && isRoof(over, plane, onPlane(plane, at, middle))) {
        const made = built(station, facings, foot, crossing.facing, spec, bearers);
        if (made) rafters.push(made);
      }
      open = false;
    }
  }
  return rafters;
}

/** The faces on a plane, and those of valleys that a foot may stand on. */
interface PlaneFacings {
  readonly all: readonly Facing[];
  readonly feet: readonly Facing[];
}

function planeFacings(plane: RoofPlane, bearers: readonly Bearer[]): PlaneFacings {
  const all = facingsOf(plane, bearers);
  return { all, feet: all.filter(({ bearer, ahead }) => bearer.kind === "valley" && !ahead) };
}

/** Whether a plane is the finished roof over a point of the plan: the highest block's lowest plane. */
function isRoof(blocks: readonly Block[], plane: RoofPlane, point: Point): boolean {
  let top = -Infinity;
  for (const block of blocks) {
    const { ends, wing, length } = block;
    const depth = alongBlock(block, point);
    // A wing's roof runs from its outer end in to its host's ridge line.
    if (wing && (depth > length || (ends[0] === null && depth < 0))) continue;
    top = Math.max(top, Math.min(...planesOf(block).map((one) => heightOver(one, point))));
  }
  return Math.abs(top - heightOver(plane, point)) < ON;
}

function built(
  station: Station,
  { feet: valleys }: PlaneFacings,
  center: Crossing | null,
  head: Facing,
  { rafter: { thickness } }: RoofSpec,
  bearers: readonly Bearer[],
): Rafter | null {
  const { plane, at, king } = station;
  const half = thickness / 2;
  const both = [half, -half] as const;
  const end = (facing: Facing): RafterEnd => endAt(station, facing);
  const reach = ({ at: from, per }: PlumbCut) => both.map((across) => from + per * across) as [number, number];
  const headEnd = end(head);
  const heads = reach(headEnd);
  // A valley under its center, or under either of its faces, cuts the foot or the tail.
  const cut =
    center?.facing ??
    both
      .map((across) => across * -1)
      .flatMap((across) => crossings(valleys, at + across))
      .filter(({ up }) => up > -plane.overhang + ON && up < Math.max(...heads))
      .at(-1)?.facing;
  const board = cut?.bearer.kind === "valley board";
  const valley = board || cut?.bearer.kind === "valley" ? end(cut!) : null;
  const feet = valley ? reach(valley) : ([-Infinity, -Infinity] as [number, number]);
  const onValley = Math.max(...feet) > ON;
  const onPlate = !board && Math.min(...feet) < plane.seat - ON;
  const short = Math.min(...heads.map((run, i) => run - (onValley ? feet[i]! : 0)));
  const onRidge = head.bearer.kind === "ridge";
  if (
    onValley
      ? short < thickness - ON
      : !onRidge && (short < plane.seat - 1e-9 || thickness > (station.offset ?? Infinity))
  )
    return null;
  const foot = onValley ? valley! : PLATE;
  const member = memberOf(king, onValley, head.bearer.kind);
  if (onValley) return rafterOf(station, member, foot, headEnd, { over: onPlate });
  const laid = laidTail(station, bearers, thickness);
  if (laid && "mouth" in laid) return rafterOf(station, member, foot, headEnd, { mouth: laid.mouth });
  const tailCut = laid ? { ...laid.cut, bearer: laid.bearer, face: laid.face, line: laid.cut.at } : valley;
  return rafterOf(station, member, foot, headEnd, { tailCut });
}

/** Where a rafter ends on a face. From the bearer's own corner and plan angle, so that pieces alike are alike to the last bit. */
function endAt(station: Station, { bearer, face, ahead, at, per, off }: Facing): RafterEnd {
  const { plane } = station;
  if (bearer.kind === "ridge") {
    // Half the span, where it is that but for the last bits of a double.
    const line = Math.abs(at + off - plane.run) < ON ? plane.run : at + off;
    return { bearer, face, line, at: line - off, per: 0 };
  }
  const { tan, cos } = sideOn(bearer, plane)!;
  const line = offsetOf(station, bearer) * tan;
  return { bearer, face, line, at: ahead ? line - off / cos : line + off / cos, per: per < 0 ? tan : -tan };
}

function memberOf(king: boolean, onValley: boolean, head: Bearer["kind"]): RafterMember {
  if (head === "ridge") return onValley ? "valley jack" : king ? "king common" : "common";
  if (head === "valley") return onValley ? "valley cripple" : "jack to the valley";
  return onValley ? "hip-valley cripple" : "jack";
}

function rafterOf(
  station: Station,
  member: RafterMember,
  foot: RafterEnd,
  head: RafterEnd,
  { tailCut = null, over = false, mouth = null }: Partial<Pick<Rafter, "tailCut" | "over" | "mouth">> = {},
): Rafter {
  const { plane, at, of, slid } = station;
  // The corner that offsets run from: the valley's under its foot, else that of the hip or valley that it meets.
  const corner = foot.bearer ?? (head.bearer?.kind === "ridge" ? null : head.bearer);
  return {
    kind: "rafter",
    member,
    plane,
    station: at,
    spot: corner?.kind === "hip" ? beside(corner, plane, offsetOf(station, corner)) : onPlane(plane, at, 0),
    of,
    slid,
    // No -0, over an inner corner.
    offset: corner && offsetOf(station, corner) + 0,
    foot,
    head,
    tailCut,
    over,
    mouth,
  };
}

/** A station's distance from the foot of a hip or valley; that of its own corner is known. */
function offsetOf({ plane, at, offset, slid }: Station, bearer: Bearer): number {
  return bearer.kind === "hip" && offset !== null && slid === 0 ? offset : offsetFrom(bearer, plane, at);
}

/** The place at a distance along a plane's plate line from a hip's corner. */
function beside({ foot, heading }: Bearer, { right }: RoofPlane, offset: number): Point {
  const way = dot(heading, right) < 0 ? -offset : offset;
  return { x: foot.x + way * right.x, y: foot.y + way * right.y };
}
