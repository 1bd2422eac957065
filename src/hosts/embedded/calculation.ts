import type { Injector, IRange } from "@univerjs/core";
import { ICommandService } from "@univerjs/core";
import {
  SetFormulaCalculationStartMutation,
  SetTriggerFormulaCalculationStartMutation,
} from "@univerjs/engine-formula";
import { FormulaCalculationSessionService } from "@univerjs/sheets-formula";
import { onEdit } from "./onEdit.ts";

// The engine gathers edits for a tenth of a second before it calculates them. Counted in turns, for a busy page stands still for seconds.
const TURN = 5;
const MOST_TURNS_GATHERING = 600;
const LONGEST_WAIT = 60_000;

/** Knows whether the sheet's values are up to date, and can have cells calculated again. */
export class Calculation {
  readonly #commands: ICommandService;
  readonly #session: FormulaCalculationSessionService;
  // There are edits that the engine has not begun to calculate: at first the whole workbook, which has just been added.
  #gathering = true;

  constructor(injector: Injector) {
    this.#commands = injector.get(ICommandService);
    this.#session = injector.get(FormulaCalculationSessionService);
    onEdit(injector, () => (this.#gathering = true));
    this.#commands.onCommandExecuted(
      ({ id }) => void (id === SetFormulaCalculationStartMutation.id && (this.#gathering = false)),
    );
  }

  /** Treats cells as changed: they and all that depends on them are calculated again. */
  recalculate(areas: readonly { unitId: string; sheetId: string; range: IRange }[]): void {
    this.#commands.syncExecuteCommand(
      SetTriggerFormulaCalculationStartMutation.id,
      { dirtyRanges: areas },
      { onlyLocal: true },
    );
  }

  /** Waits until every edit is calculated and its results stand in the cells. */
  async settled(): Promise<void> {
    const end = performance.now() + LONGEST_WAIT;
    for (let turns = 0; this.#busy() && performance.now() < end; turns = this.#gathering ? turns + 1 : 0) {
      if (turns === MOST_TURNS_GATHERING) this.#gathering = false;
      else await new Promise((resolve) => setTimeout(resolve, TURN));
    }
  }

  #busy(): boolean {
    const { started, resultApplied } = this.#session.state;
    return this.#gathering || (started && !resultApplied);
  }
}
