import type { Area } from "../../hosts/host.ts";
import { longValley } from "../state/fieldReading.ts";
import type { FieldPlace, Inputs, WingInputs } from "../state/fields.ts";
import { ask, type PaneState } from "../state/paneState.ts";
import { useBlock } from "../state/syncWithSheet.ts";
import { updateNow } from "./updateBlock.ts";
import { layoutFill, type FillLayout, type FillRequest, type TableToWrite } from "./layoutFill.ts";
import { report } from "../state/report.ts";
import { freeBlockName } from "../state/nameBlock.ts";
import { PartlyWritten } from "../../hosts/partlyWritten.ts";
import { differing, labels, readAgain } from "../state/sheetBlock.ts";
import { texts } from "../words/texts.ts";
import { askSheet, once, fieldAtFault, stopped, whyOf, working, writeStep } from "./sheetWork.ts";

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
 * @returns the field that must be mended first, or null.
 */
export function fill(state: PaneState, choice: Choice): Promise<FieldPlace | null> {
  return once(state, async () => {
    const wrong = fieldAtFault(state);
    const { general } = state.report.value;
    if (general) state.says.value = texts.fixGeneral(general);
    else if (!wrong) await fillNow(state, choice);
    return wrong;
  });
}

async function fillNow(state: PaneState, choice: Choice): Promise<void> {
  const before = state.written.value.length;
  if (!choice.block && !(await blockAgrees(state))) return;
  const said = state.says.value;
  const request = await requestFor(state, choice);
  if (typeof request === "string") {
    state.says.value = request;
    return;
  }
  const layout = await agreed(state, request);
  if (!layout) {
    // The block was written all the same, which was said.
    if (state.written.value.length > before) state.says.value = said;
    return;
  }
  const name = request.inputs === null ? null : request.name;
  // The tables read the block by its name, which can stand only on a sheet that is there.
  await writeStep(state, layout.step, async () => {
    if (name !== null)
      await state.host.nameArea(name, layout.block).catch((cause: unknown) => {
        throw new PartlyWritten(texts.notNamed(layout.step.title, whyOf(cause)), null, { cause });
      });
    // It is written in any case. Said only when all this is over, for a press on what undoes it would be lost meanwhile.
    await showAndFollow(state, layout, name).catch(() => undefined);
  });
}

/** Goes to what was written; the fields follow a block that was written with it. */
async function showAndFollow(state: PaneState, { step, block }: FillLayout, name: string | null): Promise<void> {
  await state.host.show({ ...step.blocks[0]!, rows: 1, columns: 1 });
  if (name === null) return;
  const read = await readAgain(state.host, block, name);
  if (read) await useBlock(state, read, state.says.value);
}

/** Tables hang on the block in the sheet: where the fields say otherwise, the user decides what counts. */
async function blockAgrees(state: PaneState): Promise<boolean> {
  const link = state.link.value;
  const places = link ? differing(state.inputs.value, link.inputs) : [];
  if (places.length === 0) return true;
  const answer = await ask(state, {
    title: texts.ask.differsTitle,
    lines: [texts.differs(places.map(({ row, wing }) => texts.place(row, wing))), texts.ask.differsWhy],
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
  const inputs = ownBlock ? withLongValleys(state.inputs.value) : link.inputs;
  // The place is the one that the user sees now: the tables may take long, and the selection move on.
  const at = choice.newSheets ? null : await askSheet(state, () => host.selection());
  const tables = await working(state, async (signal) => Promise.race([choice.tables(inputs), stopped(signal)]));
  if (typeof tables === "string") return texts.fixGeneral(tables);
  if (!choice.block && tables.length === 0) return texts.nothingChosen;
  return {
    inputs: ownBlock ? inputs : null,
    block: link && { area: link.area, lines: labels(await askSheet(state, () => host.read(link.area))) },
    name: ownBlock ? freeBlockName([...(await askSheet(state, () => host.namedAreas())).keys()]) : link.name,
    // What hangs on the sheet's block is in the unit of that one.
    unit: report(inputs).unit,
    tables,
    at,
    sheets: await askSheet(state, () => host.sheets()),
  };
}

/** The inputs with the long valley that each wing gets, so that a later change of the roof does not turn it over. */
function withLongValleys(inputs: Inputs): Inputs {
  const { model } = report(inputs);
  if (!model) return inputs;
  const chosen = (wing: WingInputs) => wing["Long valley"].trim() || (longValley(model.frame, wing.letter) ?? "");
  return { ...inputs, wings: inputs.wings.map((wing) => ({ ...wing, "Long valley": chosen(wing) })) };
}

/** A layout that nothing stands in the way of, or that the user agreed to in spite of what does; null when nothing is to be written. */
async function agreed(state: PaneState, request: FillRequest): Promise<FillLayout | null> {
  const layout = layoutFill(request);
  const { ask: words } = texts;
  let seen: readonly string[] | null = null;
  for (;;) {
    const filled = await askSheet(state, () => state.host.occupied(layout.step));
    // Looked at again after the answer: what stands there by now is asked about too.
    if (filled.every((cell) => seen?.includes(cell))) return layout;
    const answer = await ask(state, {
      title: words.occupiedTitle,
      lines: [...(seen ? [words.changedMeanwhile] : []), words.occupied(filled), words.nothingYet],
      choices: [
        { id: "beside", label: words.beside },
        { id: "sheets", label: words.newSheets },
        { id: "over", label: words.over, sure: words.overSure(filled.length) },
      ],
    });
    if (answer === null) return null;
    if (answer === "sheets") return layoutFill({ ...request, at: null });
    if (answer === "beside") {
      const free = await besideWhatIsThere(state, request);
      if (!free) state.says.value = texts.fixGeneral(words.noRoom);
      return free;
    }
    seen = filled;
  }
}

async function besideWhatIsThere(state: PaneState, request: FillRequest): Promise<FillLayout | null> {
  const at = request.at as Pick<Area, "sheet" | "row" | "column">;
  for (let step = 1; step <= TRIES; step++) {
    const layout = layoutFill({ ...request, at: { ...at, column: at.column + step } });
    const filled = await askSheet(state, () => state.host.occupied(layout.step));
    if (filled.length === 0) return layout;
  }
  return null;
}
