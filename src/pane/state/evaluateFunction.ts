import { call, type Answer } from "../../registry/call.ts";
import { CellError, Refusal } from "../../registry/refusal.ts";
import type { Cell, Input, Table, WorksheetFunction } from "../../registry/worksheetFunction.ts";

export type { Table };

/** What a worksheet function that spills gives for these arguments, as a cell would show it. */
export function evaluateFunction(
  definition: WorksheetFunction,
  args: readonly Input[],
): Table | Refusal | Promise<Table | Refusal> {
  const answer = call(definition, args);
  return answer instanceof Promise ? answer.then(asTable) : asTable(answer);
}

function asTable(answer: Answer): Table | Refusal {
  if (answer instanceof Refusal) return answer;
  if (answer instanceof CellError) return new Refusal("#VALUE!", answer.error);
  return Array.isArray(answer) ? (answer as Table) : [[answer as Cell]];
}
