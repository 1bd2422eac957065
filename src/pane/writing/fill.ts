import { Refusal } from "../../registry/refusal.ts";
import type { Area } from "../../hosts/host.ts";
import type { Inputs } from "../state/fields.ts";
import { ask, type PaneState } from "../state/paneState.ts";
import { useBlock } from "../state/syncWithSheet.ts";
import { updateNow } from "./updateBlock.ts";
import { layoutFill, type FillLayout, type FillRequest, type TableToWrite } from "./layoutFill.ts";
import { report } from "../state/report.ts";
import { differing, labels, readAgain } from "../state/sheetBlock.ts";
import { texts } from "../words/texts.ts";
import { once, stopped, whyNot, working, writeStep } from "./sheetWork.ts";

/** What the user chose to write, and where. */
export interface Choice {
  /** The block itself; without it the tables hang on the block that the fields follow. */
  readonly block: boolean;
  /** The tables for a block of these inputs, or why one cannot be made. */
  tables(inputs: Inputs): Promise<readonly TableToWrite[] | Refusal> | readonly TableToWrite[] | Refusal;
  readonly newSheets: boolean;
}

/** How far to the right a free place is looked for before giving up. */
const TRIES = 40;

/**
 * Fills the sheet with what was chosen. Nothing is written before every filled cell in the way is named and decided on.
 *
 * @returns the row of the block that must be mended first, or null.
 */
export function fill(state: PaneState, choice: Choice): Promise<string | null> {
  return once(state, () => tryToFill(state, choice));
}

async function tryToFill(state: PaneState, choice: Choice): Promise<string | null> {
  const { messages, general } = state.report.value;
  const wrong = Object.keys(messages)[0];
  if (wrong) {
    state.says.value = texts.fixFirst(wrong);
    return wrong;
  }
  try {
    if (general) state.says.value = texts.fixGeneral(general);
    else await fillNow(state, choice);
  } catch (error) {
    state.says.value = whyNot(error);
  }
  return null;
}

async function fillNow(state: PaneState, choice: Choice): Promise<void> {
  if (!choice.block && !(await blockAgrees(state))) return;
  const request = await requestFor(state, choice);
  if (typeof request === "string") {
    state.says.value = request;
    return;
  }
  const layout = await agreed(state, request);
  if (!layout) return;
  if (!(await writeStep(state, layout.step))) return;
  await state.host.show({ ...layout.step.blocks[0]!, rows: 1, columns: 1 });
  const block = choice.block ? await readAgain(state.host, layout.block) : null;
  if (block) useBlock(state, block, state.says.value);
}

/** Tables hang on the block in the sheet: where the fields say otherwise, the user decides what counts. */
async function blockAgrees(state: PaneState): Promise<boolean> {
  const link = state.link.value;
  const rows = link ? differing(state.inputs.value, link.inputs) : [];
  if (rows.length === 0) return true;
  const { ask: words } = texts;
  const answer = await ask(state, {
    title: words.differsTitle,
    lines: [texts.differs(rows), words.differsWhy],
    choices: [
      { id: "update", label: texts.update },
      { id: "sheet", label: words.asInSheet },
      { id: "cancel", label: words.cancel },
    ],
  });
  if (answer === "update") return updateNow(state);
  if (answer === "cancel") state.says.value = words.cancelled;
  return answer === "sheet";
}

/** Everything a layout is made from, or why there is none. */
async function requestFor(state: PaneState, choice: Choice): Promise<FillRequest | string> {
  const { host } = state;
  const link = state.link.value;
  const ownBlock = choice.block || !link;
  const inputs = ownBlock ? state.inputs.value : link.inputs;
  const tables = await working(state, async (signal) => Promise.race([choice.tables(inputs), stopped(signal)]));
  if (tables instanceof Refusal) return texts.fixGeneral(tables.message);
  if (!choice.block && tables.length === 0) return texts.nothingChosen;
  return {
    inputs: ownBlock ? inputs : null,
    block: link && { area: link.area, lines: labels(await host.read(link.area)) },
    // What hangs on the sheet's block is in the unit of that one.
    unit: report(inputs).unit,
    tables,
    at: choice.newSheets ? null : await host.selection(),
    sheets: await host.sheets(),
  };
}

/** A layout that nothing stands in the way of, or that the user agreed to in spite of what does; null when nothing is to be written. */
async function agreed(state: PaneState, request: FillRequest): Promise<FillLayout | null> {
  const layout = layoutFill(request);
  const filled = await state.host.occupied(layout.step);
  if (filled.length === 0) return layout;
  const { ask: words } = texts;
  const answer = await ask(state, {
    title: words.occupiedTitle,
    lines: [words.occupied(filled), words.nothingYet],
    choices: [
      { id: "beside", label: words.beside },
      { id: "sheets", label: words.newSheets },
      { id: "over", label: words.over, sure: words.overSure(filled.length) },
      { id: "cancel", label: words.cancel },
    ],
  });
  if (answer === "over") return layout;
  if (answer === "sheets") return layoutFill({ ...request, at: null });
  if (answer !== "beside") {
    state.says.value = texts.ask.cancelled;
    return null;
  }
  const free = await besideWhatIsThere(state, request);
  if (!free) state.says.value = texts.fixGeneral(words.noRoom);
  return free;
}

async function besideWhatIsThere(state: PaneState, request: FillRequest): Promise<FillLayout | null> {
  const at = request.at as Pick<Area, "sheet" | "row" | "column">;
  for (let step = 1; step <= TRIES; step++) {
    const layout = layoutFill({ ...request, at: { ...at, column: at.column + step } });
    const filled = await state.host.occupied(layout.step);
    if (filled.length === 0) return layout;
  }
  return null;
}
