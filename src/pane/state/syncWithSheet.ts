import { batch, effect } from "@preact/signals";
import { address } from "../../hosts/address.ts";
import { ask, type PaneState } from "./paneState.ts";
import { layoutUpdate, type UpdateLayout } from "../writing/layoutUpdate.ts";
import { areaText } from "./reference.ts";
import { readRemembered, type Remembered } from "./remembered.ts";
import { blockUnder, followed, readAgain, type SheetBlock } from "./sheetBlock.ts";
import { once, whyOf, writeStep } from "../writing/sheetWork.ts";
import { texts } from "./texts.ts";

/** Milliseconds without a change before the sheet is looked at, or the inputs are kept. */
const CALM = { selection: 80, change: 120, keep: 500 };
const KEY = "pane";

/** Keeps the pane and the workbook in step until the returned function stops it. */
export function syncWithSheet(state: PaneState): () => void {
  const { host } = state;
  let restored = false;
  const looks = { count: 0 };
  const selected = calm(CALM.selection, () => lookAtSelection(state, looks));
  const changed = calm(CALM.change, () => lookAtLink(state).then(() => lookAtSelection(state, looks)));
  // What was typed for one workbook is not kept in the next.
  const keep = calm(
    CALM.keep,
    async () =>
      restored &&
      host.remember(
        KEY,
        JSON.stringify({
          inputs: state.inputs.value,
          link: state.link.value?.area ?? null,
          measured: state.measured.value,
          kerf: state.kerf.value,
        } satisfies Remembered),
      ),
  );
  const takeUp = () =>
    restore(state)
      .catch(() => undefined)
      .finally(() => {
        restored = true;
        selected();
      });
  // Its sheets are read, so they must have come first.
  const other = calm(CALM.change, () => takeUp().then(keep));
  const stops = [
    host.onSelection(selected),
    host.onChange(changed),
    host.onOtherWorkbook(() => {
      restored = false;
      other();
    }),
    effect(() => {
      void [state.inputs.value, state.link.value, state.measured.value, state.kerf.value];
      if (restored) keep();
    }),
  ];
  void takeUp();
  return () => stops.forEach((stop) => stop());
}

/** Runs a task once things have calmed down. One that fails (a cell is being edited, say) is left until the next time. */
function calm(wait: number, task: () => Promise<unknown>): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  return () => {
    clearTimeout(timer);
    timer = setTimeout(() => void task().catch(() => undefined), wait);
  };
}

/** Takes up what the workbook remembers, but for what the user typed while it was asked. */
async function restore(state: PaneState): Promise<void> {
  const [inputs, measured, kerf] = [state.inputs.value, state.measured.value, state.kerf.value];
  const text = await state.host.recall(KEY);
  const kept = text === null ? null : readRemembered(text);
  if (!kept) return;
  const link = kept.link ? await readAgain(state.host, kept.link) : null;
  batch(() => {
    state.inputs.value = followed(link?.inputs ?? kept.inputs, inputs, state.inputs.value);
    if (state.measured.value === measured) state.measured.value = kept.measured;
    if (state.kerf.value === kerf) state.kerf.value = kept.kerf;
    state.link.value = link;
  });
}

async function lookAtSelection(state: PaneState, looks: { count: number }): Promise<void> {
  const { host } = state;
  const mine = ++looks.count;
  const area = await host.selection();
  const message = await host.messageAt(area.sheet, area.row, area.column);
  const offer = await blockUnder(host, area);
  // A later look has overtaken this one.
  if (mine !== looks.count) return;
  batch(() => {
    state.selection.value = area;
    state.cellMessage.value = message === null ? null : { at: address(area.sheet, area.row, area.column), message };
    state.offer.value = offer;
  });
}

async function lookAtLink(state: PaneState): Promise<void> {
  const link = state.link.value;
  if (!link || state.work.value) return;
  const now = await readAgain(state.host, link.area);
  if (state.link.value !== link) return;
  if (!now) {
    state.link.value = null;
    state.says.value = texts.lostLink(areaText(link.area));
    return;
  }
  const inputs = followed(state.inputs.value, link.inputs, now.inputs);
  if (inputs === state.inputs.value) return;
  batch(() => {
    state.inputs.value = inputs;
    state.link.value = now;
  });
}

/** Fills the fields from a block in the sheet and follows it from now on. */
export function useBlock(state: PaneState, block: SheetBlock, says = texts.usingBlock(areaText(block.area))): void {
  batch(() => {
    state.inputs.value = block.inputs;
    state.link.value = block;
    state.says.value = says;
  });
}

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
    const plan = layoutUpdate(link.area, await state.host.read(link.area), state.inputs.value, state.report.value.unit);
    if (plan.blocks.length > 0 && !(await agreedTo(state, plan))) return false;
    if (plan.blocks.length > 0 && !(await writeStep(state, { title: texts.updated, blocks: plan.blocks })))
      return false;
    state.link.value = (await readAgain(state.host, link.area)) ?? link;
    if (plan.lacking.length > 0) state.says.value = texts.lacking(plan.lacking);
    return plan.lacking.length === 0;
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
