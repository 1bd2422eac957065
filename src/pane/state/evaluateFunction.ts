import { functions } from "../../../functions/index.ts";
import { call, type Answer } from "../../registry/call.ts";
import { CellError, Refusal } from "../../registry/refusal.ts";
import type { Cell, Input, WorksheetFunction } from "../../registry/worksheetFunction.ts";

/** Rows of a table, headings first, or why there is none. */
export type Table = readonly (readonly Cell[])[];

const byName = new Map<string, WorksheetFunction>(functions.map((definition) => [definition.name, definition]));

/** What a worksheet function that spills gives for these arguments, as a cell would show it. */
export function evaluateFunction(name: string, args: readonly Input[]): Table | Refusal | Promise<Table | Refusal> {
  const answer = call(byName.get(name)!, args);
  return answer instanceof Promise ? answer.then(asTable) : asTable(answer);
}

function asTable(answer: Answer): Table | Refusal {
  if (answer instanceof Refusal) return answer;
  if (answer instanceof CellError) return new Refusal("#VALUE!", answer.error);
  return Array.isArray(answer) ? (answer as Table) : [[answer as Cell]];
}
