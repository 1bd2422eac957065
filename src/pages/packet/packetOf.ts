import type { RoofModel } from "../../../functions/arguments/roofModel.ts";
import type { Packet } from "../../drawing/cards/cardOptions.ts";
import type { CardPaper } from "../../drawing/cards/cardStyles.ts";
import type { Result } from "../../measure/result.ts";
import type { Inputs } from "../../pane/state/fields.ts";
import type { Order } from "../../pane/state/orderNow.ts";

/** The parts of a packet, in the order in which they come; the first ones are in it unless one says otherwise. */
export const PARTS = {
  title: true,
  schedule: true,
  marks: true,
  shopping: true,
  cutting: true,
  cards: true,
  cautions: true,
  labels: false,
  strips: false,
} as const;
export type PartName = keyof typeof PARTS;

/** What a packet is made of. */
export interface PacketOf {
  readonly inputs: Inputs;
  readonly model: RoofModel;
  readonly packet: Packet;
  /** null where no part of it needs one. */
  readonly order: Result<Order> | null;
  /** In the roof's unit. */
  readonly kerf: number;
  readonly parts: ReadonlySet<PartName>;
  readonly paper: CardPaper;
}
