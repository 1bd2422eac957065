import { ICommandService } from "@univerjs/core";
import { onEdit } from "./onEdit.ts";
import type { EmbeddedSheet } from "./runningSheet.ts";

// What is edited in live parts, on which no formula hangs: rules for what may be typed, notes.
const LIVE = /^(?:data-validation\.mutation\.|sheet\.mutation\.(?:update-note|remove-note|toggle-note))/;

/** Calls back after everything that a user changed in the sheet, or had changed. */
export function watchEdits({ univer }: EmbeddedSheet, listener: () => void): void {
  const injector = univer.__getInjector();
  onEdit(injector, (edited) => void (edited && listener()));
  injector
    .get(ICommandService)
    .onCommandExecuted(({ id }, options) => void (LIVE.test(id) && !options?.onlyLocal && listener()));
}
