import { beyond, opposite } from "./half.ts";
import type { Half } from "./half.ts";
import { heading } from "./frame.ts";
import type { Frame } from "./frame.ts";
import { centerLine } from "./measure.ts";
import { member } from "./member.ts";
import { faceTowards, inside, rafterFrame } from "./rafter.ts";
import { dot, scale, sub, UP } from "./vector.ts";
import type { RoofCorner } from "./corner.ts";
import type { Shop } from "./shop.ts";
import type { Vec } from "./vector.ts";

/** The point of the meeting line at the first side's run: where ridge and hips come together. */
export function apexOf(shop: Shop, corner: RoofCorner, run: number): Vec {
  const line = member(
    shop,
    corner.meeting,
    { thickness: 1, depth: 1 },
    { ends: [beyond(heading(corner.meeting), corner.at), opposite(inside(corner, corner.sides[0], -run))] },
  );
  return centerLine(shop, line).high;
}

/** The faces, towards the corner, of two king commons that run to the apex. */
export function kingFaces(shop: Shop, corner: RoofCorner, apex: Vec, thickness: number): [Half, Half] {
  const face = (which: 0 | 1): Half => {
    const side = corner.sides[which];
    const king = member(
      shop,
      rafterFrame(corner, side, dot(sub(apex, corner.at), side.plate)),
      { thickness, depth: 5.5 },
      { ends: [inside(corner, side), opposite(beyond(side.inward, apex))] },
    );
    return faceTowards(scale(side.plate, -1), shop.corners(king.solid));
  };
  return [face(0), face(1)];
}

/** The near face of a ridge board that runs along the first side's plate line through the apex. */
export function ridgeFace(shop: Shop, { sides: [{ plate, inward }] }: RoofCorner, apex: Vec, thickness: number): Half {
  const frame: Frame = { at: apex, along: plate, left: inward, top: UP };
  return faceTowards(scale(inward, -1), shop.corners(shop.board(frame, thickness, 5.5, 0, 12)));
}
