import type { WorksheetFunction } from "../../registry/worksheetFunction.ts";
import { excelFunction } from "./excelFunction.ts";
import type { RefusalLog } from "./refusalLog.ts";

/** Hands every function to Excel under its id in functions.json, which is its name. */
export function register(functions: readonly WorksheetFunction[], refusals: RefusalLog): void {
  for (const definition of functions) CustomFunctions.associate(definition.name, excelFunction(definition, refusals));
}
