import { cardSheet } from "./cards.ts";
import { freeSheetName } from "./freeSheetName.ts";
import type { PaneState } from "../state/paneState.ts";
import { askSheet, once, takeBack, working, writeStep } from "./sheetWork.ts";
import { cardsGiven } from "./packetOf.ts";
import { texts } from "../words/texts.ts";

/** Puts the cards into the sheet as pictures, where it takes any: all of them or none. */
export async function putCards(state: PaneState): Promise<void> {
  await once(state, () => putNow(state));
}

async function putNow(state: PaneState): Promise<void> {
  const { host } = state;
  const { model } = state.report.value;
  const put = host.picture;
  if (!model || !put) return;
  const sheet = freeSheetName(texts.sections.cards, await askSheet(state, () => host.sheets()));
  const { block, pictures } = cardSheet(model, sheet, cardsGiven(state));
  await writeStep(state, { title: texts.sections.cards, blocks: [block] });
  try {
    await working(state, async (signal) => {
      for (const { row, svg, width, height } of pictures) {
        signal.throwIfAborted();
        await put.call(host, sheet, row, 0, svg, { width, height });
      }
    });
  } catch (error) {
    await takeBack(state);
    throw error;
  }
  await host.show({ sheet, row: 0, column: 0, rows: 1, columns: 1 });
}
