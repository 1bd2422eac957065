import { frameOf, heading } from "../frame.ts";
import type { Frame } from "../frame.ts";
import { beyond, depthIn } from "../half.ts";
import type { Half } from "../half.ts";
import type { Member } from "../member.ts";
import { ON } from "../measure.ts";
import type { Hand } from "../measure.ts";
import type { Shop } from "../shop.ts";
import { add, cross, dot, scale } from "../vector.ts";
import type { Vec } from "../vector.ts";
import type { Plane } from "./layout.ts";

export type Role = "supporting" | "shortened" | "level" | "flush";

/** What is known of a ridge, hip or valley before it is cut. */
export interface BearerPlan {
  readonly kind: "ridge" | "hip" | "broken hip" | "valley" | "valley board";
  readonly name: string;
  readonly role?: Role;
  /** The letter of the wing that it is made by. */
  readonly wing?: string;
  /** The planes that meet in its line. */
  readonly planes: readonly Plane[];
  /** The ends of that line: over the corner (or at the outer end) and where it stops. */
  readonly from: Vec;
  readonly to: Vec;
  /** The planes that its upper end is cut to, the board in front. */
  readonly heads: readonly Half[];
  /** The fascias of a tail, or what a broken hip's foot is cut to. */
  readonly feet: readonly Half[];
}

/** A board that rafters stand on or meet. */
export interface Bearer extends BearerPlan, Member {
  /** How far its two side faces reach along its heading. */
  readonly reach: Readonly<Record<Hand, readonly [number, number]>>;
}

/** A board's place and thickness: enough to know its side faces. */
export type Placed = Pick<Member, "frame" | "thickness">;

/** The side face of a board, everything outside it in front. */
export function sideFace({ frame: { at, left }, thickness }: Placed, hand: Hand): Half {
  const out = scale(left, hand === "left" ? 1 : -1);
  return beyond(out, add(at, scale(out, thickness / 2)));
}

/** The side face that looks some way. */
export const faceTo = (board: Placed, way: Vec): Half =>
  sideFace(board, dot(board.frame.left, way) > 0 ? "left" : "right");

/** The line in which two planes meet, up from a point of it. */
export function meetingLine(one: Plane, two: Plane, at: Vec): Frame {
  const line = cross(one.above.normal, two.above.normal);
  return frameOf(at, line[2] < 0 ? scale(line, -1) : line);
}

/** The point of a frame's line in a plane. */
export const lineAt = ({ at, along }: Frame, half: Half): Vec =>
  add(at, scale(along, -depthIn(half, at) / dot(half.normal, along)));

/** A finished bearer: how far its faces reach is read off its corners. */
export function finished(shop: Shop, piece: Member, plan: BearerPlan): Bearer {
  const ahead = heading(piece.frame);
  const corners = shop.corners(piece.solid);
  const along = (hand: Hand): readonly [number, number] => {
    const face = sideFace(piece, hand);
    const on = corners.filter((c) => Math.abs(depthIn(face, c)) < ON).map((c) => dot(ahead, c));
    return [Math.min(...on), Math.max(...on)];
  };
  return { ...piece, ...plan, reach: { left: along("left"), right: along("right") } };
}
