import type { Point } from "../../geometry/point.ts";
import type { Degrees } from "../../measure/degrees.ts";
import { plumbDepthOf } from "../members/commonRafter.ts";
import type { Corner, CornerSide } from "../members/corner.ts";
import type { HipMember, HipSide } from "../members/hipMember.ts";
import { plumbEnd, endReach, tiltOf, type PlumbCut } from "../members/plumbEnd.ts";
import { inBlock, type Block, type RoofPlane, type Side } from "./blocks.ts";
import type { RoofSpec, Section } from "./roofSpec.ts";
import type { RoofEdge, Surface } from "./surface.ts";

/** One side of a bearer: the plane that meets it there, the plan angle between the two, and where its face stands. */
export interface BearerSide extends CornerSide, HipSide {
  readonly plane: RoofPlane;
}

/**
 * A board on an edge of the roof, which rafters bear on: a hip, a valley or a ridge.
 *
 * Its near side is the plane along its block's ridge (of a ridge: the one to its right; of a valley: the main plane), its far side the other. In its own
 * plan x runs level along it from its foot, and y across it, to the far side.
 */
export interface Bearer extends Corner {
  readonly kind: "ridge" | "hip" | "valley" | "valley board";
  readonly block: number;
  /** The letter of the wing that it is made by; "" where it is the main roof's own. */
  readonly wing: string;
  /** null where there is no board: the rafters of both sides meet. */
  readonly section: Section | null;
  readonly near: BearerSide;
  readonly far: BearerSide;
  /** Which hand its near side is on, looking along it from its foot. */
  readonly hand: "left" | "right";
  /**
   * Where it starts: a hip at the corner of the plates, a valley at the inner corner, a ridge at the apex or gable that it is set out from. Then its level
   * direction. A broken hip's is the corner that is not there.
   */
  readonly foot: Point;
  readonly heading: Point;
  /** Level, from its foot to where its line begins: 0 but on a broken hip. */
  readonly start: number;
  /** Level, from its foot to the end of its line; of a ridge the last apex, the gable's plate line or the crossing. */
  readonly run: number;
  /** Its top edge on its own line, over the foot. */
  readonly height: number;
  /** Its ends: how far out of its foot, and how far along from it. */
  readonly tail: readonly PlumbCut[];
  readonly head: readonly PlumbCut[];
  /** Level, how far the lower edge of its head stops short of its top: 0 where that cut is plumb. */
  readonly headLean: number;
  /** Its tail is cut to an inner corner of two fascias: it ends at the farther of its two cuts. */
  readonly notched: boolean;
}

/** What hips and valleys have, and ridges have not. */
interface Sloping extends Bearer {
  readonly section: Section;
  /** Level to its head on the center line of its top. */
  readonly headRun: number;
  /** Along the slope, from its foot's plumb line to the farthest point of its head within its own thickness. */
  readonly farthest: number;
  readonly tilts: readonly Degrees[];
  /** Level seat of its foot. */
  readonly seat: number;
  /** Level along it, from the corner's plumb line to the farthest point of its tail within its own thickness. */
  readonly overhang: number;
}

/** A hip as a bearer, with what its own formulas say. */
export interface Hip extends Sloping, Pick<HipMember, "drop" | "backing"> {
  readonly kind: "hip";
}

/** What a valley runs to: the main ridge past the crossing, the side of the valley that does, the corner of two level ridges, or ridge and broken hip. */
export type ValleyRole = "supporting" | "shortened" | "level" | "flush";

/** A valley as a bearer. */
export interface Valley extends Sloping {
  readonly kind: "valley";
  readonly role: ValleyRole;
  /** On which side of its wing it stands, seen from outside. */
  readonly side: Side;
}

/**
 * A board that lies flat on the main roof's sheathing, along the line in which a wing that is laid over meets it. Its outer upper edge lies in the wing's plane: jacks start
 * there. It starts over the plate line and ends at the side of the wing's ridge.
 */
export interface ValleyBoard extends Bearer {
  readonly kind: "valley board";
  readonly section: Section;
  readonly side: Side;
  /** Plumb, how far its top lies above the main rafters'. */
  readonly above: number;
  /** Thickness of the sheathing under it. */
  readonly sheathing: number;
  /** Level along its line, how long its outer edge is. */
  readonly headRun: number;
  /** Along the slope, its outer and its inner edge; the inner one is 0 where its two ends meet before that. */
  readonly outer: number;
  readonly inner: number;
  /** Across its flat face from square: its lower end, along the plate line, and its upper one, along the wing's ridge. */
  readonly lowerCut: Degrees;
  readonly upperCut: Degrees;
  /** On the slope and square to the valley's line on the sheathing, how far inside of it a square outer edge lies. */
  readonly setBack: number;
  /** Or that edge bevelled by so much from square, on the line. */
  readonly bevel: Degrees;
}

/** What settles the hips of a block: the corner of its planes, and the hip of that corner. */
export interface HipCorner {
  readonly at: Corner;
  readonly member: HipMember;
}

/** The end of a broken hip on a wing's ridge: what it is cut to, and where its line begins. */
export interface BrokenFoot {
  readonly wing: string;
  readonly start: number;
  readonly tail: readonly PlumbCut[];
}

/** The hips on the edges of a block's surface, corner by corner: first end before last, right of the ridge before left, broken ones last. */
export function hipsOf(
  block: Block,
  { edges }: Surface,
  { at, member }: HipCorner,
  spec: RoofSpec,
  heel: number,
  brokenAt: (side: RoofPlane, end: RoofPlane) => BrokenFoot | null = () => null,
): Hip[] {
  const hips = block.ends
    .filter((end) => end !== null)
    .flatMap((end) =>
      block.sides.flatMap((side) =>
        edges
          .filter((edge) => edge.kind === "hip" && between(edge, side, end))
          .map((edge) => hipOf(edge, side, end, at, member, spec, heel, brokenAt(side, end))),
      ),
    );
  return hips.sort((a, b) => Number(a.start > 0) - Number(b.start > 0));
}

/** Whether two planes meet in an edge. */
const between = ({ left, right }: RoofEdge, one: RoofPlane, other: RoofPlane): boolean =>
  (left === one && right === other) || (left === other && right === one);

// One by one: to spread two objects into another is slow.
export const sideOf = (
  plane: RoofPlane,
  { pitch, tan, sin, cos }: CornerSide,
  { face, fall, proud }: HipSide,
): BearerSide => ({ plane, pitch, tan, sin, cos, face, fall, proud });

function hipOf(
  { right }: RoofEdge,
  side: RoofPlane,
  end: RoofPlane,
  at: Corner,
  member: HipMember,
  { hip }: RoofSpec,
  heel: number,
  broken: BrokenFoot | null,
): Hip {
  const { run, headRun, farthest, drop, tilts, backing, head } = member;
  const [near, far] = [sideOf(side, at.near, member.near), sideOf(end, at.far, member.far)];
  const { slope } = at;
  const hand = right === near.plane ? "right" : "left";
  const height = heel - drop;
  // Its tail stays inside both fascias: in plan it ends in a point where they meet, or square on the one that it meets first.
  const tail = plumbEnd(
    broken?.tail ?? [
      { at: near.plane.overhang / near.sin, per: near.cos / near.sin },
      { at: far.plane.overhang / far.sin, per: -far.cos / far.sin },
    ],
    -near.face,
    far.face,
  );
  return {
    kind: "hip",
    block: end.block,
    wing: broken?.wing ?? end.wing,
    section: hip,
    near,
    far,
    slope,
    hand,
    foot: cornerOf(near.plane, far.plane),
    heading: headingOn(near, hand === "right"),
    start: broken?.start ?? 0,
    run,
    height,
    tail: tail.cuts,
    head,
    headLean: 0,
    notched: false,
    headRun,
    farthest,
    drop,
    tilts,
    backing,
    seat: (plumbDepthOf(slope, hip.depth) - height) / slope,
    overhang: endReach(tail.cuts, tail.farthest),
  };
}

/** The level direction of a line that rises over a plane at its plan angle, to the right or to the left. */
export function headingOn({ plane, sin, cos }: BearerSide, rightward: boolean): Point {
  const along = rightward ? cos : -cos;
  return { x: along * plane.right.x + sin * plane.inward.x, y: along * plane.right.y + sin * plane.inward.y };
}

/** Where two plate lines meet that stand square to one another. */
function cornerOf(one: RoofPlane, other: RoofPlane): Point {
  return Math.abs(one.right.x) === 1 ? { x: other.corner.x, y: one.corner.y } : { x: one.corner.x, y: other.corner.y };
}

/** How far a ridge runs on past an apex: as far as king commons or the cheeks of hips on it reach. */
export function ridgePast({ rafter, hipHead }: RoofSpec, ridge: Section | null, { at, member }: HipCorner): number {
  if (hipHead === "king commons") return rafter.thickness / 2;
  const { near } = at;
  return ((ridge?.thickness ?? 0) / 2) * (near.cos / near.sin) + member.far.face / near.sin;
}

/** The ridge of a block, from the apex of its first end; null where its hips meet in a point. */
export function ridgeOf(
  block: Block,
  section: Section | null,
  heel: number,
  {
    run,
    tail,
    head,
    headLean = 0,
  }: { readonly run: number; readonly tail: number; readonly head: readonly PlumbCut[]; readonly headLean?: number },
): Bearer {
  const [right, left] = block.sides;
  const face = (section?.thickness ?? 0) / 2;
  const side = (plane: RoofPlane) =>
    sideOf(plane, { pitch: plane.pitch, tan: 0, sin: 0, cos: 1 }, { face, fall: face * plane.pitch, proud: 0 });
  const half = block.span / 2;
  return {
    kind: "ridge",
    block: block.index,
    wing: block.wing?.letter ?? "",
    section,
    near: side(right),
    far: side(left),
    slope: 0,
    hand: "right",
    foot: inBlock(block, block.ends[0]?.run ?? 0, half),
    heading: block.along,
    start: 0,
    run,
    height: heel + (half - face) * right.pitch,
    tail: [{ at: tail, per: 0 }],
    head,
    headLean,
    notched: false,
  };
}

/** How far out of its foot a bearer's board reaches at a level distance across. */
export const tailReach = ({ tail, notched }: Bearer, across: number): number =>
  notched ? Math.max(...tail.map(({ at, per }) => at + per * across)) : endReach(tail, across);

/** How long a board is from end to end, on the line where it is longest. */
export const boardRun = ({ tail, head }: Bearer): number => endReach(tail, 0) + endReach(head, 0);

/** The side of a bearer that a plane meets, or undefined. */
export const sideOn = ({ near, far }: Bearer, plane: RoofPlane): BearerSide | undefined =>
  near.plane === plane ? near : far.plane === plane ? far : undefined;

/** How far along a bearer a point of the plan lies, from the end at which its board starts. */
export const alongBoard = ({ foot, heading, tail }: Bearer, { x, y }: Point): number =>
  endReach(tail, 0) + (x - foot.x) * heading.x + (y - foot.y) * heading.y;

/** The face of a bearer's board on one of its sides, for someone who looks along it from its foot. */
export const faceOn = ({ near, hand }: Bearer, side: BearerSide): Side =>
  (side === near) === (hand === "left") ? "left" : "right";

/** Saw tilts of the cuts of a tail along the fascia of each side; null where the tail meets the other fascia only. */
export function tailTilts({ tail, kind }: Bearer): { readonly near: Degrees | null; readonly far: Degrees | null } {
  const [out, back] = [tail.find(({ per }) => per > 0), tail.find(({ per }) => per < 0)];
  const [near, far] = kind === "valley" ? [back, out] : [out, back];
  return { near: near ? tiltOf(near) : null, far: far ? tiltOf(far) : null };
}
