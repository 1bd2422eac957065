import { call, type Answer } from "../../registry/call.ts";
import { Failure, type Result } from "../../measure/result.ts";
import type { Cell, Input, Table, WorksheetFunction } from "../../registry/worksheetFunction.ts";

export type { Table };

type Answered = Result<Table>;

/** What a worksheet function that spills gives for these arguments, as a cell would show it. */
export function evaluateFunction(definition: WorksheetFunction, args: readonly Input[]): Answered | Promise<Answered> {
  const answer = call(definition, args);
  return answer instanceof Promise ? answer.then(asTable) : asTable(answer);
}

function asTable(answer: Answer): Answered {
  if (answer instanceof Failure) return answer;
  return Array.isArray(answer) ? (answer as Table) : [[answer as Cell]];
}
