import { ask, type PaneState } from "../state/paneState.ts";
import { readAgain } from "../state/sheetBlock.ts";
import { texts } from "../words/texts.ts";
import { layoutUpdate, type UpdateLayout } from "./layoutUpdate.ts";
import { once, whyOf, writeStep } from "./sheetWork.ts";

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
  if (!link) return false;
  const wrong = Object.keys(state.report.value.messages)[0];
  if (wrong) {
    state.says.value = texts.fixFirst(wrong);
    return false;
  }
  try {
    const layout = layoutUpdate(
      link.area,
      await state.host.read(link.area),
      state.inputs.value,
      state.report.value.unit,
    );
    if (layout.blocks.length > 0 && !(await agreedTo(state, layout))) return false;
    if (layout.blocks.length > 0 && !(await writeStep(state, { title: texts.updated, blocks: layout.blocks })))
      return false;
    state.link.value = (await readAgain(state.host, link.area)) ?? link;
    if (layout.lacking.length > 0) state.says.value = texts.lacking(layout.lacking);
    return layout.lacking.length === 0;
  } catch (error) {
    state.says.value = texts.failed(whyOf(error));
    return false;
  }
}

async function agreedTo(state: PaneState, { changes, lacking }: UpdateLayout): Promise<boolean> {
  const answer = await ask(state, {
    title: texts.ask.updateTitle,
    lines: [...changes.map(texts.ask.change), ...(lacking.length > 0 ? [texts.lacking(lacking)] : [])],
    choices: [
      { id: "yes", label: texts.ask.updateYes },
      { id: "cancel", label: texts.ask.cancel },
    ],
  });
  if (answer !== "yes") state.says.value = texts.ask.cancelled;
  return answer === "yes";
}
