import type { Injector } from "@univerjs/core";
import { IConfigService } from "@univerjs/core";
import { ENGINE_FORMULA_PLUGIN_CONFIG_KEY } from "@univerjs/engine-formula";
import type { First } from "./firstInOneGo.ts";

/** Milliseconds that a calculation goes on before the page gets its turn. */
const WORK = 40;

/**
 * Lets the page take its turn in a calculation by the time that has passed.
 *
 * In 0.25.1 it comes after every 500 formulas: of tables, each of which takes some milliseconds, that is after a second or more.
 */
export function shortTurns(injector: Injector, first: First): void {
  const config = injector.get(IConfigService).getConfig<{ intervalCount?: unknown }>(ENGINE_FORMULA_PLUGIN_CONFIG_KEY);
  if (!config) throw new Error("The sheet's calculation is not set up.");
  let since = performance.now();
  // The engine divides the formula's number by it before each: where nothing is left over, the page has its turn.
  config.intervalCount = {
    valueOf() {
      if (!first.over) return Number.NaN;
      const now = performance.now();
      if (now - since < WORK) return Number.MAX_SAFE_INTEGER;
      since = now;
      return 1;
    },
  };
}
