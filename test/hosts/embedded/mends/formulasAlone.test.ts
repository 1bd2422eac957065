import { expect, it, vi } from "vitest";
import type { Headless } from "../headless.ts";
import { useHeadless } from "../useHeadless.ts";

let t: Headless;
const make = useHeadless((fresh) => (t = fresh));

/** What the engine gathers by itself. */
const byItself = ({ formulas }: Headless): unknown =>
  (Object.getPrototypeOf(formulas) as typeof formulas).getFormulaData.call(formulas);

it("finds the formulas that the engine finds: typed, shared, in several sheets, and none left", () => {
  const cells = {
    0: { 0: { f: "=B1*2", si: "a" }, 1: { v: 3 }, 2: { v: "text", s: "x" } },
    1: { 0: { si: "a" }, 1: { v: 4 }, 2: { f: "", v: "=text" } },
    // Shared with a cell that has gone.
    7: { 3: { si: "b" }, 4: { f: "=SUM(A1:A2)" }, 5: null },
  };
  const one = make(undefined, undefined, cells as never);
  expect(one.formulas.getFormulaData()).toEqual(byItself(one));
  expect(Object.keys(Object.values(one.formulas.getFormulaData()["book"]!)[0]!)).toEqual(["0", "1", "7"]);
  t.type("A1", "=1+1");
  t.type("A2", "plain");
  expect(t.formulas.getFormulaData()).toEqual(byItself(t));
  t.type("A1", "");
  expect(t.formulas.getFormulaData()).toEqual(byItself(t));
});

it("makes no call for a cell that has none", () => {
  t.type("A1", "=1+1");
  const each = vi.spyOn(t.worksheet().getSheet().getCellMatrix(), "forValue");
  t.formulas.getFormulaData();
  expect(each).not.toHaveBeenCalled();
  byItself(t);
  expect(each).toHaveBeenCalled();
});
