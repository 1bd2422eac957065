import type { WriteStep, Written } from "../hosts/host.ts";
import { areaText } from "./reference.ts";
import type { PaneState } from "./paneState.ts";
import { readAgain } from "./sheetBlock.ts";
import { texts } from "./texts.ts";

/** What takes longer is shown while it goes on. Milliseconds. */
const SHOWN_AFTER = 500;

/** Why something failed, in words. */
export function whyOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}

/** Writes a step, with its progress shown when it takes long; it can be stopped. Gives null when nothing was written. */
export async function writeStep(state: PaneState, step: WriteStep): Promise<Written | null> {
  const controller = new AbortController();
  state.work.value = { done: 0, of: 1, shown: false, stop: () => controller.abort() };
  const timer = setTimeout(() => state.work.value && (state.work.value = { ...state.work.value, shown: true }), SHOWN_AFTER);
  try {
    const written = await state.host.write(step, {
      signal: controller.signal,
      progress: (done, of) => state.work.value && (state.work.value = { ...state.work.value, done, of }),
    });
    state.written.value = [...state.written.value, written];
    state.says.value = texts.written(step.title, areaText(written.areas[0]!));
    return written;
  } catch (error) {
    state.says.value = controller.signal.aborted ? texts.stopped : texts.failed(whyOf(error));
    return null;
  } finally {
    clearTimeout(timer);
    state.work.value = null;
  }
}

/** Takes the last step back, or says which cells were edited since. A block that goes with it is followed no longer. */
export async function takeBack(state: PaneState): Promise<void> {
  const last = state.written.value.at(-1);
  if (!last || state.work.value) return;
  state.work.value = { done: 0, of: 1, shown: false, stop: () => undefined };
  try {
    const edited = await state.host.takeBack(last);
    if (edited.length > 0) {
      state.says.value = texts.notTakenBack(edited);
      return;
    }
    const link = state.link.value;
    if (link && !(await readAgain(state.host, link.area))) state.link.value = null;
    state.written.value = state.written.value.filter((written) => written !== last);
    state.says.value = texts.takenBack(last.title);
  } catch (error) {
    state.says.value = texts.failed(whyOf(error));
  } finally {
    state.work.value = null;
  }
}
