import { lengthText } from "../../measure/lengthText.ts";
import type { CardPaper } from "../../drawing/cards/cardStyles.ts";
import { stickPages } from "../../drawing/cards/stickPages.ts";
import { kerfOrUsual, type Order } from "../state/orderNow.ts";
import type { RoofState } from "../state/paneState.ts";
import { texts } from "../words/texts.ts";
import { packetOf } from "./packetOf.ts";
import { planLists } from "./planLists.ts";

/** The cutting plan of an order as a printable page that needs nothing else. The kerf is as people read it. */
export function planPage(state: RoofState, order: Order, paper: CardPaper["paper"], kerf: string): string {
  const { span, length: long, unit } = state.report.value.model!.frame.spec;
  const { plan } = order;
  const length = (value: number) => lengthText(value, unit);
  return stickPages(plan.sticks, {
    paper,
    length,
    packet: packetOf(state),
    lists: planLists(order, unit, kerfOrUsual(state.kerf.value, unit)),
    notes: [texts.planFor(length(span), length(long), kerf), ...[...plan.missing, ...plan.notes].map(texts.sentence)],
  });
}
