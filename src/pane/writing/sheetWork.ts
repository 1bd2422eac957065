import type { Row } from "../../../functions/arguments/roofBlock.ts";
import type { WriteStep, Written } from "../../hosts/host.ts";
import { areaText } from "../state/reference.ts";
import type { PaneState, Work } from "../state/paneState.ts";
import { readAgain } from "../state/sheetBlock.ts";
import { texts } from "../words/texts.ts";

/** What takes longer is shown while it goes on. Milliseconds. */
const SHOWN_AFTER = 500;

/** Why something failed, in words. */
export function whyOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}

/** What is said of a failure; a stop is none. */
function whyNot(error: unknown): string {
  return error instanceof DOMException && error.name === "AbortError" ? texts.stopped : texts.failed(whyOf(error));
}

/** Panes in which something is under way that a button began: its questions to the sheet and to the user, and what it writes. */
const busy = new WeakSet<PaneState>();

/**
 * Does what a button asks for, and says why where it fails; null then. Pressed again before that is over it does nothing, or a slow
 * sheet would be written twice.
 */
export async function once<T>(state: PaneState, task: () => Promise<T>): Promise<T | null> {
  if (busy.has(state)) return null;
  busy.add(state);
  const before = state.written.value.length;
  try {
    return await task();
  } catch (error) {
    // What was written before it failed stands, and was said.
    if (state.written.value.length <= before) state.says.value = whyNot(error);
    return null;
  } finally {
    busy.delete(state);
  }
}

/** The row that must be mended before anything is written, which is then said; null where there is none. */
export function rowAtFault(state: PaneState): Row | null {
  const [row = null] = Object.keys(state.report.value.messages) as Row[];
  if (row) state.says.value = texts.fixFirst(row);
  return row;
}

/** Does something that may take long: it is shown after a while, and can be stopped. */
export async function working<T>(
  state: PaneState,
  task: (signal: AbortSignal, progress: (done: number, of: number) => void) => Promise<T>,
): Promise<T> {
  const controller = new AbortController();
  const change = (more: Partial<Work>) => state.work.value && (state.work.value = { ...state.work.value, ...more });
  state.work.value = { done: 0, of: 0, shown: false, stop: () => controller.abort() };
  const timer = setTimeout(() => change({ shown: true }), SHOWN_AFTER);
  try {
    return await task(controller.signal, (done, of) => void change({ done, of }));
  } finally {
    clearTimeout(timer);
    state.work.value = null;
  }
}

/** Fails when the signal says stop. For what cannot be stopped itself and leaves nothing behind. */
export function stopped(signal: AbortSignal): Promise<never> {
  return new Promise((_, reject) => signal.addEventListener("abort", () => reject(signal.reason)));
}

/** Writes a step, with its progress shown when it takes long; it can be stopped. Fails where nothing was written. */
export async function writeStep(state: PaneState, step: WriteStep): Promise<Written> {
  const written = await working(state, async (signal, progress) => {
    const done = await state.host.write(step, { signal, progress });
    // A stop that came when the last cells were on their way, or being calculated, is one too.
    if (signal.aborted && (await state.host.takeBack(done)).length === 0) signal.throwIfAborted();
    return done;
  });
  state.written.value = [...state.written.value, written];
  // Of each sheet the first place.
  const places = new Map([...written.areas].reverse().map((area) => [area.sheet, areaText(area)]));
  state.says.value = texts.written(step.title, [...places.values()].reverse());
  return written;
}

/** Takes the last step back, or says which cells were edited since. A block that goes with it is followed no longer. */
export async function takeBack(state: PaneState): Promise<void> {
  const last = state.written.value.at(-1);
  if (!last) return;
  const edited = await working(state, () => state.host.takeBack(last));
  if (edited.length > 0) {
    state.says.value = texts.notTakenBack(edited);
    return;
  }
  const link = state.link.value;
  if (link && !(await readAgain(state.host, link))) state.link.value = null;
  state.written.value = state.written.value.filter((written) => written !== last);
  state.says.value = texts.takenBack(last.title);
}
