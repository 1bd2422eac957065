import { heightOver } from "../../geometry/plane.ts";
import type { Point } from "../../geometry/point.ts";
import type { PlumbCut } from "../members/plumbEnd.ts";
import { sideOn, type Bearer, type Hip, type ValleyBoard } from "./bearers.ts";
import { alongBlock, onPlane, planesOf, type Block, type RoofPlane } from "./blocks.ts";
import { crossings, dot, facingsOf, offsetFrom, ON, type Crossing, type Facing } from "./facings.ts";
import { isLaid, laidTail, valleyBoardsIn } from "./laidOver.ts";
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
  const half = thickness / 2;
  const { left, right } = faceReach(rafter.head, half);
  const one = left - footReach(rafter, half);
  const other = right - footReach(rafter, -half);
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
  const tops = blocks.map((block) => ({ block, planes: planesOf(block) }));
  // A laid-over wing hides what is framed whole under it.
  const whole = tops.filter(({ block }) => !isLaid(block));
  const ridges = blocks.map(({ index }) => bearers.find((one) => one.kind === "ridge" && one.block === index) ?? null);
  const { thickness } = spec.rafter;
  const planes = new Map<RoofPlane, PlaneFacings>();
  const rafters: Rafter[] = [];
  for (const station of stations) {
    const { plane, at, king, of } = station;
    const ridge = ridges[of]!;
    // An end king common butts the ridge's end, or the side of a king common; without a ridge the side ones meet.
    const onEnd = plane.end && plane.block === of;
    if (king && (onEnd || ridge === null)) {
      const head = { bearer: ridge, face: null, line: plane.run, at: plane.run - (onEnd ? thickness / 2 : 0), per: 0 };
      rafters.push(rafterOf(station, "king common", PLATE, head, NO_TAIL_CUT));
      continue;
    }
    let facings = planes.get(plane);
    if (!facings) planes.set(plane, (facings = planeFacings(plane, bearers)));
    let foot: Crossing | null = null;
    let open = true;
    for (const crossing of crossings(facings.all, at)) {
      if (!crossing.facing.ahead) {
        foot = crossing;
        open = true;
        continue;
      }
      if (open && crossing.up > 0) {
        const middle = (Math.max(foot?.up ?? 0, 0) + crossing.up) / 2;
        if (isRoof(isLaid(blocks[plane.block]!) ? tops : whole, plane, onPlane(plane, at, middle))) {
          const made = built(station, facings, foot?.facing ?? null, crossing.facing, thickness);
          if (made) rafters.push(made);
        }
      }
      open = false;
    }
  }
  return rafters;
}

/** The faces on a plane, those of valleys that a foot may stand on, and the valley boards that end a tail. */
interface PlaneFacings {
  readonly all: readonly Facing[];
  readonly feet: readonly Facing[];
  readonly boards: readonly ValleyBoard[];
}

function planeFacings(plane: RoofPlane, bearers: readonly Bearer[]): PlaneFacings {
  const all = facingsOf(plane, bearers);
  return {
    all,
    feet: all.filter(({ bearer, ahead }) => bearer.kind === "valley" && !ahead),
    boards: valleyBoardsIn({ bearers }).filter((one) => sideOn(one, plane)),
  };
}

/** Whether a plane is the finished roof over a point of the plan: the highest block's lowest plane. */
function isRoof(
  tops: readonly { readonly block: Block; readonly planes: readonly RoofPlane[] }[],
  plane: RoofPlane,
  point: Point,
): boolean {
  let top = -Infinity;
  for (const { block, planes } of tops) {
    const depth = alongBlock(block, point);
    // A wing's roof runs from its outer end in to its host's ridge line.
    if (block.wing && (depth > block.length || (block.ends[0] === null && depth < 0))) continue;
    let lowest = Infinity;
    for (const one of planes) lowest = Math.min(lowest, heightOver(one, point));
    top = Math.max(top, lowest);
  }
  return Math.abs(top - heightOver(plane, point)) < ON;
}

/** The rafter between two faces, or from the plate; null where it is too short to stand. */
function built(
  station: Station,
  { feet, boards }: PlaneFacings,
  behind: Facing | null,
  ahead: Facing,
  thickness: number,
): Rafter | null {
  const { plane, king } = station;
  const half = thickness / 2;
  const head = endAt(station, ahead);
  const heads = faceReach(head, half);
  // A valley under its center, or under either of its faces, cuts the foot or the tail.
  const cut = behind ?? valleyUnder(station, feet, half, heads.most);
  const board = cut?.bearer.kind === "valley board";
  const valley = board || cut?.bearer.kind === "valley" ? endAt(station, cut!) : null;
  const low = valley && faceReach(valley, half);
  const onValley = low !== null && low.most > ON;
  const short = onValley ? Math.min(heads.left - low.left, heads.right - low.right) : heads.least;
  const onRidge = ahead.bearer.kind === "ridge";
  if (
    onValley
      ? short < thickness - ON
      : !onRidge && (short < plane.seat - 1e-9 || thickness > (station.offset ?? Infinity))
  )
    return null;
  const member = memberOf(king, onValley, ahead.bearer.kind);
  if (onValley) {
    const over = !board && low.least < plane.seat - ON;
    return rafterOf(station, member, valley!, head, { ...NO_TAIL_CUT, over });
  }
  const laid = laidTail(station, boards, thickness);
  if (laid && "mouth" in laid) return rafterOf(station, member, PLATE, head, { ...NO_TAIL_CUT, mouth: laid.mouth });
  const tailCut = laid ? { bearer: laid.bearer, face: laid.face, line: laid.cut.at, ...laid.cut } : valley;
  return rafterOf(station, member, PLATE, head, tailCut ? { ...NO_TAIL_CUT, tailCut } : NO_TAIL_CUT);
}

/** Where the two faces of a rafter end on a plumb plane. */
function faceReach({ at, per }: PlumbCut, half: number) {
  const [left, right] = [at + per * half, at - per * half];
  return { left, right, least: Math.min(left, right), most: Math.max(left, right) };
}

/** The valley that either face of a rafter crosses between the fascia and its head, the highest on its right face first. */
function valleyUnder({ plane, at }: Station, feet: readonly Facing[], half: number, most: number): Facing | null {
  for (const across of [half, -half])
    for (const { facing, up } of crossings(feet, at + across).reverse())
      if (up > -plane.overhang + ON && up < most) return facing;
  return null;
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

/** What ends a rafter's tail before the fascia does. */
type Tail = Pick<Rafter, "tailCut" | "over" | "mouth">;
const NO_TAIL_CUT: Tail = { tailCut: null, over: false, mouth: null };

function rafterOf(station: Station, member: RafterMember, foot: RafterEnd, head: RafterEnd, tail: Tail): Rafter {
  const { plane, at, of, slid } = station;
  // The corner that offsets run from: the valley's under its foot, else that of the hip or valley that it meets.
  const corner = foot.bearer ?? (head.bearer?.kind === "ridge" ? null : head.bearer);
  const offset = corner && offsetOf(station, corner);
  return {
    kind: "rafter",
    member,
    plane,
    station: at,
    spot: corner?.kind === "hip" ? beside(corner, plane, offset!) : onPlane(plane, at, 0),
    of,
    slid,
    // No -0, over an inner corner.
    offset: offset === null ? null : offset + 0,
    foot,
    head,
    tailCut: tail.tailCut,
    over: tail.over,
    mouth: tail.mouth,
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
