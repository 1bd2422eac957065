import type { Row } from "../../../functions/arguments/roofBlock.ts";
import type { Area } from "../../hosts/host.ts";
import type { Inputs } from "../state/fields.ts";
import { ask, type PaneState } from "../state/paneState.ts";
import { useBlock } from "../state/syncWithSheet.ts";
import { updateNow } from "./updateBlock.ts";
import { layoutFill, type FillLayout, type FillRequest, type TableToWrite } from "./layoutFill.ts";
import { report } from "../state/report.ts";
import { freeBlockName } from "../state/nameBlock.ts";
import { differing, readAgain } from "../state/sheetBlock.ts";
import { texts } from "../words/texts.ts";
import { once, rowAtFault, stopped, working, writeStep } from "./sheetWork.ts";

/** What the user chose to write, and where. */
export interface Choice {
  /** The block itself; without it the tables hang on the block that the fields follow. */
  readonly block: boolean;
  /** The tables for a block of these inputs, or why one cannot be made. */
  tables(inputs: Inputs): Promise<readonly TableToWrite[] | string> | readonly TableToWrite[] | string;
  readonly newSheets: boolean;
}

/** How far to the right a free place is looked for before giving up. */
const TRIES = 40;

/**
 * Fills the sheet with what was chosen. Nothing is written before every filled cell in the way is named and decided on.
 *
 * @returns the row of the block that must be mended first, or null.
 */
export function fill(state: PaneState, choice: Choice): Promise<Row | null> {
  return once(state, async () => {
    const wrong = rowAtFault(state);
    const { general } = state.report.value;
    if (general) state.says.value = texts.fixGeneral(general);
    else if (!wrong) await fillNow(state, choice);
    return wrong;
  });
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
  await writeStep(state, layout.step);
  await state.host.show({ ...layout.step.blocks[0]!, rows: 1, columns: 1 });
  const { inputs, name } = request;
  if (inputs === null || name === null) return;
  // The tables read the block by its name, which can stand only on a sheet that is there.
  await state.host.nameArea(name, layout.block);
  const block = await readAgain(state.host, { area: layout.block, name });
  if (block) useBlock(state, block, state.says.value);
}

/** Tables hang on the block in the sheet: where the fields say otherwise, the user decides what counts. */
async function blockAgrees(state: PaneState): Promise<boolean> {
  const link = state.link.value;
  const rows = link ? differing(state.inputs.value, link.inputs) : [];
  if (rows.length === 0) return true;
  const answer = await ask(state, {
    title: texts.ask.differsTitle,
    lines: [texts.differs(rows), texts.ask.differsWhy],
    choices: [
      { id: "update", label: texts.update },
      { id: "sheet", label: texts.ask.asInSheet },
    ],
  });
  return answer === "update" ? updateNow(state) : answer === "sheet";
}

/** Everything a layout is made from, or why there is none. */
async function requestFor(state: PaneState, choice: Choice): Promise<FillRequest | string> {
  const { host } = state;
  const link = state.link.value;
  const ownBlock = choice.block || !link;
  const inputs = ownBlock ? state.inputs.value : link.inputs;
  const tables = await working(state, async (signal) => Promise.race([choice.tables(inputs), stopped(signal)]));
  if (typeof tables === "string") return texts.fixGeneral(tables);
  if (!choice.block && tables.length === 0) return texts.nothingChosen;
  return {
    inputs: ownBlock ? inputs : null,
    block: link && { area: link.area, lines: link.lines },
    name: ownBlock ? freeBlockName([...(await host.namedAreas()).keys()]) : link.name,
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
    ],
  });
  if (answer === null) return null;
  if (answer === "over") return layout;
  if (answer === "sheets") return layoutFill({ ...request, at: null });
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
