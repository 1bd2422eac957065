import type { Injector } from "@univerjs/core";
import { ICalculateFormulaService } from "@univerjs/engine-formula";

/** Whether the calculation that a page starts with has ended. */
export interface First {
  readonly over: boolean;
}

/**
 * Knows when the calculation that a page starts with has ended: till then no calculation gives the page its turn.
 *
 * There is no sheet on the page yet that could take a key, and its first drawing is one task that each turn would wait for: the sheet would
 * be drawn without its results first, and then once more.
 */
export function firstInOneGo(injector: Injector, onPage: boolean): First {
  let over = !onPage;
  const listening = injector.get(ICalculateFormulaService).executionCompleteListener$.subscribe(() => {
    over = true;
    listening.unsubscribe();
  });
  return {
    get over() {
      return over;
    },
  };
}
