import type { PaneState } from "../state/paneState.ts";
import { texts } from "../words/texts.ts";
import { freeSheetName } from "./freeSheetName.ts";
import { askSheet, keepWritten, once, working } from "./sheetWork.ts";

/** Copies the sheet that is seen with plain values, where the host can: to hand on, while the original keeps its formulas. */
export async function copyPlain(state: PaneState): Promise<void> {
  const { host } = state;
  await once(state, async () => {
    if (!host.copyPlain) return;
    const { sheet } = await askSheet(state, () => host.selection());
    const name = freeSheetName(texts.plainSheet(sheet), await askSheet(state, () => host.sheets()));
    await working(state, () => keepWritten(state, () => host.copyPlain!(sheet, name)));
    state.says.value = texts.plainCopied(sheet, name);
    await host.show({ sheet: name, row: 0, column: 0, rows: 1, columns: 1 });
  });
}
