import type { CardPaper } from "../../drawing/cards/cardStyles.ts";
import type { PaneState } from "../state/paneState.ts";
import { roofText } from "../state/remembered.ts";

/** What is to be printed of a roof. */
export interface Printed {
  readonly paper: CardPaper["paper"];
  /** The cut cards, so many to a page; null for the cutting plan. */
  readonly perPage: CardPaper["perPage"] | null;
  /** The order is worked out too: the cards then say which board each piece comes from. */
  readonly plan: boolean;
}

/** The whole packet: the page itself asks what shall be in it. */
export interface PacketPrinted {
  readonly packet: true;
}

type Typed = Pick<PaneState, "inputs" | "kerf">;

/** The page that prints, with what it prints behind the #: that part of an address is not sent to any server. */
export const printAddress = (state: Typed, printed: Printed | PacketPrinted): string =>
  addressOf("print.html", state, printed);

/** The page for the saw, with the roof behind the # in the same way. */
export const sawAddress = (page: string, state: Typed): string => addressOf(page, state, {});

/** The page that shows the drawing large. */
export const drawingAddress = (state: Typed): string => addressOf("drawing.html", state, {});

function addressOf(page: string, { inputs, kerf }: Typed, asked: object): string {
  // As the workbook remembers it, without the empty fields: an address is to be short.
  const text = roofText({ inputs: inputs.value, kerf: kerf.value });
  const roof: unknown = JSON.parse(text, (_, value: unknown) => (value === "" ? undefined : value));
  return `${page}#${encodeURIComponent(JSON.stringify({ ...asked, roof }))}`;
}

/** Opens what is printed in a page of its own, where the host can. */
export function openedElsewhere(state: PaneState, printed: Printed): (() => void) | undefined {
  const { openPage } = state.host;
  return openPage && (() => openPage(printAddress(state, printed)));
}
