import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { helpIndexPage, helpPage, helpPath } from "../registry/helpPage.ts";
import type { WorksheetFunction } from "../registry/worksheetFunction.ts";

/** Writes a help page for each function, and the list of them, below `folder`, where a function's helpUrl finds it. */
export function writeHelp(folder: string, functions: readonly WorksheetFunction[]): void {
  mkdirSync(join(folder, "help"), { recursive: true });
  writeFileSync(join(folder, "help/index.html"), helpIndexPage(functions));
  for (const definition of functions) writeFileSync(join(folder, helpPath(definition)), helpPage(definition));
}
