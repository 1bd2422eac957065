import { slantsOf } from "../../src/cutting/model/slants.ts";
import type { Stick } from "../../src/drawing/cards/drawSticks.ts";
import type { Unit } from "../../src/measure/unit.ts";
import type { CutOrder } from "./cutOrder.ts";
import { noneLongEnough, orderTerms } from "../words/orderNotes.ts";
import { joinText } from "../words/joinNote.ts";

/** What the drawing of a cutting plan needs. */
export interface CuttingDrawing {
  readonly sticks: readonly Stick[];
  /** null: the lengths have no unit. */
  readonly unit: Unit | null;
  /** In words: sizes that no board is long enough for. */
  readonly missing: readonly string[];
  /** In words: what was taken off the boards, where a ridge is joined. */
  readonly notes: readonly string[];
}

/** The boards of STICKPLAN as they are drawn. */
export function cuttingDrawing(order: CutOrder): CuttingDrawing {
  return {
    sticks: sticksOf(order),
    unit: order.unit,
    missing: order.plan.missing.map((one) => noneLongEnough(one, order)),
    notes: [orderTerms(order), ...order.joined.map((one) => joinText(one, order.unit))],
  };
}

function sticksOf({ plan, pieces, depths }: CutOrder): Stick[] {
  let next = 1;
  return plan.boards.map(({ size, length, repeat, leftOver, trim, pieces: placed }): Stick => {
    // Half of the trim comes off the left end.
    const from = trim / 2;
    const number = next;
    next += repeat;
    return {
      number,
      times: repeat,
      size,
      length,
      depth: depths.get(size) ?? null,
      leftOver,
      pieces: placed.map(({ piece, name, hand, start, end, flipped }) => ({
        name,
        hand,
        start: from + start,
        end: from + end,
        flipped,
        lean: pieces[piece]!.lean ?? 0,
        slants: slantsOf(pieces[piece]!),
      })),
    };
  });
}
