import type { WorksheetFunction } from "./worksheetFunction.ts";

/** Whether a function's result is a block of cells: its worked examples show it, so nothing else has to say it. */
export function spills(definition: WorksheetFunction): boolean {
  return definition.examples.some(({ result }) => Array.isArray(result));
}
