import type { CellProblem } from "../../../src/registry/cellProblem.ts";
import { Refusal, CellError } from "../../../src/registry/refusal.ts";
import {
  worksheetFunction,
  type Definition,
  type Input,
  type Table,
  type WorksheetFunction,
} from "../../../src/registry/worksheetFunction.ts";

const any = <const N extends string>(name: N) =>
  ({ name, description: "Anything.", quantity: "text", optional: true, read: (cell: Input) => cell }) as const;
const block = {
  name: "block",
  description: "A block.",
  quantity: "list",
  block: true,
  optional: true,
  read: (cell: Input) => cell,
} as const;
const refused = (problem: CellProblem) => new Refusal(problem, { argument: "number" }, null);
const number = {
  name: "number",
  description: "A number.",
  quantity: "number",
  read: (cell: Input) =>
    typeof cell === "number" ? cell : refused({ kind: "no such word", read: cell, choices: ["1"] }),
} as const;

const define = (
  name: string,
  parameters: Definition["parameters"],
  compute: Definition["compute"],
  more: Partial<Definition> = {},
): WorksheetFunction =>
  worksheetFunction({
    name,
    family: "test",
    summary: `${name} for tests.`,
    parameters,
    result: "value",
    returns: "a value.",
    examples: [
      { cells: [1], result: 1 },
      { cells: [2], result: 2 },
    ],
    compute,
    ...more,
  });

/** Functions that show what the adapter hands over and takes back; the real ones have tests of their own. */
export const testFunctions: readonly WorksheetFunction[] = [
  define("SEEN", [any("a"), any("b"), any("c")], ({ a, b, c }) => [a, b, c].map(describeCell).join(" ")),
  define("BLOCK", [block], ({ block }) => JSON.stringify(block)),
  define("GIVE", [any("value")], ({ value }) => value),
  define("NEED", [number], ({ number }) => number),
  // Rows of n, n * 10.
  define("ROWS", [number], ({ number }): Table | Refusal =>
    number >= 1 ? Array.from({ length: number }, (_, i) => [i + 1, (i + 1) * 10]) : refused({ kind: "no rows" }),
  ),
  define("MIXED", [], () => [
    ["6/12", 1, true],
    ["", 0.1 + 0.2, false],
  ]),
  define("THROWS", [], () => {
    throw new TypeError("broken");
  }),
  define("WRONG", [], () => new CellError("#BUSY!")),
  define(
    "SLOW",
    [number],
    ({ number }) =>
      new Promise((resolve) =>
        setTimeout(() => resolve(number < 0 ? refused({ kind: "no finite result" }) : [[number], [number + 1]]), 300),
      ),
    { asynchronous: true },
  ),
  define("SLOWTHROWS", [], () => Promise.reject(new Error("late")), { asynchronous: true }),
];

function describeCell(cell: Input): string {
  return cell === undefined ? "none" : cell === null ? "blank" : `${typeof cell}:${String(cell)}`;
}
