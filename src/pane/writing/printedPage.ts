import * as z from "zod/mini";
import { PAPERS, type CardPaper } from "../../drawing/cards/cardStyles.ts";
import { Failure } from "../../measure/result.ts";
import { kerfNow, kerfText, keyOf, orderNow } from "../state/orderNow.ts";
import { roofState } from "../state/paneState.ts";
import { readRemembered } from "../state/remembered.ts";
import { cardsPage } from "./cards.ts";
import { cardsGiven } from "./packetOf.ts";
import { planPage } from "./planPage.ts";

const Asked = z.object({
  paper: z.enum(Object.keys(PAPERS) as [CardPaper["paper"]]),
  perPage: z.nullable(z.union([z.literal(2), z.literal(4)])),
  plan: z.boolean(),
  roof: z.unknown(),
});

/** The printable page that an address asks for behind its #; null for anything else, whoever wrote it there. */
export async function printedPage(hash: string): Promise<string | null> {
  const asked = readAsked(hash);
  if (!asked) return null;
  const state = roofState();
  state.inputs.value = asked.inputs;
  state.kerf.value = asked.kerf;
  const { model, unit } = state.report.value;
  const cut = kerfNow(asked.kerf, unit);
  if (!model || cut instanceof Failure) return null;
  const order = asked.plan ? await orderNow(asked) : null;
  if (order) state.found.value = { key: keyOf({ inputs: asked.inputs, kerf: asked.kerf }), order };
  const { paper, perPage } = asked;
  if (perPage !== null) return cardsPage(model, { paper, perPage }, cardsGiven(state));
  return order && !(order instanceof Failure) ? planPage(state, order, paper, kerfText(cut, unit)) : null;
}

function readAsked(hash: string) {
  try {
    const { data } = Asked.safeParse(JSON.parse(decodeURIComponent(hash.slice(1))));
    const roof = data && readRemembered(JSON.stringify(data.roof));
    return roof ? { ...data, inputs: roof.inputs, kerf: roof.kerf } : null;
  } catch {
    return null;
  }
}
