import type { IDisposable, Injector } from "@univerjs/core";
import { ICommandService } from "@univerjs/core";
import { IActiveDirtyManagerService, SetTriggerFormulaCalculationStartMutation } from "@univerjs/engine-formula";
import { SetRangeValuesMutation } from "@univerjs/sheets";

/**
 * Calls back after everything that makes the engine calculate: edits that a formula may hang on; a wish to have cells calculated again, or a
 * name that only the pane needs, is none of them.
 *
 * Results come back as a local change of cells; they are neither.
 */
export function onEdit(injector: Injector, listener: (edited: boolean) => void): IDisposable {
  const dirty = injector.get(IActiveDirtyManagerService);
  return injector.get(ICommandService).onCommandExecuted(({ id }, options) => {
    if (dirty.get(id) && !(id === SetRangeValuesMutation.id && options?.onlyLocal))
      listener(id !== SetTriggerFormulaCalculationStartMutation.id && !options?.onlyLocal);
  });
}
