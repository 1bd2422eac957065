import type { Order } from "../state/orderNow.ts";
import type { PaperList } from "../../drawing/cards/stickPages.ts";
import { offCuts } from "../../drawing/cards/offCuts.ts";
import { lengthText } from "../../measure/lengthText.ts";
import type { Unit } from "../../measure/unit.ts";
import { planTexts } from "../words/planTexts.ts";

/** Shorter off-cuts go to the fire (common practice, no source); and what a tape shows. */
const KEPT = { in: { least: 12, step: 1 / 16 }, mm: { least: 300, step: 1 } } as const;

/** What to buy, and what is left of it that is worth keeping. */
export function planLists(order: Order, unit: Unit, kerf: number): PaperList[] {
  return [
    {
      title: planTexts.shopping,
      headings: planTexts.shoppingColumns,
      rows: order.lines.map(({ count, size, board, waste }) => [
        String(count),
        size,
        lengthText(board, unit),
        waste ? String(waste) : "",
      ]),
      none: planTexts.nothing,
    },
    offCutList(order, unit, kerf),
  ];
}

/** What is left of the boards and worth keeping. */
export function offCutList({ plan }: Order, unit: Unit, kerf: number): PaperList {
  const length = (value: number) => lengthText(value, unit);
  const kept = KEPT[unit];
  const runs = (boards: readonly (readonly [number, number])[]) =>
    boards.map(([first, last]) => (first === last ? String(first) : `${first} to ${last}`)).join(", ");
  return {
    title: planTexts.offCuts,
    headings: planTexts.offCutColumns,
    rows: offCuts(plan.sticks, { ...kept, kerf }).map((one) => [
      String(one.count),
      one.size,
      length(one.length),
      runs(one.boards),
    ]),
    none: planTexts.noOffCuts(length(kept.least)),
  };
}
