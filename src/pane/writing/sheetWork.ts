import type { WriteStep, Written } from "../../hosts/host.ts";
import { PartlyWritten } from "../../hosts/partlyWritten.ts";
import { areaText } from "../state/reference.ts";
import type { PaneState, Work } from "../state/paneState.ts";
import type { FieldPlace } from "../state/fields.ts";
import { faultyField } from "../state/report.ts";
import { readAgain } from "../state/sheetBlock.ts";
import { texts } from "../words/texts.ts";

/** What takes longer is shown while it goes on. Milliseconds. */
const SHOWN_AFTER = 500;

/** How long a sheet that was told to stop may take to answer. Milliseconds. */
const PATIENCE = 10_000;

/** Why something failed, in words. */
export function whyOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}

/** What is said of a failure; a stop is none. */
function whyNot(error: unknown): string {
  if (error instanceof PartlyWritten) return error.message;
  return error instanceof DOMException && error.name === "AbortError" ? texts.stopped : texts.failed(whyOf(error));
}

/** What is under way in a pane, which a button began: its questions to the sheet and to the user, and what it writes. */
interface Task {
  /** How many steps could be undone when it began. */
  readonly before: number;
  readonly end: Promise<unknown>;
}

const busy = new WeakMap<PaneState, Task>();

/**
 * Does what a button asks for, and says why where it fails; null then. Pressed again before that is over it does nothing, or a slow
 * sheet would be written twice.
 */
export async function once<T>(state: PaneState, task: () => Promise<T>): Promise<T | null> {
  if (busy.has(state)) return null;
  const before = state.written.value.length;
  const end = attempt(state, task, before);
  busy.set(state, { before, end });
  return end.finally(() => busy.delete(state));
}

async function attempt<T>(state: PaneState, task: () => Promise<T>, before: number): Promise<T | null> {
  try {
    return await task();
  } catch (error) {
    // What was written before it failed stands, and was said.
    if (error instanceof PartlyWritten || state.written.value.length <= before) state.says.value = whyNot(error);
    return null;
  }
}

/**
 * Takes the last step back for a button. It can be pressed as soon as the step is written; what still belongs to that, such as its name,
 * is waited for.
 */
export async function undo(state: PaneState): Promise<void> {
  const now = busy.get(state);
  if (now && state.written.value.length > now.before) await now.end;
  await once(state, () => takeBack(state));
}

/** The field that must be mended before anything is written, which is then said; null where there is none. */
export function fieldAtFault(state: PaneState): FieldPlace | null {
  const place = faultyField(state.report.value);
  if (place) state.says.value = texts.fixFirst(texts.place(place.row, place.wing));
  return place;
}

/** Does something that may take long: it is shown after a while, and can be stopped. A sheet that then does not answer is not waited for. */
export async function working<T>(
  state: PaneState,
  task: (signal: AbortSignal, progress: (done: number, of: number) => void) => Promise<T>,
): Promise<T> {
  const controller = new AbortController();
  const change = (more: Partial<Work>) => state.work.value && (state.work.value = { ...state.work.value, ...more });
  state.work.value = { done: 0, of: 0, shown: false, stop: () => controller.abort() };
  const timers = [setTimeout(() => change({ shown: true }), SHOWN_AFTER)];
  const unanswered = new Promise<never>((_, reject) =>
    controller.signal.addEventListener("abort", () => {
      timers.push(setTimeout(() => reject(new PartlyWritten(texts.noAnswer)), PATIENCE));
    }),
  );
  try {
    return await Promise.race([task(controller.signal, (done, of) => void change({ done, of })), unanswered]);
  } finally {
    for (const timer of timers) clearTimeout(timer);
    state.work.value = null;
  }
}

/** Fails when the signal says stop. For what cannot be stopped itself and leaves nothing behind. */
export function stopped(signal: AbortSignal): Promise<never> {
  return new Promise((_, reject) => signal.addEventListener("abort", () => reject(signal.reason)));
}

/** Asks the sheet something, which can be stopped as it is. */
export function askSheet<T>(state: PaneState, question: () => Promise<T>): Promise<T> {
  return working(state, (signal) => Promise.race([question(), stopped(signal)]));
}

/** Writes, and keeps what undoes it, also of what was left where it failed. At once: what comes when nobody waits any more can still be undone. */
export async function keepWritten(state: PaneState, writes: () => Promise<Written>): Promise<Written> {
  const keep = (written: Written) => (state.written.value = [...state.written.value, written]);
  try {
    return keep(await writes()).at(-1)!;
  } catch (error) {
    if (error instanceof PartlyWritten && error.written) keep(error.written);
    throw error;
  }
}

/**
 * Writes a step, with its progress shown when it takes long; it can be stopped. Fails where nothing was written, and says where something was left.
 *
 * @param besides what belongs to it and can come only when it is written; before that nothing is said to be.
 */
export function writeStep(state: PaneState, step: WriteStep, besides?: () => Promise<void>): Promise<Written> {
  return working(state, async (signal, progress) => {
    const written = await keepWritten(state, async () => {
      const done = await state.host.write(step, { signal, progress });
      // A stop that came when the last cells were on their way, or being calculated, is one too.
      if (signal.aborted && (await takenBack(state, done, done)).length === 0) signal.throwIfAborted();
      return done;
    });
    await besides?.();
    // Of each sheet the first place.
    const places = new Map([...written.areas].reverse().map((area) => [area.sheet, areaText(area)]));
    const said = texts.written(step.title, [...places.values()].reverse());
    state.says.value = written.hint === undefined ? said : `${said} ${written.hint}`;
    return written;
  });
}

/** Takes a write back; where that fails it is left, and kept if it is not yet, so that it can be pressed again. */
async function takenBack(state: PaneState, written: Written, left: Written | null): Promise<readonly string[]> {
  try {
    return await state.host.takeBack(written);
  } catch (error) {
    throw new PartlyWritten(texts.undoFailed(whyOf(error)), left, { cause: error });
  }
}

/** Takes the last step back, or says which cells were edited since. A block that goes with it is followed no longer. */
export async function takeBack(state: PaneState): Promise<void> {
  const last = state.written.value.at(-1);
  if (!last) return;
  const edited = await working(state, () => takenBack(state, last, null));
  if (edited.length > 0) {
    state.says.value = texts.notTakenBack(edited);
    return;
  }
  state.written.value = state.written.value.filter((written) => written !== last);
  state.says.value = texts.takenBack(last.title);
  const link = state.link.value;
  if (link && !(await readAgain(state.host, link.area, link.name).catch(() => link))) state.link.value = null;
}
