import type { Point } from "../../geometry/point.ts";
import type { Degrees } from "../../measure/degrees.ts";
import { plumbDepthOf } from "../members/commonRafter.ts";
import type { Corner, CornerSide } from "../members/corner.ts";
import type { HipMember, HipSide } from "../members/hipMember.ts";
import { plumbEnd, endReach, tiltOf, type PlumbCut } from "../members/plumbEnd.ts";
import { inBlock, type Block, type RoofPlane } from "./blocks.ts";
import type { RoofSpec, Section } from "./roofSpec.ts";
import type { RoofEdge, Surface } from "./surface.ts";

/** One side of a bearer: the plane that meets it there, the plan angle between the two, and where its face stands. */
export interface BearerSide extends CornerSide, HipSide {
  readonly plane: RoofPlane;
}

/**
 * A board on an edge of the roof, which rafters bear on: a hip or a ridge.
 *
 * Its near side is the plane along its block's ridge (of a ridge: the one to its right), its far side the other. In its own plan x runs level along it from its foot, and
 * y across it, to the far side.
 */
export interface Bearer extends Corner {
  readonly kind: "ridge" | "hip";
  readonly block: number;
  /** null where there is no board: the rafters of both sides meet. */
  readonly section: Section | null;
  readonly near: BearerSide;
  readonly far: BearerSide;
  /** Which hand its near side is on, looking along it from its foot. */
  readonly hand: "left" | "right";
  /** Where it starts: a hip at the corner of the plates, a ridge at the apex or gable that it is set out from. Then its level direction. */
  readonly foot: Point;
  readonly heading: Point;
  /** Level length of its line; of a ridge up to the last apex or the gable's plate line. */
  readonly run: number;
  /** Its top edge on its own line, over the foot. */
  readonly height: number;
  /** Its ends: how far out of its foot, and how far along from it. */
  readonly tail: readonly PlumbCut[];
  readonly head: readonly PlumbCut[];
}

/** A hip as a bearer, with what its own formulas say. */
export interface Hip extends Bearer, Pick<HipMember, "headRun" | "farthest" | "drop" | "tilts" | "backing"> {
  readonly kind: "hip";
  readonly section: Section;
  readonly near: BearerSide;
  readonly far: BearerSide;
  /** Level seat of its foot. */
  readonly seat: number;
  /** Level along it, from the corner's plumb line to the farthest point of its tail within its own thickness. */
  readonly overhang: number;
}

/** The hips on the edges of a block's surface, corner by corner: first end before last, right of the ridge before left. */
export function hipsOf(
  block: Block,
  { edges }: Surface,
  at: Corner,
  member: HipMember,
  spec: RoofSpec,
  heel: number,
): Hip[] {
  return block.ends
    .filter((end) => end !== null)
    .flatMap((end) =>
      block.sides.flatMap((side) =>
        edges
          .filter((edge) => edge.kind === "hip" && between(edge, side, end))
          .map((edge) => hipOf(edge, side, end, at, member, spec, heel)),
      ),
    );
}

/** Whether two planes meet in an edge. */
const between = ({ left, right }: RoofEdge, one: RoofPlane, other: RoofPlane): boolean =>
  (left === one && right === other) || (left === other && right === one);

// One by one: to spread two objects into another is slow.
const sideOf = (
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
): Hip {
  const { run, headRun, farthest, drop, tilts, backing, head } = member;
  const [near, far] = [sideOf(side, at.near, member.near), sideOf(end, at.far, member.far)];
  const { slope } = at;
  const hand = right === near.plane ? "right" : "left";
  const { plane, sin } = near;
  const cos = hand === "right" ? near.cos : -near.cos;
  const heading = { x: cos * plane.right.x + sin * plane.inward.x, y: cos * plane.right.y + sin * plane.inward.y };
  const height = heel - drop;
  // Its tail stays inside both fascias: in plan it ends in a point where they meet, or square on the one that it meets first.
  const tail = plumbEnd(
    [
      { at: near.plane.overhang / near.sin, per: near.cos / near.sin },
      { at: far.plane.overhang / far.sin, per: -far.cos / far.sin },
    ],
    -near.face,
    far.face,
  );
  return {
    kind: "hip",
    block: near.plane.block,
    section: hip,
    near,
    far,
    slope,
    hand,
    foot: cornerOf(near.plane, far.plane),
    heading,
    run,
    height,
    tail: tail.cuts,
    head,
    headRun,
    farthest,
    drop,
    tilts,
    backing,
    seat: (plumbDepthOf(slope, hip.depth) - height) / slope,
    overhang: endReach(tail.cuts, tail.farthest),
  };
}

/** Where two plate lines meet that stand square to one another. */
function cornerOf(one: RoofPlane, other: RoofPlane): Point {
  return Math.abs(one.right.x) === 1 ? { x: other.corner.x, y: one.corner.y } : { x: one.corner.x, y: other.corner.y };
}

/** How far a ridge runs on past an apex: as far as king commons or the cheeks of hips on it reach. */
export function ridgePast({ rafter, hipHead, ridge }: RoofSpec, { near }: Corner, { far }: HipMember): number {
  if (hipHead === "king commons") return rafter.thickness / 2;
  return ((ridge?.thickness ?? 0) / 2) * (near.cos / near.sin) + far.face / near.sin;
}

/** The ridge of a block, from the apex of its first end; null where its hips meet in a point. */
export function ridgeOf(
  block: Block,
  { edges }: Surface,
  { ridge }: RoofSpec,
  heel: number,
  past: number,
): Bearer | null {
  const [right, left] = block.sides;
  if (!edges.some((edge) => edge.kind === "ridge" && between(edge, right, left))) return null;
  const face = (ridge?.thickness ?? 0) / 2;
  const side = (plane: RoofPlane) =>
    sideOf(plane, { pitch: plane.pitch, tan: 0, sin: 0, cos: 1 }, { face, fall: face * plane.pitch, proud: 0 });
  const [first, last] = block.ends;
  const run = block.length - first.run - (last?.run ?? 0);
  return {
    kind: "ridge",
    block: block.index,
    section: ridge,
    near: side(right),
    far: side(left),
    slope: 0,
    hand: "right",
    foot: inBlock(block, first.run, right.run),
    heading: block.along,
    run,
    height: heel + (right.run - face) * right.pitch,
    tail: [{ at: past, per: 0 }],
    head: [{ at: run + (last === null ? 0 : past), per: 0 }],
  };
}

/** How long a square-ended board is from end to end. */
export const boardRun = ({ tail, head }: Bearer): number => endReach(tail, 0) + endReach(head, 0);

/** The side of a bearer that a plane meets, or undefined. */
export const sideOn = ({ near, far }: Bearer, plane: RoofPlane): BearerSide | undefined =>
  near.plane === plane ? near : far.plane === plane ? far : undefined;

/** Saw tilts of a hip's tail, for the cut along the fascia of each side; null where the tail meets the other fascia only. */
export function tailTilts({ tail }: Bearer): { readonly near: Degrees | null; readonly far: Degrees | null } {
  const [near, far] = [tail.find(({ per }) => per > 0), tail.find(({ per }) => per < 0)];
  return { near: near ? tiltOf(near) : null, far: far ? tiltOf(far) : null };
}
