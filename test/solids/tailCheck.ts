import { answered } from "./answers.ts";
import { inches } from "./agreement.ts";
import type { Agreement } from "./agreement.ts";
import { cornerIn } from "./cases.ts";
import type { CornerCase } from "./cases.ts";
import { beyond, depthIn, opposite } from "./half.ts";
import { arris, extent, ON } from "./measure.ts";
import { member } from "./member.ts";
import type { Member } from "./member.ts";
import { inside, rafterFrame, tail } from "./rafter.ts";
import { add, distance, dot, plan, scale, sub, UP } from "./vector.ts";
import type { Shop } from "./shop.ts";
import type { Vec } from "./vector.ts";

/** Tails cut plumb, square and level on a common, against the functions; cuts that would go through the seat are left out, as the wood shows. */
export async function tailCheck(shop: Shop, one: CornerCase): Promise<Agreement[] | null> {
  const { overhang, heel, jack: section, pitches } = one;
  if (overhang === 0) return null;
  const corner = cornerIn(one);
  const [side, other] = corner.sides;
  const frame = rafterFrame(corner, side, 0);
  const foot = tail(corner, [side], [overhang]);
  const head = opposite(beyond(side.inward, add(corner.at, scale(side.inward, 60))));
  const plumb = member(shop, frame, section, { ...foot, ends: [...foot.ends, head] });
  const over = arris({ ...plumb }, shop.corners(shop.trim(plumb.solid, inside(corner, side))), "left");
  const tip = arris(plumb, shop.corners(plumb.solid), "left").low;
  const board = (piece: Member): number => extent(piece, shop.corners(piece.solid)) - over.length;
  const lowest = (piece: Member): number => -Math.min(...shop.corners(piece.solid).map((c) => c[2]));
  const pitch = pitches[0].cell;
  const ask = (name: string, ...more: readonly unknown[]): Promise<number> =>
    answered(name, pitch, overhang, section.depth, heel, ...more);
  const found = [
    inches("TAILBOARD, plumb", board(plumb), await ask("TAILBOARD")),
    inches("TAILDROP, plumb", lowest(plumb), await ask("TAILDROP")),
    // A level fascia falls as far below the heel on both sides: the other tail ends at this one's height.
    inches(
      "ENDOVERHANG",
      (overhang * side.pitch) / other.pitch,
      await answered("ENDOVERHANG", pitch, overhang, pitches[1].cell),
    ),
  ];

  // The square cut starts a board's depth farther down than any corner of the finished piece will be.
  const square = member(shop, frame, section, { ends: [beyond(frame.along, tip), head], seat: foot.seat! });
  const seatCorner = shop
    .corners(square.solid)
    .some((c) => Math.abs(c[2]) < ON && Math.abs(dot(side.inward, sub(c, corner.at))) < ON);
  if (seatCorner)
    found.push(
      inches("TAILBOARD, square", board(square), await ask("TAILBOARD", "square")),
      inches("TAILDROP, square", lowest(square), await ask("TAILDROP", "square")),
    );

  const fascia = section.depth * 0.7;
  const soffit = beyond(scale(UP, -1), sub(tip, [0, 0, fascia]));
  if (depthIn(soffit, corner.at) < 0) {
    const level = { ...plumb, solid: shop.notch(plumb.solid, soffit, opposite(inside(corner, side))) };
    const cut: readonly Vec[] = shop.corners(level.solid).filter((c) => Math.abs(depthIn(soffit, c)) < ON);
    const lengths = cut.flatMap((a) => cut.map((b) => Math.abs(dot(side.inward, sub(plan(a), plan(b))))));
    found.push(
      inches("TAILBOARD, level", board(level), await ask("TAILBOARD", "level", fascia)),
      inches("TAILDROP, level", lowest(level), await ask("TAILDROP", "level", fascia)),
      inches("SOFFITCUT", Math.max(...lengths), await answered("SOFFITCUT", pitch, overhang, section.depth, fascia)),
      inches("fascia", distance(tip, [tip[0], tip[1], Math.min(...cut.map((c) => c[2]))]), fascia),
    );
  }
  return found;
}
