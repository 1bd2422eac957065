import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { answer } from "../../src/hosts/terminal/answer.ts";
import { formulaText } from "../../src/registry/formulaText.ts";
import {
  worksheetFunction,
  type Cell,
  type Parameter,
  type WorksheetFunction,
} from "../../src/registry/worksheetFunction.ts";

const block: Parameter<Cell[][], "block"> = {
  name: "block",
  description: "A block.",
  quantity: "list",
  block: true,
  read: (cells) => cells as Cell[][],
};
const same = worksheetFunction({
  name: "SAME",
  family: "test",
  summary: "The block itself.",
  parameters: [block],
  result: "table",
  returns: "the block.",
  examples: [
    { cells: [[[1]]], result: [[1]] },
    { cells: [[[2]]], result: [[2]] },
  ],
  compute: ({ block }) => block,
});

describe("formulaText", () => {
  it.each<[Parameters<typeof formulaText>[1]["cells"], string]>([
    [["6/12", 48, 1.5], '=RAFTER.SAME("6/12", 48, 1.5)'],
    [[`9' 4 5/8"`], `=RAFTER.SAME("9' 4 5/8""")`],
    [[true, -0.5], "=RAFTER.SAME(TRUE, -0.5)"],
    [
      [
        [
          ["Span", 288],
          ["Ridge", null],
        ],
      ],
      '=RAFTER.SAME({"Span",288;"Ridge",""})',
    ],
    [[], "=RAFTER.SAME()"],
  ])("writes %j", (cells, text) => {
    expect(formulaText(same, { cells })).toBe(text);
  });

  it("is read back as the same cells, by a parser of formulas that is not ours", async () => {
    const cell = fc.oneof(
      fc.string({ unit: "grapheme" }),
      fc.boolean(),
      fc.double({ noNaN: true, noDefaultInfinity: true }).map((n) => (n === 0 ? 0 : n)),
    );
    const functions = new Map([["SAME", same as unknown as WorksheetFunction]]);
    await fc.assert(
      fc.asyncProperty(
        fc
          .integer({ min: 1, max: 3 })
          .chain((columns) =>
            fc.array(fc.array(cell, { minLength: columns, maxLength: columns }), { minLength: 1, maxLength: 4 }),
          ),
        async (rows) => {
          const formula = formulaText(same, { cells: [rows] });
          expect(await answer(formula, functions)).toEqual({ formula, value: rows });
        },
      ),
    );
  });
});
