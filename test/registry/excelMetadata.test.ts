import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { functions } from "../../functions/index.ts";
import { excelMetadata, type ExcelParameter } from "../../src/registry/excelMetadata.ts";
import { worksheetFunction, type Parameter } from "../../src/registry/worksheetFunction.ts";

/** A parameter as test/registry/published.txt has it: name:dimensionality, in brackets where it is optional. */
const written = ({ name, dimensionality, optional }: ExcelParameter) => {
  const text = dimensionality === "matrix" ? `${name}:matrix` : name;
  return optional ? `[${text}]` : text;
};

const BASE = "https://example.org/longpoint";
const plain = (name: string, more: Partial<Parameter> = {}): Parameter => ({
  name,
  description: `The ${name}.`,
  quantity: "number",
  read: (cell) => cell,
  ...more,
});
const double = worksheetFunction({
  name: "DOUBLE",
  family: "test",
  summary: "Twice a number.",
  parameters: [plain("number"), plain("times", { optional: true, defaultText: "2" })],
  result: "value",
  returns: "it.",
  examples: [
    { cells: [1], result: 2 },
    { cells: [2], result: 4 },
  ],
  compute: () => 0,
});
const table = worksheetFunction({
  name: "TABLE",
  family: "test",
  summary: "A table.",
  parameters: [plain("block", { block: true })],
  result: "table",
  returns: "it.",
  examples: [
    { cells: [[[1]]], result: [[1]] },
    { cells: [[[2]]], result: [[2]] },
  ],
  asynchronous: true,
  compute: async () => [[0]],
});

describe("excelMetadata", () => {
  it("describes a function that answers at once and one that does not", () => {
    expect(excelMetadata([double, table], BASE, true)).toEqual({
      allowErrorForDataTypeAny: true,
      functions: [
        {
          id: "DOUBLE",
          name: "DOUBLE",
          description: "Twice a number.",
          helpUrl: `${BASE}/help/DOUBLE.html`,
          parameters: [
            { name: "number", description: "The number.", type: "any", dimensionality: "scalar" },
            {
              name: "times",
              description: "The times. Default: 2.",
              type: "any",
              dimensionality: "scalar",
              optional: true,
            },
          ],
          result: { type: "any", dimensionality: "scalar" },
          options: { requiresAddress: true, supportSync: true },
        },
        {
          id: "TABLE",
          name: "TABLE",
          description: "A table.",
          helpUrl: `${BASE}/help/TABLE.html`,
          parameters: [{ name: "block", description: "The block.", type: "any", dimensionality: "matrix" }],
          result: { type: "any", dimensionality: "matrix" },
          options: { requiresAddress: true },
        },
      ],
    });
  });

  it("marks none as answering at once unless that is asked for: a preview is nothing to publish", () => {
    for (const { options } of excelMetadata(functions, BASE).functions)
      expect(options).toEqual({ requiresAddress: true });
  });

  // Excel keeps functions.json for up to a day, and a saved workbook calls by id and by position for ever.
  it("keeps every id, and the order of parameters, of the last release; new ones come last and are optional", () => {
    const now = new Map(excelMetadata(functions, BASE).functions.map((one) => [one.id, one]));
    const published = readFileSync("test/registry/published.txt", "utf8").trim().split("\n");
    expect(published.length).toBeGreaterThan(40);
    for (const line of published) {
      const [, id, list] = /^(\w+)\((.*)\)$/.exec(line)!;
      const names = list === "" ? [] : list!.split(", ");
      const { parameters, name } = now.get(id!)!;
      expect([id, name, parameters.slice(0, names.length).map(written)]).toEqual([id, id, names]);
      for (const { optional } of parameters.slice(names.length)) expect([line, optional]).toEqual([line, true]);
    }
  });

  describe("of the functions there are", () => {
    const { functions: described } = excelMetadata(functions, BASE);

    // Microsoft, "Naming and localization for custom functions in Excel" (2025): a letter first, then letters, digits, underscores, periods; at least 3; no cell's
    // address. "Manually create JSON metadata for custom functions": ids of letters, digits and periods only. 64 is the most in the unified manifest's schema.
    it("keeps to Excel's rules for ids and names", () => {
      for (const { id, name } of described) {
        expect(id).toMatch(/^[A-Z][A-Z0-9.]{2,63}$/);
        expect(id).not.toMatch(/^([A-Z]{1,3}[0-9]+|R[0-9]*C[0-9]*)$/);
        expect(name).toBe(id);
      }
      expect(new Set(described.map(({ id }) => id.toLowerCase())).size).toBe(described.length);
      expect(described.length).toBeGreaterThan(30);
    });
    // Excel's function dialog shows 255 characters of a description (the limit of MacroOptions in its object model; from memory).
    it("keeps descriptions short enough to be shown whole", () => {
      for (const { description, parameters } of described)
        for (const text of [description, ...parameters.map((one) => one.description)]) {
          expect(text.length).toBeGreaterThan(3);
          expect(text.length).toBeLessThanOrEqual(255);
        }
    });
    it("names parameters once each, in plain words, the optional ones last", () => {
      for (const { name, parameters } of described) {
        expect(new Set(parameters.map((one) => one.name)).size, name).toBe(parameters.length);
        for (const one of parameters) expect(one.name, name).toMatch(/^[a-z][A-Za-z]*$/);
        const first = parameters.findIndex(({ optional }) => optional);
        if (first >= 0)
          expect(
            parameters.slice(first).every(({ optional }) => optional),
            name,
          ).toBe(true);
      }
    });
    it("has a matrix for a result exactly where an example spills, and all examples of a function agree", () => {
      for (const definition of functions) {
        expect(new Set(definition.examples.map(({ result }) => Array.isArray(result))).size, definition.name).toBe(1);
        expect(described.find(({ id }) => id === definition.name)!.result.dimensionality).toBe(
          definition.result === "table" ? "matrix" : "scalar",
        );
      }
    });
    it("marks as answering at once all but the asynchronous, where that is asked for", () => {
      const sync = excelMetadata(functions, BASE, true).functions;
      for (const definition of functions)
        expect(sync.find(({ id }) => id === definition.name)!.options.supportSync ?? false).toBe(
          !definition.asynchronous,
        );
    });
    it("uses no option that does not go with requiresAddress", () => {
      for (const { options } of described)
        expect(Object.keys(options).filter((option) => !["requiresAddress", "supportSync"].includes(option))).toEqual(
          [],
        );
    });
  });
});
