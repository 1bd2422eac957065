import { ICommandService } from "@univerjs/core";
import { onEdit } from "./onEdit.ts";
import type { EmbeddedSheet } from "./runningSheet.ts";

/** Calls back after everything that a user changed in the sheet, or had changed. */
export function watchEdits({ univer }: EmbeddedSheet, listener: () => void): void {
  const injector = univer.__getInjector();
  onEdit(injector, (edited) => void (edited && listener()));
  // No formula hangs on the rules for what may be typed.
  injector
    .get(ICommandService)
    .onCommandExecuted(
      ({ id }, options) => void (id.startsWith("data-validation.mutation.") && !options?.onlyLocal && listener()),
    );
}
