import { messageOf } from "../../functions/words/problemText.ts";
import { functions } from "../../functions/index.ts";
import { call } from "../../src/registry/call.ts";
import type { Answer } from "../../src/registry/call.ts";
import { CellError, Refusal } from "../../src/registry/refusal.ts";
import type { Cell } from "../../src/registry/worksheetFunction.ts";

/** What a cell with this function would show. */
export function asked(name: string, ...cells: readonly unknown[]): Answer {
  const definition = functions.find((one) => one.name === name);
  if (definition === undefined) throw new Error(`There is no worksheet function ${name}.`);
  return call(definition, cells) as Answer;
}

/** The number a function answers with; anything else fails with its own words. */
export function number(name: string, ...cells: readonly unknown[]): number {
  const answer = asked(name, ...cells);
  if (typeof answer !== "number")
    throw new Error(
      `${name}: ${answer instanceof Refusal ? messageOf(answer) : answer instanceof CellError ? answer.error : "no number"}`,
    );
  return answer;
}

/** The message a function refuses with. */
export function refusal(name: string, ...cells: readonly unknown[]): string {
  const answer = asked(name, ...cells);
  if (!(answer instanceof Refusal)) throw new Error(`${name} answered ${JSON.stringify(answer)}.`);
  return messageOf(answer);
}

export type Row = Readonly<Record<string, Cell>>;

/** The rows that a function spills, each by its headings. */
export function rows(name: string, ...cells: readonly unknown[]): Row[] {
  const answer = asked(name, ...cells);
  if (!Array.isArray(answer)) throw new Error(`${name}: ${answer instanceof Refusal ? messageOf(answer) : "no rows"}`);
  const [headings, ...body] = answer as Cell[][];
  return body.map((row) => Object.fromEntries(headings!.map((heading, i) => [heading, row[i]!])));
}
