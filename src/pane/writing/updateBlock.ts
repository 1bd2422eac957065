import { ROWS } from "../../../functions/arguments/roofBlock.ts";
import { ask, type PaneState } from "../state/paneState.ts";
import { readAgain } from "../state/sheetBlock.ts";
import { texts } from "../words/texts.ts";
import { layoutUpdate } from "./layoutUpdate.ts";
import { once, rowAtFault, writeStep } from "./sheetWork.ts";

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
  if (!link || rowAtFault(state)) return false;
  const { area } = link;
  // The lines below it too: a row that it lacks may go there.
  const cells = await state.host.read({ ...area, rows: area.rows + ROWS.length });
  const { blocks, changes, lacking } = layoutUpdate(area, cells, state.inputs.value, state.report.value.unit);
  if (blocks.length > 0) {
    const answer = await ask(state, {
      title: texts.ask.updateTitle,
      lines: [...changes.map(texts.ask.change), ...(lacking.length > 0 ? [texts.lacking(lacking)] : [])],
      choices: [{ id: "yes", label: texts.ask.updateYes }],
    });
    if (!answer) return false;
    await writeStep(state, { title: texts.updated, blocks });
  }
  state.link.value = (await readAgain(state.host, link)) ?? link;
  if (lacking.length > 0) state.says.value = texts.lacking(lacking);
  return lacking.length === 0;
}
