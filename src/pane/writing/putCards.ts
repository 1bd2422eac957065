import { cardSheet } from "./cards.ts";
import { freeSheetName } from "./freeSheetName.ts";
import type { PaneState } from "../state/paneState.ts";
import { once, takeBack, whyOf, writeStep } from "./sheetWork.ts";
import { texts } from "../state/texts.ts";

/** Puts the cards into the sheet as pictures. Where the sheet takes none, nothing is left of it. */
export async function putCards(state: PaneState): Promise<void> {
  await once(state, () => putNow(state));
}

async function putNow(state: PaneState): Promise<void> {
  const { model } = state.report.value;
  if (!model) return;
  try {
    const sheet = freeSheetName(texts.sections.cards, await state.host.sheets());
    const { block, pictures } = cardSheet(model, sheet);
    if (!(await writeStep(state, { title: texts.sections.cards, blocks: [block] }))) return;
    for (const { row, svg, width, height } of pictures) {
      if (await state.host.picture(sheet, row, 0, svg, { width, height })) continue;
      await takeBack(state);
      state.says.value = texts.noPictures;
      return;
    }
    await state.host.show({ sheet, row: 0, column: 0, rows: 1, columns: 1 });
  } catch (error) {
    state.says.value = texts.failed(whyOf(error));
  }
}
