import { onEdit } from "./onEdit.ts";
import type { EmbeddedSheet } from "./runningSheet.ts";

/** Calls back after everything that a user changed in the sheet, or had changed. */
export function watchEdits({ univer }: EmbeddedSheet, listener: () => void): void {
  onEdit(univer.__getInjector(), (edited) => void (edited && listener()));
}
