import { ROWS } from "../../../functions/arguments/roofBlock.ts";
import { WING_ROWS } from "../../../functions/arguments/wingRows.ts";
import { MOST_COLUMNS } from "../state/findBlock.ts";
import { ask, type PaneState } from "../state/paneState.ts";
import { readAgain } from "../state/sheetBlock.ts";
import { texts } from "../words/texts.ts";
import { cutAlready } from "./cutAlready.ts";
import { grownFormulas } from "./grownFormulas.ts";
import { layoutUpdate } from "./layoutUpdate.ts";
import { askSheet, once, fieldAtFault, writeStep } from "./sheetWork.ts";

/**
 * Writes what the fields say otherwise into the block they follow, once the user has seen which cells change.
 *
 * @returns whether the block now says what the fields say.
 */
export async function updateBlock(state: PaneState): Promise<boolean> {
  return (await once(state, () => updateNow(state))) ?? false;
}

/** The same as a part of something that is under way. */
export async function updateNow(state: PaneState): Promise<boolean> {
  const link = state.link.value;
  if (!link || fieldAtFault(state)) return false;
  const { area } = link;
  const whole = { ...area, rows: area.rows + ROWS.length + WING_ROWS.length + 3, columns: MOST_COLUMNS };
  let agreed: string | null = null;
  for (;;) {
    const cells = await askSheet(state, () => state.host.read(whole));
    const layout = layoutUpdate(area, cells, state.inputs.value, state.report.value.unit);
    const { blocks, changes } = layout;
    const lacking = layout.lacking.map(({ row, wing }) => texts.place(row, wing));
    if (blocks.length > 0) {
      const formulas = await askSheet(state, () => grownFormulas(state.host, area, layout.area));
      const now = JSON.stringify([changes, formulas]);
      if (now !== agreed) {
        const answer = await ask(state, {
          title: texts.ask.updateTitle,
          lines: [
            ...(agreed === null ? [] : [texts.ask.changedMeanwhile]),
            ...changes.map(texts.ask.change),
            ...cutAlready(link.inputs, state.inputs.value),
            ...(formulas.length > 0 ? [texts.ask.formulasGrow(formulas.length)] : []),
            ...(lacking.length > 0 ? [texts.lacking(lacking)] : []),
          ],
          choices: [{ id: "yes", label: texts.ask.updateYes }],
        });
        if (!answer) return false;
        // The cells are looked at again: the user may have typed in the sheet before answering.
        agreed = now;
        continue;
      }
      await writeStep(state, { title: texts.updated, blocks: [...blocks, ...formulas] });
    }
    state.link.value = (await readAgain(state.host, layout.area, link.name)) ?? link;
    if (lacking.length > 0) state.says.value = texts.lacking(lacking);
    return lacking.length === 0;
  }
}
