import type { Injector, IRange } from "@univerjs/core";
import { ICommandService } from "@univerjs/core";
import { SetTriggerFormulaCalculationStartMutation } from "@univerjs/engine-formula";
import { oneCalculation } from "./mends/oneCalculation.ts";

const TURN = 5;
const LONGEST_WAIT = 60_000;

/** Knows whether the sheet's values are up to date, and can have cells calculated again. */
export class Calculation {
  readonly #commands: ICommandService;
  readonly #one: { readonly busy: boolean };

  constructor(injector: Injector) {
    this.#commands = injector.get(ICommandService);
    this.#one = oneCalculation(injector);
  }

  /** Whether there are edits whose results do not stand in the cells yet. */
  get busy(): boolean {
    return this.#one.busy;
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
    while (this.busy && performance.now() < end) await new Promise((resolve) => setTimeout(resolve, TURN));
  }
}
