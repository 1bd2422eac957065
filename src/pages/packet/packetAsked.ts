import * as z from "zod/mini";
import { readRemembered } from "../../pane/state/remembered.ts";
import { report } from "../../pane/state/report.ts";
import { kerfNow, type OrderAsked } from "../../pane/state/orderNow.ts";
import { Failure } from "../../measure/result.ts";
import { roofStamp } from "../../roof/tables/roofStamp.ts";
import type { RoofModel } from "../../../functions/arguments/roofModel.ts";

/** The roof behind the # of an address, framed. */
export interface RoofAsked extends OrderAsked {
  readonly model: RoofModel;
  readonly kerfWidth: number;
}

const Asked = z.object({ packet: z.literal(true), roof: z.unknown() });
const Roof = z.object({ roof: z.unknown() });

/** The roof whose packet an address asks for; null for anything else, whoever wrote it there. */
export const packetAsked = (hash: string): RoofAsked | null =>
  Asked.safeParse(dataIn(hash)).success ? roofAsked(hash) : null;

/** The roof behind the # of an address, whatever is asked of it; null where there is none that can be framed. */
export function roofAsked(hash: string): RoofAsked | null {
  const { data } = Roof.safeParse(dataIn(hash));
  return data ? roofOf(JSON.stringify(data.roof) ?? "") : null;
}

/** The roof of a text that the pane keeps; null where there is none in it that can be framed. */
export function roofOf(text: string): RoofAsked | null {
  const kept = readRemembered(text);
  if (!kept) return null;
  const { model, unit } = report(kept.inputs);
  const kerfWidth = kerfNow(kept.kerf, unit);
  return model && !(kerfWidth instanceof Failure) ? { inputs: kept.inputs, kerf: kept.kerf, model, kerfWidth } : null;
}

/** What tells this roof, its boards and its kerf from others, as papers have it. */
export const stampOf = ({ model, kerfWidth }: RoofAsked): string => roofStamp(model.frame.spec, kerfWidth);

function dataIn(hash: string): unknown {
  try {
    return JSON.parse(decodeURIComponent(hash.replace(/^#/, "")));
  } catch {
    return null;
  }
}
