import { expect, it } from "vitest";
import type { ConditionalRule } from "hucre";
import { valueRulesOf } from "../../src/xlsx/valueRules.ts";

const red = {
  font: { bold: true },
  fill: { type: "pattern" as const, pattern: "solid" as const, bgColor: { rgb: "FFFF0000" } },
};
const resolve = ({ rgb }: { readonly rgb?: string }) => (rgb ? `#${rgb.slice(-6).toLowerCase()}` : null);
const read = (...rules: ConditionalRule[]) => valueRulesOf(rules, resolve);
const B2 = { row: 1, column: 1, rows: 1, columns: 1 };
const look = { bold: true, fill: "#ff0000" };

it("formats that depend on values are read with the look that the rule gives, the first that wins first", () => {
  const { rules, all } = read(
    { type: "expression", priority: 2, formula: "B2>_xlfn.DAYS(A1,A2)", range: "B2", style: red, stopIfTrue: true },
    { type: "cellIs", priority: 1, operator: "between", formula: ["1", "5"], range: "B2 C3:C4", style: red },
    {
      type: "containsText",
      priority: 3,
      text: "wet",
      formula: 'NOT(ISERROR(SEARCH("wet",B2)))',
      range: "B2",
      style: red,
    },
    { type: "duplicateValues", priority: 4, range: "B2", style: red },
    {
      type: "colorScale",
      priority: 5,
      range: "B2",
      colorScale: { cfvo: [{ type: "min" }, { type: "percentile", value: "50" }], colors: ["FFF8696B", "FF63BE7B"] },
    },
    {
      type: "dataBar",
      priority: 6,
      range: "B2",
      dataBar: { cfvo: [{ type: "min" }, { type: "max" }], color: "FF638EC6" },
    },
  );
  expect(all).toBe(true);
  expect(rules).toEqual([
    {
      areas: [B2, { row: 2, column: 2, rows: 2, columns: 1 }],
      shows: { kind: "number", operator: "between", values: [1, 5], look },
    },
    { areas: [B2], shows: { kind: "formula", formula: "=B2>DAYS(A1,A2)", look }, last: true },
    { areas: [B2], shows: { kind: "text", operator: "containsText", text: "wet", look } },
    { areas: [B2], shows: { kind: "duplicates", look } },
    {
      areas: [B2],
      shows: {
        kind: "scale",
        points: [
          { at: "min", color: "#f8696b" },
          { at: "percentile", value: 50, color: "#63be7b" },
        ],
      },
    },
    { areas: [B2], shows: { kind: "bar", from: { at: "min" }, to: { at: "max" }, color: "#638ec6" } },
  ]);
});

it("one that cannot be shown here is left to the file", () => {
  expect(
    read({ type: "cellIs", priority: 1, operator: "greaterThan", formula: "$A$1", range: "B2", style: red }),
  ).toEqual({ rules: [], all: false });
  expect(
    read({ type: "iconSet", priority: 1, range: "B2", iconSet: { iconSet: "3Arrows", cfvo: [{ type: "min" }] } }).all,
  ).toBe(false);
});
