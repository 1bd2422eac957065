import type { Injector, IRange } from "@univerjs/core";
import { ICommandService } from "@univerjs/core";
import { IActiveDirtyManagerService, SetFormulaCalculationStartMutation, SetTriggerFormulaCalculationStartMutation } from "@univerjs/engine-formula";
import { SetRangeValuesMutation } from "@univerjs/sheets";
import { FormulaCalculationSessionService } from "@univerjs/sheets-formula";

// The engine gathers edits for a tenth of a second before it calculates them; on a busy machine it takes longer.
const LONGEST_GATHERING = 3_000;
const LONGEST_WAIT = 60_000;

/** Knows whether the sheet's values are up to date, and can have cells calculated again. */
export class Calculation {
  readonly #commands: ICommandService;
  readonly #session: FormulaCalculationSessionService;
  // Edits that the engine has not begun to calculate since then, or null.
  #gatheringSince: number | null = null;

  constructor(injector: Injector) {
    this.#commands = injector.get(ICommandService);
    this.#session = injector.get(FormulaCalculationSessionService);
    const dirty = injector.get(IActiveDirtyManagerService);
    this.#commands.onCommandExecuted((command, options) => {
      if (command.id === SetFormulaCalculationStartMutation.id) this.#gatheringSince = null;
      // Results come back as a local change of cells; they are no edit.
      else if (dirty.get(command.id) && !(command.id === SetRangeValuesMutation.id && options?.onlyLocal)) this.#gatheringSince = performance.now();
    });
  }

  /** Treats cells as changed: they and all that depends on them are calculated again. */
  recalculate(areas: readonly { unitId: string; sheetId: string; range: IRange }[]): void {
    this.#commands.syncExecuteCommand(SetTriggerFormulaCalculationStartMutation.id, { dirtyRanges: areas }, { onlyLocal: true });
  }

  /** Waits until every edit is calculated and its results stand in the cells. */
  async settled(): Promise<void> {
    const end = performance.now() + LONGEST_WAIT;
    while (this.#busy() && performance.now() < end) await new Promise((resolve) => setTimeout(resolve, 5));
  }

  #busy(): boolean {
    if (this.#gatheringSince !== null && performance.now() - this.#gatheringSince < LONGEST_GATHERING) return true;
    const { started, resultApplied } = this.#session.state;
    return started && !resultApplied;
  }
}
