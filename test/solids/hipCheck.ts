import { answered, asked } from "./answers.ts";
import { degrees, inches } from "./agreement.ts";
import type { Agreement } from "./agreement.ts";
import { cornerIn } from "./cases.ts";
import type { CornerCase } from "./cases.ts";
import { apexOf, kingFaces, ridgeFace } from "./apex.ts";
import { beyond, opposite } from "./half.ts";
import type { Half } from "./half.ts";
import { heading } from "./frame.ts";
import type { Frame } from "./frame.ts";
import { hip, hipFrame, proud } from "./hip.ts";
import type { HipTop } from "./hip.ts";
import { member } from "./member.ts";
import type { Member } from "./member.ts";
import { centerLine, extent, sawCut } from "./measure.ts";
import { tail } from "./rafter.ts";
import { Refusal } from "../../src/registry/refusal.ts";
import { add, angle, cross, dot, scale, sub, unit, UP } from "./vector.ts";
import type { RoofCorner } from "./corner.ts";
import type { Shop } from "./shop.ts";
import type { Vec } from "./vector.ts";

/** A direction's angle from level, degrees. */
const slopeOf = (direction: Vec): number => 90 - angle(direction, UP);

/** The angle between the square top that a board comes with and its bevel on a side, read off the corners of the bevel. */
function backing(shop: Shop, corner: RoofCorner, piece: Member, which: 0 | 1): number {
  const way = which === 0 ? -1 : 1;
  const strip = shop.corners(shop.trim(piece.solid, beyond(scale(piece.frame.left, way), piece.frame.at)));
  const seen = strip.filter(
    (c) => Math.abs(dot(corner.sides[which].above.normal, c) - corner.sides[which].above.offset) < 1e-7,
  );
  const ridge = seen.filter((c) => Math.abs(dot(piece.frame.left, sub(c, piece.frame.at))) < 1e-7);
  const arris = seen.find((c) => Math.abs(dot(piece.frame.left, sub(c, piece.frame.at))) > 1e-7);
  if (ridge.length < 2 || !arris) throw new Error("The hip has no bevel on this side.");
  const bevel = unit(cross(sub(ridge[1]!, ridge[0]!), sub(arris, ridge[0]!)));
  const between = angle(bevel, piece.frame.top);
  return Math.min(between, 180 - between);
}

/** Everything a function says about the hip of a corner, seen from its first side, against the wood. */
export async function hipCheck(shop: Shop, one: CornerCase): Promise<Agreement[]> {
  const corner = cornerIn(one);
  const {
    hip: section,
    run,
    heel,
    ridge,
    jack: { thickness: t },
  } = one;
  const ahead = heading(corner.meeting);
  const overCorner = beyond(ahead, corner.at);
  const apex = apexOf(shop, corner, run);
  const line = centerLine(
    shop,
    member(shop, corner.meeting, section, { ends: [overCorner, opposite(beyond(ahead, apex))] }),
  );
  const cut = (top: HipTop, ...heads: readonly Half[]): Member =>
    hip(shop, corner, section, top, { ends: [overCorner, ...heads] });

  const cheeks = kingFaces(shop, corner, apex, t);
  const dropped = cut("dropped", ...cheeks);
  const droppedLine = centerLine(shop, dropped);
  const face = ridgeFace(shop, corner, apex, ridge || 1);
  const toRidge = cut("dropped", face);
  const [drop1, drop2] = proud(shop, corner, corner.meeting, section.thickness);
  const backed = cut("backed", opposite(beyond(ahead, apex)));

  const [pitch, other] = [one.pitches[0].cell, one.pitches[1].cell];
  const ask = (name: string, ...cells: readonly unknown[]): Promise<number> =>
    answered(name, pitch, ...cells, other, one.angle);
  const rise = (line.high[2] - line.low[2]) / Math.hypot(line.high[0] - line.low[0], line.high[1] - line.low[1]);
  const tiltAt = (piece: Member, plane: Half): number => sawCut(piece, shop.corners(piece.solid), plane).tilt;
  const jackTilt = await ask("JACKTILT");
  return [
    inches("HIPLEN", line.length, await ask("HIPLEN", run)),
    inches("HIPRUN", Math.hypot(line.high[0] - line.low[0], line.high[1] - line.low[1]), await ask("HIPRUN", run)),
    degrees("HIPDEG", slopeOf(sub(line.high, line.low)), await ask("HIPDEG")),
    inches("HIPRISE", rise * 12, await ask("HIPRISE")),
    inches("HIPTOKING", droppedLine.length, await ask("HIPTOKING", run, t)),
    inches("HIPTORIDGE", centerLine(shop, toRidge).length, await ask("HIPTORIDGE", run, ridge || 1)),
    inches("HIPDROP", Math.max(drop1, drop2), await ask("HIPDROP", section.thickness)),
    await hipHeel(droppedLine.low[2], "HIPHEEL", pitch, heel, section.thickness, other, one.angle),
    degrees("HIPBACK", backing(shop, corner, backed, 0), await ask("HIPBACK")),
    // A hip meets the ridge as the complement of what a jack meets the hip with.
    degrees("tilt at the ridge", tiltAt(toRidge, face), 90 - jackTilt),
    // A hip that is dropped below the plate, or does not reach down to it, has no seat.
    ...(droppedLine.low[2] > 0 && Math.min(...shop.corners(dropped.solid).map((c) => c[2])) < 0
      ? await hipBoards(shop, one, corner, cheeks, face)
      : []),
    ...settling(shop, corner, section.thickness, hipFrame(shop, corner, section.thickness, "dropped"), drop1, drop2),
    ...shifted(shop, corner, section.thickness),
  ];
}

/** The boards of finished hips: head, notch, and a tail with two cheeks at the corner of level fascias. */
async function hipBoards(
  shop: Shop,
  one: CornerCase,
  corner: RoofCorner,
  cheeks: readonly Half[],
  face: Half,
): Promise<Agreement[]> {
  const {
    hip: section,
    run,
    heel,
    overhang,
    ridge,
    jack: { thickness },
  } = one;
  const [near, far] = corner.sides;
  const feet = tail(corner, corner.sides, [overhang, (overhang * near.pitch) / far.pitch]);
  const board = (heads: readonly Half[]): number => {
    const finished = hip(shop, corner, section, "dropped", { ...feet, ends: [...feet.ends, ...heads] });
    return extent(finished, shop.corners(finished.solid));
  };
  const ask = (name: string, meets: number): Promise<number> =>
    answered(
      name,
      one.pitches[0].cell,
      run,
      section.thickness,
      meets,
      section.depth,
      heel,
      overhang,
      one.pitches[1].cell,
      one.angle,
    );
  return [
    inches("HIPKINGBOARD", board(cheeks), await ask("HIPKINGBOARD", thickness)),
    inches("HIPRIDGEBOARD", board([face]), await ask("HIPRIDGEBOARD", ridge || 1)),
  ];
}

/** The hip's own height above plate; a hip that is dropped below the plate has to be refused. */
async function hipHeel(measured: number, name: string, ...cells: readonly unknown[]): Promise<Agreement> {
  if (measured > 0) return inches(name, measured, await answered(name, ...cells));
  return {
    what: `${name} refused for a hip below the plate`,
    measured: 1,
    answered: (await asked(name, ...cells)) instanceof Refusal ? 1 : 0,
    within: 0,
  };
}

/** A dropped hip touches the plane that governs and stands below the other by the difference of the two. */
function settling(
  shop: Shop,
  corner: RoofCorner,
  thickness: number,
  frame: Frame,
  drop1: number,
  drop2: number,
): Agreement[] {
  const [one, two] = proud(shop, corner, frame, thickness);
  return [
    inches("highest arris over its plane", Math.max(one, two), 0),
    inches("lower arris under its plane", Math.min(one, two), -Math.abs(drop1 - drop2)),
  ];
}

/** Both arrises of a shifted hip lie in their planes, and it still stands over the corner. */
function shifted(shop: Shop, corner: RoofCorner, thickness: number): Agreement[] {
  const frame = hipFrame(shop, corner, thickness, "shifted");
  const [one, two] = proud(shop, corner, frame, thickness);
  const aside = Math.abs(dot(sub(frame.at, add(corner.at, [0, 0, corner.heel])), frame.left));
  return [
    inches("first arris of the shifted hip", one, 0),
    inches("second arris of the shifted hip", two, 0),
    { what: "shift under half the hip", measured: aside < thickness / 2 ? 1 : 0, answered: 1, within: 0 },
  ];
}
