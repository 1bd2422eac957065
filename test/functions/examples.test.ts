import { messageOf } from "../../functions/words/problemText.ts";
import { describe, expect, it } from "vitest";
import { functions } from "../../functions/index.ts";
import { answer } from "../../src/hosts/terminal/answer.ts";
import { call } from "../../src/registry/call.ts";
import { formulaText } from "../../src/registry/formulaText.ts";
import { CellError, Refusal } from "../../src/registry/refusal.ts";
import type { Cell, Example, Input, Output, Parameter } from "../../src/registry/worksheetFunction.ts";

/**
 * What may differ from a printed number: half a unit of its last digit. A whole number is taken as exact,
 * for a degree or an inch is far too much to miss; an example that means otherwise says so with `tolerance`.
 */
function toleranceOf(printed: number): number {
  const [digits, power = "0"] = String(printed).split("e");
  const decimals = (digits!.split(".")[1]?.length ?? 0) - Number(power);
  return decimals > 0 ? 0.5000001 * 10 ** -decimals : 1e-9 * Math.max(1, Math.abs(printed));
}

function expectCell(actual: Cell | undefined, { tolerance }: Example, expected: Cell | undefined, where: string): void {
  if (typeof expected !== "number") return expect(actual, where).toBe(expected);
  expect(actual, where).toBeTypeOf("number");
  expect(
    Math.abs((actual as number) - expected),
    `${where}: ${actual} where ${expected} is printed`,
  ).toBeLessThanOrEqual(tolerance ?? toleranceOf(expected));
}

function expectResult(actual: unknown, example: Example): void {
  const rows = (value: Output) => (typeof value === "object" ? value : [[value]]);
  if (actual instanceof Refusal || actual instanceof CellError) return expect.fail(JSON.stringify(actual));
  const [found, printed] = [rows(actual as Output), rows(example.result)];
  expect(found.map((row) => row.length)).toEqual(printed.map((row) => row.length));
  printed.forEach((row, i) =>
    row.forEach((cell, j) => expectCell(found[i]![j], example, cell, `row ${i + 1}, column ${j + 1}`)),
  );
}

/** Values that no argument takes. */
const garbage: readonly (readonly [string, Input])[] = [
  ["an emoji", "🏠"],
  ["10,000 characters", "7".repeat(10_000)],
  ["10,000 blanks and a letter", `${" ".repeat(10_000)}x`],
  ["10,000 marks", `'"`.repeat(5_000)],
  ["NaN", NaN],
  ["Infinity", Infinity],
  ["-Infinity", -Infinity],
  ["an object", {}],
  ["a function", () => 1],
  ["words", "as long as it takes"],
];

const range: readonly (readonly [string, Input])[] = [
  ["a row of cells", [[1, 2]]],
  ["a column of cells", [[1], [2]]],
  ["no cells", []],
];
const blanks: readonly (readonly [string, Input])[] = [
  ["nothing", undefined],
  ["null", null],
  ["an empty text", ""],
];
const date: readonly (readonly [string, Input])[] = [["a date", 45000]];

function refusedBy(parameter: Parameter): readonly (readonly [string, Input])[] {
  return [
    ...garbage,
    ...(parameter.block ? [] : range),
    ...(parameter.optional ? [] : blanks),
    ...(parameter.quantity === "length" || parameter.quantity === "pitch" ? date : []),
  ];
}

it("every function has a name and an argument list that a sheet accepts", () => {
  const names = functions.map(({ name }) => name);
  expect(new Set(names).size).toBe(names.length);
  for (const { name, parameters } of functions) {
    expect(name).toMatch(/^[A-Z][A-Z0-9]{2,30}$/);
    expect(new Set(parameters.map((one) => one.name)).size, name).toBe(parameters.length);
    const firstOptional = parameters.findIndex((one) => one.optional);
    expect(
      parameters.slice(firstOptional < 0 ? parameters.length : firstOptional).every((one) => one.optional),
      `${name}: required after optional`,
    ).toBe(true);
  }
});

describe.each(functions.map((definition) => [definition.name, definition] as const))("%s", (_, definition) => {
  const { examples, parameters, summary, returns } = definition;

  it.each(examples.map((example) => [formulaText(definition, example), example] as const))(
    "%s",
    async (formula, example) => {
      const value = await call(definition, example.cells);
      expectResult(value, example);
      // The same as typed on the terminal, through a parser that is not ours.
      expect(await answer(formula, new Map([[definition.name, definition]]))).toEqual({ formula, value });
    },
  );

  it("shows at least two calls, one with a result from elsewhere", () => {
    expect(new Set(examples.map((example) => formulaText(definition, example))).size).toBeGreaterThanOrEqual(2);
    expect(examples.some(({ source }) => source !== undefined && source.length > 5)).toBe(true);
  });

  it("is described in sentences", () => {
    expect(summary).toMatch(/^[A-Z].*[^.]\.$/);
    expect(returns).toMatch(/^\S.*\.$/);
    for (const parameter of parameters) {
      expect(parameter.description).toMatch(/^[A-Z].*\.$/);
      if (parameter.optional) expect(parameter.defaultText, parameter.name).toBeTruthy();
    }
  });

  const base: readonly Input[] = examples[0].cells;
  const calls = parameters.flatMap((parameter, i) =>
    refusedBy(parameter).map(([what, cell]) => ({ name: parameter.name, what, i, cell })),
  );

  it.each(calls)("refuses $name: $what", async ({ name, i, cell }) => {
    const given = [...base];
    given[i] = cell;
    const result = await call(definition, given);
    expect(result).toBeInstanceOf(Refusal);
    const message = messageOf(result as Refusal);
    expect(message).toContain(name);
    expect(message.length).toBeLessThan(400);
  });

  it.each(parameters.map((parameter, i) => [parameter.name, i] as const))(
    "lets an error in %s pass through",
    async (_name, i) => {
      const error = new CellError("#DIV/0!");
      const given = [...base];
      given[i] = error;
      expect(await call(definition, given)).toBe(error);
      // In a block, an error stands among its cells.
      const block = base[i];
      given[i] = Array.isArray(block)
        ? block.map((row: readonly Cell[], r) => (r === 0 ? [...row.slice(0, -1), error] : row))
        : [[error]];
      expect(await call(definition, given)).toBe(error);
    },
  );

  it("refuses more arguments than it takes", async () => {
    expect(await call(definition, [...parameters.map((_one, i) => base[i]), 1])).toBeInstanceOf(Refusal);
  });
});
