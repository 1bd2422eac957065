import { depthIn } from "./half.ts";
import type { Half } from "./half.ts";
import { add, dot, scale } from "./vector.ts";
import type { Frame } from "./frame.ts";
import type { Shop, Solid } from "./shop.ts";

/** A board's section, inches; depth is measured square to the top edge. */
export interface Section {
  readonly thickness: number;
  readonly depth: number;
}

/** A piece of wood where it is framed. */
export interface Member extends Section {
  readonly frame: Frame;
  readonly solid: Solid;
}

/** The planes that end a member, each kept in front, and the planes whose common front is cut out for its seat. */
export interface Cuts {
  readonly ends: readonly Half[];
  readonly seat?: readonly Half[];
}

/** A board under a frame, long enough for all its cuts, then cut. */
export function member(shop: Shop, frame: Frame, { thickness, depth }: Section, { ends, seat }: Cuts): Member {
  let from = Infinity;
  let to = -Infinity;
  for (const half of ends) {
    const towards = dot(half.normal, frame.along);
    for (const side of [-thickness / 2, thickness / 2]) {
      for (const down of [0, -depth]) {
        const edge = add(frame.at, add(scale(frame.left, side), scale(frame.top, down)));
        const crossing = -depthIn(half, edge) / towards;
        if (towards > 0) from = Math.min(from, crossing);
        else to = Math.max(to, crossing);
      }
    }
  }
  const ended = shop.trim(shop.board(frame, thickness, depth, from - 1, to + 1), ...ends);
  return { frame, thickness, depth, solid: seat ? shop.notch(ended, ...seat) : ended };
}
