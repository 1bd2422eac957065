import { expect, it } from "vitest";
import { families } from "../../src/registry/families.ts";
import type { WorksheetFunction } from "../../src/registry/worksheetFunction.ts";

it("has every function under its own family only, families and functions in the order in which they come", () => {
  const one = (name: string, family: string) => ({ name, family }) as WorksheetFunction;
  const all = families([one("A", "hips"), one("B", "stock"), one("C", "hips")]);
  expect(all.map(({ name, heading, functions }) => [name, heading, functions.map((own) => own.name)])).toEqual([
    ["hips", "Hips", ["A", "C"]],
    ["stock", "Stock", ["B"]],
  ]);
});
