import { answered } from "./answers.ts";
import { degrees, inches } from "./agreement.ts";
import type { Agreement } from "./agreement.ts";
import { cornerIn } from "./cases.ts";
import type { CornerCase } from "./cases.ts";
import { beyond, opposite } from "./half.ts";
import type { Half } from "./half.ts";
import { heading } from "./frame.ts";
import { apexOf, ridgeFace } from "./apex.ts";
import { hipFrame, valley } from "./hip.ts";
import { member } from "./member.ts";
import type { Member } from "./member.ts";
import { arris, edgeAngle, extent, sawCut } from "./measure.ts";
import { cornerOf } from "./corner.ts";
import type { RoofCorner } from "./corner.ts";
import { faceTowards, rafterFrame } from "./rafter.ts";
import { add, dot, scale } from "./vector.ts";
import type { Shop } from "./shop.ts";

/** A few feet of the valley rafter of a corner, centered under the line in which the planes meet. */
export function aValley(shop: Shop, corner: RoofCorner, thickness: number, from: number, to: number): Member {
  const ahead = heading(corner.meeting);
  return valley(
    shop,
    corner,
    { thickness, depth: 9.25 },
    {
      ends: [
        beyond(ahead, add(corner.at, scale(ahead, from))),
        opposite(beyond(ahead, add(corner.at, scale(ahead, to)))),
      ],
    },
  );
}

/**
 * A valley jack of the first plane against its function; null when the valley's face reaches the ridge before it.
 *
 * At an inner corner the planes meet in the same line as at an outer one; the first plane lies above it, on the far side of the plate's own end.
 */
export async function valleyJackCheck(shop: Shop, one: CornerCase): Promise<Agreement[] | null> {
  const corner = cornerIn(one);
  const [side] = corner.sides;
  const {
    offset,
    run,
    ridge,
    hip: { thickness: Tv },
    jack: section,
  } = one;
  const frame = rafterFrame(corner, side, offset);
  const face = faceTowards(corner.meeting.left, shop.corners(aValley(shop, corner, Tv, 0, 12).solid));
  const head =
    ridge === 0
      ? opposite(beyond(side.inward, add(corner.at, scale(side.inward, run))))
      : ridgeFace(shop, corner, apexOf(shop, corner, run), ridge);
  // Where the far side's edge meets the valley's face and the ridge's: nothing is left when they cross.
  const edge = add(frame.at, scale(frame.left, -section.thickness / 2));
  const reach = (half: Half): number => (half.offset - dot(half.normal, edge)) / dot(half.normal, frame.along);
  if (reach(face) > reach(head) - 1) return null;
  const jack = member(shop, frame, section, { ends: [face, head] });
  const corners = shop.corners(jack.solid);
  const [left, right] = [arris(jack, corners, "left").length, arris(jack, corners, "right").length];
  const cut = sawCut(jack, corners, face);
  const end = await answered("CUTEND", one.pitches[0].cell, section.depth);
  const ask = (name: string, ...cells: readonly unknown[]): Promise<number> =>
    answered(name, one.pitches[0].cell, ...cells, one.pitches[1].cell, one.angle);
  const said = await ask("VALLEYJACK", offset, run, Tv, section.thickness, ridge);
  return [
    inches("VALLEYJACK", Math.max(left, right), said),
    { what: "long side nearer the inner corner", measured: left > right ? 1 : 0, answered: 1, within: 0 },
    degrees("JACKTILT at the valley", cut.tilt, await ask("JACKTILT")),
    degrees("lean of the foot from plumb", cut.lean, 0),
    // Both ends are plumb: the board is longer than the long side by the overhang of the plumb-cut end, its depth's leg along the board.
    inches("shortest board of a valley jack", extent(jack, corners), said + Math.sqrt(end ** 2 - section.depth ** 2)),
  ];
}

/** A cripple of the first plane, between a hip over one corner and a valley over another that is `distance` along the same plate. */
export async function crippleCheck(shop: Shop, one: CornerCase, distance: number): Promise<Agreement[]> {
  const corner = cornerIn(one);
  const [side, second] = corner.sides;
  const inner = cornerOf(
    add(corner.at, scale(side.plate, distance)),
    side.plate,
    second.plate,
    [side.pitch, second.pitch],
    corner.heel,
  );
  const T = one.hip.thickness;
  const Tv = one.ridge + 1;
  const foot = faceTowards(inner.meeting.left, shop.corners(aValley(shop, inner, Tv, 0, 12).solid));
  const hipBoard = shop.board(hipFrame(shop, corner, T, "dropped"), T, one.hip.depth, 0, 12);
  const head = faceTowards(scale(corner.meeting.left, -1), shop.corners(hipBoard));
  const cripple = member(shop, rafterFrame(corner, side, distance + one.offset), one.jack, { ends: [foot, head] });
  const corners = shop.corners(cripple.solid);
  const ask = (name: string, ...cells: readonly unknown[]): Promise<number> =>
    answered(name, one.pitches[0].cell, ...cells, one.pitches[1].cell, one.angle);
  const said = await ask("CRIPPLELEN", distance, T, Tv);
  const left = arris(cripple, corners, "left");
  const right = arris(cripple, corners, "right");
  const slant = Math.abs(dot(cripple.frame.along, left.high) - dot(cripple.frame.along, right.high));
  const end = await answered("CUTEND", one.pitches[0].cell, one.jack.depth);
  return [
    inches("CRIPPLELEN on the left face", left.length, said),
    inches("CRIPPLELEN on the right face", right.length, said),
    degrees("JACKTILT at the hip", sawCut(cripple, corners, head).tilt, await ask("JACKTILT")),
    degrees("JACKTILT at the valley", sawCut(cripple, corners, foot).tilt, await ask("JACKTILT")),
    degrees("JACKEDGE", edgeAngle(cripple, corners), await ask("JACKEDGE")),
    inches(
      "shortest board of a cripple",
      extent(cripple, corners),
      said + slant + Math.sqrt(end ** 2 - one.jack.depth ** 2),
    ),
  ];
}
