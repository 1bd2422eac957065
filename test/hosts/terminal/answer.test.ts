import { describe, expect, it } from "vitest";
import { answer } from "../../../src/hosts/terminal/answer.ts";
import { Refusal } from "../../../src/registry/refusal.ts";
import { worksheetFunction, type Parameter, type WorksheetFunction } from "../../../src/registry/worksheetFunction.ts";

const number: Parameter<number, "length"> = {
  name: "length",
  description: "A length.",
  quantity: "length",
  read: (cell) =>
    typeof cell === "number"
      ? cell
      : cell === undefined
        ? 7
        : new Refusal({ kind: "not a length", read: cell, examples: ["48"] }, { argument: "length" }, null),
};
const block: Parameter<readonly (readonly unknown[])[], "block"> = {
  name: "block",
  description: "A block.",
  quantity: "list",
  block: true,
  read: (cells) => cells as readonly (readonly unknown[])[],
};
const examples = [
  { cells: [1], result: 2 },
  { cells: [2], result: 4 },
] as const;
const functions = new Map<string, WorksheetFunction>(
  Object.entries({
    TWICE: worksheetFunction({
      name: "TWICE",
      family: "test",
      summary: "Doubles.",
      parameters: [number],
      result: "value",
      returns: "twice the length.",
      examples,
      compute: ({ length }) => length * 2,
    }),
    LATER: worksheetFunction({
      name: "LATER",
      family: "test",
      summary: "Doubles later.",
      parameters: [number],
      result: "value",
      returns: "twice the length.",
      examples,
      compute: async ({ length }) => length * 2,
    }),
    TURNED: worksheetFunction({
      name: "TURNED",
      family: "test",
      summary: "Turns a block.",
      parameters: [block],
      result: "table",
      returns: "the block turned.",
      examples: [
        { cells: [[[1]]], result: [[1]] },
        { cells: [[[2]]], result: [[2]] },
      ],
      compute: ({ block }) => block[0]!.map((_, i) => block.map((row) => row[i] as number)),
    }),
    FAULTY: worksheetFunction({
      name: "FAULTY",
      family: "test",
      summary: "Throws.",
      parameters: [],
      result: "value",
      returns: "nothing.",
      examples,
      compute: () => {
        throw new Error("broken");
      },
    }),
  }),
);

const given = (formula: string) => answer(formula, functions);

describe("a value", () => {
  it.each<[string, unknown]>([
    ["=1+2*3", 7],
    ["1+2*3", 7],
    [" = ( 1 + 2 ) * 3 ", 9],
    // The minus of a number binds closer than ^ in a sheet, and ^ goes from left to right.
    ["=-2^2", 4],
    ["=0-2^2", -4],
    ["=2^3^2", 64],
    ["=2^-1", 0.5],
    ["=--3", 3],
    ["=50%", 0.5],
    ["=10%%", 0.001],
    ["=-50%+1", 0.5],
    ['="a""b"&1.5&TRUE', 'a"b1.5TRUE'],
    ['=0.1+0.2&""', "0.3"],
    ['="A"="a"', true],
    ['=2<"1"', true],
    ['="z"<FALSE', true],
    ["=1<>1", false],
    ['="5"+1', 6],
    ["=TRUE+1", 2],
    [
      "={1,2;3,4}",
      [
        [1, 2],
        [3, 4],
      ],
    ],
    [
      '={1,"a";TRUE,-2.5}',
      [
        [1, "a"],
        [true, -2.5],
      ],
    ],
    [
      "={1,2}*{10;20}",
      [
        [10, 20],
        [20, 40],
      ],
    ],
    [
      "={1,2;3,4}+{1,1}",
      [
        [2, 3],
        [4, 5],
      ],
    ],
    ["=1/{1,0}", [[1, "#DIV/0!"]]],
    ["={1,2,3}+{1,1}", [[2, 3, "#N/A"]]],
    ["=-{1,2}", [[-1, -2]]],
    ["=@{5,6}", 5],
    ["=RAFTER.TWICE(4)", 8],
    ["=rafter.twice(4)+1", 9],
    ["=RAFTER.TWICE()", 14],
    ["=RAFTER.TWICE({3})", 6],
    ["=RAFTER.TWICE(RAFTER.LATER(2))", 8],
    [
      "=RAFTER.TURNED({1,2,3;4,5,6})",
      [
        [1, 4],
        [2, 5],
        [3, 6],
      ],
    ],
    ["=INDEX(RAFTER.TURNED({1,2,3;4,5,6}), 3, 2)", 6],
    ["=SUM(RAFTER.TURNED({1,2,3;4,5,6}))", 21],
  ])("%s", async (formula, value) => {
    expect(await given(formula)).toEqual({ formula, value });
  });
});

describe("an error, with its reason", () => {
  it.each([
    ["=1/0", "#DIV/0!", "zero"],
    ["=0^0", "#NUM!", "not a number"],
    ["=10^400", "#NUM!", "not a number"],
    ["=1e400", "#NUM!", "more than a cell"],
    ['="6/12"+1', "#VALUE!", "6/12"],
    ["=RAFTER.NOWHERE(1)", "#NAME?", "RAFTER.NOWHERE"],
    ["=TWICE(1)", "#NAME?", "Write RAFTER.TWICE"],
    ["=constructor(1)", "#NAME?", "CONSTRUCTOR"],
    ["=steep", "#NAME?", 'in quotes: "steep"'],
    ["=A1+1", "#REF!", "A1: there is no sheet here"],
    ["=SUM(Jacks!B2:B9)", "#REF!", "Jacks!B2:B9"],
    ["=SUM(A1,B:B)", "#REF!", "A1"],
    ["=A1#", "#REF!", "there is no sheet here"],
    ["=#N/A", "#N/A", "#N/A"],
    ["=RAFTER.TWICE(#DIV/0!)", "#DIV/0!", "itself holds"],
    ['=RAFTER.TWICE("wide")', "#VALUE!", 'length: "wide"'],
    ['=1+RAFTER.TWICE(RAFTER.TWICE("wide"))', "#VALUE!", 'length: "wide"'],
    ["=RAFTER.TWICE({1,2})", "#VALUE!", "length: a range"],
    ["=RAFTER.TWICE(1, 2)", "#VALUE!", "TWICE takes 1 argument"],
    ["={1,2;3}", "#VALUE!", "Row 2"],
    ["=SQRT(1, 2)", "#VALUE!", "SQRT takes 1"],
    ["=LET(x, 1, x)", "#NAME?", "LET"],
    ["=LAMBDA(x, x)(1)", "#NAME?", "called"],
    ["=1+", "#NAME?", "too early"],
    ["=", "#NAME?", "too early"],
    ["=SUM(1, 2", "#NAME?", "too early"],
    ["=1 2", "#NAME?", "cannot be read"],
    ["=\"8' 7", "#NAME?", "inches are typed as two quotes"],
    ["=RAFTER.FAULTY()", "#VALUE!", "fault of this program"],
    ["🏠", "#NAME?", "🏠"],
  ])("%s", async (formula, error, words) => {
    const result = await given(formula);
    expect(result).toEqual({ formula, error, message: expect.stringContaining(words) });
  });

  it("comes for a text of any length", async () => {
    for (const n of [8_000, 1_000_000]) {
      for (const text of ["(", "1+", "=", " ", "'", "{", "A1:", "-", "🏠", "SUM("])
        expect(await given(`=${text.repeat(n / text.length)}`)).not.toHaveProperty("value");
    }
  });
});
