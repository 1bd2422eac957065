import { Failure } from "../measure/result.ts";
import { CellError, Refusal } from "./refusal.ts";
import { refuse } from "./refuse.ts";
import type { Cell, Computed, Input, Output, Reading, WorksheetFunction } from "./worksheetFunction.ts";

/** What a host gets back from a call: something to show, or why not. */
export type Answer = Output | Refusal | CellError;

/**
 * Runs a worksheet function on raw cells. The one place where cells are read and refused.
 *
 * Errors that come in pass through; whatever else is wrong comes back as a {@link Refusal} that names the argument.
 */
export function call(definition: WorksheetFunction, cells: readonly Input[]): Answer | Promise<Answer> {
  const { parameters } = definition;
  if (cells.length > parameters.length) return tooMany(definition, cells.length);
  const reading: Reading = { unit: null, unitFrom: "" };
  const values: unknown[] = new Array(parameters.length);
  for (let i = 0; i < parameters.length; i++) {
    const parameter = parameters[i]!;
    let cell = cells[i];
    if (typeof cell === "object" && cell !== null) {
      if (cell instanceof CellError) return cell;
      if (Array.isArray(cell) && !parameter.block) {
        cell = single(cell);
        if (cell === RANGE)
          return refuse(
            parameter.name,
            `a range of cells was given where one value is expected. Point to a single cell.`,
          );
        if (cell instanceof CellError) return cell;
      }
    }
    const value = parameter.read(cell, reading);
    if (typeof value === "object" && (value instanceof Refusal || value instanceof CellError)) return value;
    values[i] = value;
  }
  const answer = definition.run(values, reading);
  if (typeof answer === "number" && Number.isFinite(answer)) return answer;
  return answer instanceof Promise ? answer.then((a) => worded(definition, a)) : worded(definition, answer);
}

const RANGE = Symbol("range");

function single(rows: readonly unknown[]): unknown {
  const row = rows.length === 1 ? rows[0] : RANGE;
  if (!Array.isArray(row)) return row;
  return row.length === 1 ? row[0] : RANGE;
}

/** A number that a cell cannot show is refused, in a table too: some hosts would make 0 of it. */
function finite(definition: WorksheetFunction, answer: Output): Output | Refusal {
  const shows = (cell: Cell) => typeof cell !== "number" || Number.isFinite(cell);
  return (typeof answer === "object" ? answer.every((row) => row.every(shows)) : shows(answer))
    ? answer
    : refuse(definition.name, `these values give no finite result. Check that no argument is far too large.`);
}

function worded(definition: WorksheetFunction, answer: Computed): Answer {
  if (answer instanceof Refusal || answer instanceof CellError) return answer;
  if (!(answer instanceof Failure)) return finite(definition, answer);
  const words = definition.refuses?.find(({ kind }) => kind === answer.problem.kind);
  return new Refusal(
    "#VALUE!",
    words?.say(answer.problem) ?? `${definition.name}: no result (${answer.problem.kind}).`,
  );
}

function tooMany(definition: WorksheetFunction, given: number): Refusal {
  const most = definition.parameters.length;
  return new Refusal(
    "#VALUE!",
    `${definition.name} takes ${most} argument${most === 1 ? "" : "s"} at most and was given ${given}. Remove the last${given - most === 1 ? "" : ` ${given - most}`}.`,
  );
}
