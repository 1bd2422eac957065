import type { CardPaper } from "../../drawing/cards/cardStyles.ts";
import type { PaneState } from "../state/paneState.ts";
import { rememberedText } from "../state/remembered.ts";

/** What is to be printed of a roof. */
export interface Printed {
  readonly paper: CardPaper["paper"];
  /** The cut cards, so many to a page; null for the cutting plan. */
  readonly perPage: CardPaper["perPage"] | null;
  /** The order is worked out too: the cards then say which board each piece comes from. */
  readonly plan: boolean;
}

/** The page that prints by itself, with what it prints behind the #: that part of an address is not sent to any server. */
export function printAddress({ inputs, kerf }: Pick<PaneState, "inputs" | "kerf">, printed: Printed): string {
  // As the workbook remembers it, without the empty fields: an address is to be short.
  const text = rememberedText({ inputs: inputs.value, kerf: kerf.value, link: null, name: null, measured: {} });
  const roof: unknown = JSON.parse(text, (_, value: unknown) => (value === "" ? undefined : value));
  return `print.html#${encodeURIComponent(JSON.stringify({ ...printed, roof }))}`;
}

/** Opens that page in the system's browser, where the host can. */
export function openedElsewhere(state: PaneState, printed: Printed): (() => void) | undefined {
  const { openPage } = state.host;
  return openPage && (() => openPage(printAddress(state, printed)));
}
