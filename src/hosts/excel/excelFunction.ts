import { messageOf } from "../../../functions/words/problemText.ts";
import { call, type Answer } from "../../registry/call.ts";
import { CellError, Refusal } from "../../registry/refusal.ts";
import type { Cell, Output, WorksheetFunction } from "../../registry/worksheetFunction.ts";
import type { RefusalLog } from "./refusalLog.ts";

/** Errors that Excel takes from a custom function. #NAME? and #REF! can come in but not go out. */
const OUT: ReadonlySet<string> = new Set(["#VALUE!", "#N/A", "#DIV/0!", "#NUM!", "#NULL!"]);

/**
 * A worksheet function as Excel calls it: raw cells, then always an invocation object; errors are thrown.
 *
 * The invocation is the last thing received, wherever that is: Excel keeps functions.json for up to a day, so it may still count the parameters of the release
 * before. Blanks beyond the parameters are passed over; more than that is refused like any other call with too many arguments.
 *
 * Excel gives null for an argument that was left out, and 0 (desktop), null (web) or "" for an empty cell (office-js issue 4702). null and "" are blank to every
 * reader; 0 is where a block is read and can be nothing else.
 */
export function excelFunction(
  definition: WorksheetFunction,
  refusals: RefusalLog,
): (...received: unknown[]) => unknown {
  const block = definition.result === "table";
  return (...received) => {
    const invocation = isInvocation(received.at(-1)) ? (received.pop() as CustomFunctions.Invocation) : undefined;
    const caller = invocation?.address;
    const show = (answer: Answer) => {
      refusals.note(caller, definition.name, answer instanceof Refusal ? answer : null);
      return shown(answer, block);
    };
    const answer = call(definition, withoutBlanks(received, definition.parameters.length).map(fromExcel));
    return answer instanceof Promise ? answer.then(show) : show(answer);
  };
}

/** An object that is neither a block nor an error in a cell. */
function isInvocation(last: unknown): boolean {
  return typeof last === "object" && last !== null && !Array.isArray(last) && !("code" in last);
}

function withoutBlanks(received: unknown[], least: number): unknown[] {
  while (received.length > least && (received.at(-1) ?? "") === "") received.pop();
  return received;
}

/** Error values come in as CustomFunctions.Error objects, alone or inside a block. */
function fromExcel(cell: unknown): unknown {
  if (typeof cell !== "object" || cell === null) return cell;
  if (Array.isArray(cell)) return cell.map(fromExcel);
  const { code } = cell as { code?: unknown };
  return typeof code === "string" && code.startsWith("#") ? new CellError(code) : cell;
}

function shown(answer: Answer, block: boolean): Output {
  if (answer instanceof Refusal)
    throw new CustomFunctions.Error(answer.error as CustomFunctions.ErrorCode, messageOf(answer));
  if (answer instanceof CellError) throw passed(answer.error);
  return block && !Array.isArray(answer) ? [[answer as Cell]] : answer;
}

function passed(error: string): CustomFunctions.Error {
  if (OUT.has(error)) return new CustomFunctions.Error(error as CustomFunctions.ErrorCode);
  return new CustomFunctions.Error(
    CustomFunctions.ErrorCode.invalidValue,
    `An argument's cell shows ${error}. Mend that cell first.`,
  );
}
