import { describe, expect, it } from "vitest";
import { call } from "../../src/registry/call.ts";
import { choice, length, optionalLength, pitch } from "../../src/registry/parameters.ts";
import { worksheetFunction } from "../../src/registry/worksheetFunction.ts";

const base = { name: "TEST", family: "test", summary: "A test.", returns: "a value." } as const;
const values = [
  { cells: [1], result: 1 },
  { cells: [2], result: 2 },
] as const;
const tables = [
  { cells: [1], result: [[1]] },
  { cells: [2], result: [[2]] },
] as const;
const parameters = [
  pitch("pitch", "It."),
  length("run", "It."),
  optionalLength("overhang", "It.", "none"),
  choice("cut", "It.", ["plumb", "square"] as const, "plumb"),
] as const;

describe("worksheetFunction", () => {
  it("hands each value over under its parameter's name, with the type that was read", () => {
    const definition = worksheetFunction({
      ...base,
      parameters,
      result: "value",
      examples: values,
      compute: ({ cut, overhang, run, pitch }, reading) => {
        const typed: { cut: "plumb" | "square"; overhang: number | null; run: number; pitch: number } = {
          cut,
          overhang,
          run,
          pitch,
        };
        return `${JSON.stringify(typed)} ${reading.unit}`;
      },
    });
    expect(call(definition, ["6/12", `4'`])).toBe(`{"cut":"plumb","overhang":null,"run":48,"pitch":0.5} in`);
    expect(call(definition, [6, 48, 16, "square"])).toBe(`{"cut":"square","overhang":16,"run":48,"pitch":0.5} null`);
  });

  // What the compiler refuses: `npm run typecheck` fails where one of these lines has no error.
  it("does not compile with a name that no parameter has", () => {
    // @ts-expect-error There is no parameter "slope".
    worksheetFunction({ ...base, parameters, result: "value", examples: values, compute: ({ slope }) => slope });
  });
  it("does not compile with a value taken for another type", () => {
    // @ts-expect-error An overhang that was left out is null.
    worksheetFunction({ ...base, parameters, result: "value", examples: values, compute: ({ overhang }) => -overhang });
  });
  it("does not compile with a result of the other kind", () => {
    // @ts-expect-error A value is one cell.
    worksheetFunction({ ...base, parameters, result: "value", examples: values, compute: ({ run }) => [[run]] });
    // @ts-expect-error A table is rows of cells.
    worksheetFunction({ ...base, parameters, result: "table", examples: tables, compute: ({ run }) => run });
  });
  it("does not compile with an example of the other kind", () => {
    // @ts-expect-error The examples of a value are values.
    worksheetFunction({ ...base, parameters, result: "value", examples: tables, compute: ({ run }) => run });
  });
  it("does not compile without saying what comes back", () => {
    // @ts-expect-error Whether a cell or a table must be said.
    worksheetFunction({ ...base, parameters, examples: values, compute: ({ run }) => run });
  });
});
