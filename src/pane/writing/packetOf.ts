import type { RoofModel } from "../../../functions/arguments/roofModel.ts";
import type { CardOptions, Packet } from "../../drawing/cards/cardOptions.ts";
import { Failure } from "../../measure/result.ts";
import { roofStamp } from "../../roof/tables/roofStamp.ts";
import { kerfOrUsual, keyOf } from "../state/orderNow.ts";
import type { RoofState } from "../state/paneState.ts";

/** What stands on every paper of a roof that is printed today. */
export const packetFor = ({ job, frame }: RoofModel, kerf: number): Packet => ({
  job,
  date: new Date().toLocaleDateString("en-US", { year: "numeric", month: "short", day: "numeric" }),
  stamp: roofStamp(frame.spec, kerf),
});

/** The same of the roof as it is typed now. */
export function packetOf({ report, kerf }: RoofState): Packet {
  const { model, unit } = report.value;
  return packetFor(model!, kerfOrUsual(kerf.value, unit));
}

/** The same for cut cards, with the boards of the cutting plan where one was found for this roof. */
export function cardsGiven(state: RoofState): Pick<CardOptions, "packet" | "sticks"> {
  const found = state.found.value;
  const now = keyOf({ inputs: state.inputs.value, kerf: state.kerf.value });
  const packet = packetOf(state);
  return found?.key === now && !(found.order instanceof Failure)
    ? { packet, sticks: found.order.plan.sticks }
    : { packet };
}
