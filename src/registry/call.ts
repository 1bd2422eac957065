import { Failure } from "../measure/result.ts";
import type { CellProblem } from "./cellProblem.ts";
import { newReading, startOf } from "./reading.ts";
import { CellError, Refusal } from "./refusal.ts";
import { refuse } from "./refuse.ts";
import type { Cell, Computed, Input, Output, WorksheetFunction } from "./worksheetFunction.ts";

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
  const reading = newReading();
  const values: unknown[] = new Array(parameters.length);
  for (let i = 0; i < parameters.length; i++) {
    const parameter = parameters[i]!;
    startOf(reading, parameter.name);
    let cell = cells[i];
    if (typeof cell === "object" && cell !== null) {
      if (cell instanceof CellError) return cell;
      if (Array.isArray(cell) && !parameter.block) {
        cell = single(cell);
        if (cell === RANGE) return refuse(reading, { kind: "range for one value" });
        if (cell instanceof CellError) return cell;
      }
    }
    const value = parameter.read(cell, reading);
    if (value instanceof Failure) return value as Refusal | CellError;
    values[i] = value;
  }
  const answer = definition.run(values, reading);
  if (typeof answer === "number" && Number.isFinite(answer)) return answer;
  return answer instanceof Promise ? answer.then((a) => placed(definition, a)) : placed(definition, answer);
}

const RANGE = Symbol("range");

function single(rows: readonly unknown[]): unknown {
  const row = rows.length === 1 ? rows[0] : RANGE;
  if (!Array.isArray(row)) return row;
  return row.length === 1 ? row[0] : RANGE;
}

/** A number that a cell cannot show is refused, in a table too: some hosts would make 0 of it. */
function finite({ name }: WorksheetFunction, answer: Output): Output | Refusal {
  const shows = (cell: Cell) => typeof cell !== "number" || Number.isFinite(cell);
  return (typeof answer === "object" ? answer.every((row) => row.every(shows)) : shows(answer))
    ? answer
    : refuse(newReading(name), { kind: "no finite result" });
}

/** The core knows no arguments: the definition says which one its problem lies with. */
function placed(definition: WorksheetFunction, answer: Computed): Answer {
  if (answer instanceof Refusal || answer instanceof CellError) return answer;
  if (!(answer instanceof Failure)) return finite(definition, answer);
  const argument = definition.refuses?.[answer.problem.kind] ?? definition.name;
  return new Refusal(answer.problem, { argument }, null);
}

function tooMany({ name, parameters }: WorksheetFunction, given: number): Refusal<CellProblem> {
  return new Refusal({ kind: "too many arguments", name, most: parameters.length, given }, null, null);
}
