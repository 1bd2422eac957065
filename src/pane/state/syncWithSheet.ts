import { batch, effect } from "@preact/signals";
import type { Inputs } from "./fields.ts";
import { address } from "../../hosts/address.ts";
import type { Area, Host } from "../../hosts/host.ts";
import { newestOnly } from "./newestOnly.ts";
import type { PaneState } from "./paneState.ts";
import { areaText } from "./reference.ts";
import { PANE, readRemembered, rememberedText, type Remembered } from "./remembered.ts";
import { nameBlock } from "./nameBlock.ts";
import { blockUnder, differing, firstBlocks, followed, lostRows, readAgain, type SheetBlock } from "./sheetBlock.ts";
import { texts } from "../words/texts.ts";

/** Milliseconds without a change before the sheet is looked at, or the inputs are kept. */
const CALM = { selection: 80, change: 120, keep: 500 };

/** Keeps the pane and the workbook in step until the returned function stops it. */
export function syncWithSheet(state: PaneState): () => void {
  const { host } = state;
  let restored = false;
  const selected = newestOnly(
    CALM.selection,
    () => lookAtSelection(host),
    (_: void, seen) => showSelection(state, seen),
  );
  const changed = newestOnly(
    CALM.change,
    () => lookAtLink(state),
    (_: void) => selected.ask(),
  );
  // What was typed for one workbook is not kept in the next.
  const keep = newestOnly(
    CALM.keep,
    async (_: void) => restored && host.remember(PANE, rememberedText(remembered(state))),
  );
  const takeUp = () =>
    restore(state)
      .catch(() => undefined)
      .finally(() => {
        restored = true;
        selected.ask();
      });
  // Its sheets are read, so they must have come first.
  const other = newestOnly(CALM.change, takeUp, (_: void) => undefined);
  const stops = [
    host.onSelection(() => selected.ask()),
    host.onChange(() => changed.ask()),
    host.onOtherWorkbook(() => {
      restored = false;
      other.ask();
    }),
    effect(() => {
      void [state.inputs.value, state.link.value, state.measured.value, state.kerf.value];
      if (restored) keep.ask();
    }),
    ...[selected, changed, keep, other].map(({ stop }) => stop),
  ];
  void takeUp();
  return () => stops.forEach((stop) => stop());
}

function remembered({ inputs, link, measured, kerf }: PaneState): Remembered {
  const seen = link.value?.inputs;
  return {
    inputs: inputs.value,
    ...(seen && differing(inputs.value, seen).length > 0 && { seen }),
    link: link.value?.area ?? null,
    name: link.value?.name ?? null,
    measured: measured.value,
    kerf: kerf.value,
  };
}

/** Takes up what the workbook remembers, but for what the user typed while it was asked. */
async function restore(state: PaneState): Promise<void> {
  const [inputs, measured, kerf] = [state.inputs.value, state.measured.value, state.kerf.value];
  const text = await state.host.recall(PANE);
  const kept = text === null ? null : readRemembered(text);
  if (!kept) return takeUpBlock(state, inputs);
  const link = kept.link ? await readAgain(state.host, kept.link, kept.name) : null;
  // What was typed in the pane and is not in the block yet stays, unless the block says something new.
  const taken = link ? followed(kept.inputs, kept.seen ?? kept.inputs, link.inputs) : kept.inputs;
  batch(() => {
    state.inputs.value = followed(taken, inputs, state.inputs.value);
    if (state.measured.value === measured) state.measured.value = kept.measured;
    if (state.kerf.value === kerf) state.kerf.value = kept.kerf;
    state.link.value = link;
  });
  await followByName(state);
}

/** Takes up the block of a workbook that remembers nothing, or asks which; else sheet and pane would show two roofs. What is typed meanwhile stays. */
async function takeUpBlock(state: PaneState, inputs: Inputs): Promise<void> {
  const blocks = await firstBlocks(state.host);
  if (state.inputs.value !== inputs) return;
  const [block, ...others] = blocks;
  state.link.value = null;
  if (!block) return;
  if (others.length > 0) state.says.value = texts.severalBlocks(blocks.map(({ area }) => areaText(area)));
  else await useBlock(state, block, "");
}

/** What is selected, why the cell there shows an error, and the block around it. */
interface Selected {
  readonly area: Area;
  readonly message: string | null;
  readonly offer: SheetBlock | null;
}

async function lookAtSelection(host: Host): Promise<Selected> {
  const area = await host.selection();
  const message = await host.messageAt(area.sheet, area.row, area.column);
  return { area, message, offer: await blockUnder(host, area) };
}

function showSelection(state: PaneState, { area, message, offer }: Selected): void {
  batch(() => {
    state.selection.value = area;
    state.cellMessage.value = message === null ? null : { at: address(area.sheet, area.row, area.column), message };
    state.offer.value = offer;
  });
}

async function lookAtLink(state: PaneState): Promise<void> {
  const link = state.link.value;
  if (!link || state.work.value) return;
  const now = await readAgain(state.host, link.area, link.name);
  if (state.link.value !== link) return;
  if (!now) {
    state.link.value = null;
    state.says.value = texts.lostLink(areaText(link.area));
    return;
  }
  const lost = lostRows(link, now);
  // A row that is gone is no change of its value: the fields keep it, and it can be written back.
  const seen = { ...now.inputs, ...Object.fromEntries(lost.map((row) => [row, link.inputs[row]])) };
  const inputs = followed(state.inputs.value, link.inputs, seen);
  if (inputs === state.inputs.value && lost.length === 0 && areaText(now.area) === areaText(link.area)) return;
  batch(() => {
    state.inputs.value = inputs;
    state.link.value = now;
    if (lost.length > 0) state.says.value = texts.lostRows(lost, areaText(now.area));
  });
}

/** Has the workbook name the block that is followed, so that the sheet moves the link with the cells. */
async function followByName(state: PaneState): Promise<void> {
  const link = state.link.value;
  if (!link || link.name !== null) return;
  // Where the workbook takes no name the block is followed by its place, as long as it stays there.
  const name = await nameBlock(state.host, link.area).catch(() => null);
  if (state.link.value === link) state.link.value = { ...link, name };
}

/** Fills the fields from a block in the sheet and follows it from now on. */
export function useBlock(
  state: PaneState,
  block: SheetBlock,
  says = texts.usingBlock(areaText(block.area)),
): Promise<void> {
  batch(() => {
    state.inputs.value = block.inputs;
    state.link.value = block;
    state.says.value = says;
  });
  return followByName(state);
}
