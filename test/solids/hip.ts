import { depthIn, opposite } from "./half.ts";
import { moved } from "./frame.ts";
import type { Frame } from "./frame.ts";
import { add, scale, UP } from "./vector.ts";
import type { RoofCorner } from "./corner.ts";
import { member } from "./member.ts";
import type { Cuts, Member, Section } from "./member.ts";
import type { Shop } from "./shop.ts";

/** How a hip's top meets the roof planes. "level" is the board as it comes, its center line in the meeting line. */
export type HipTop = "level" | "backed" | "dropped" | "shifted";

/** How far the top of a board under a frame stands above each of the two roof planes, plumb, read off its corners. */
export function proud(shop: Shop, { sides }: RoofCorner, frame: Frame, thickness: number): [number, number] {
  // A yard of board shows it: the planes are parallel to its top edges.
  const corners = shop.corners(shop.board(frame, thickness, 1, 0, 36));
  const over = (side: 0 | 1): number => Math.max(...corners.map((c) => depthIn(sides[side].above, c)));
  return [over(0), over(1)];
}

/** The frame of a square-topped hip lowered until its higher arris lies in its roof plane, or shifted and lowered until both do. */
export function hipFrame(shop: Shop, corner: RoofCorner, thickness: number, top: HipTop): Frame {
  const start = corner.meeting;
  if (top === "level" || top === "backed") return start;
  const [one, two] = proud(shop, corner, start, thickness);
  if (top === "dropped") return moved(start, scale(UP, -Math.max(one, two)));
  // Heights over a plane change evenly with a sideways move, so one trial move of an inch tells how far to go.
  const [oneMoved, twoMoved] = proud(shop, corner, moved(start, start.left), thickness);
  const shift = (two - one) / (oneMoved - one - (twoMoved - two));
  return moved(start, add(scale(start.left, shift), scale(UP, -(one + shift * (oneMoved - one)))));
}

/** A hip rafter over its corner, cut as told, its top as told. */
export function hip(shop: Shop, corner: RoofCorner, section: Section, top: HipTop, cuts: Cuts): Member {
  const piece = member(shop, hipFrame(shop, corner, section.thickness, top), section, cuts);
  if (top !== "backed") return piece;
  return { ...piece, solid: shop.trim(piece.solid, ...corner.sides.map(({ above }) => opposite(above))) };
}

/** A valley rafter, centered under its line: the planes rise to both sides of it, so its square top stands under both. */
export const valley = (shop: Shop, { meeting }: RoofCorner, section: Section, cuts: Cuts): Member =>
  member(shop, meeting, section, cuts);
