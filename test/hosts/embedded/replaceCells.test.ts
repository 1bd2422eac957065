import { expect, it } from "vitest";
import type { Headless } from "./headless.ts";
import { useHeadless } from "./useHeadless.ts";

let h: Headless;
useHeadless((fresh) => (h = fresh));

const replace = (text: string, by: string) => h.replaceCells(h.sheet, h.findCells(h.sheet, text), text, by);

it("puts a text in the place of another in values and formulas, and leaves results alone; one undo takes all back", async () => {
  h.type("A1", "Fir 2x8 fir");
  h.type("A2", 280);
  h.type("A3", "=A2+8");
  h.type("A4", "a+b (28)");
  await h.values("A1:A4");
  expect(await replace("FIR", "pine")).toBe(1);
  // 288 shows it too, but only as a result.
  expect(await replace("28", "30")).toBe(2);
  expect(await h.values("A1:A4")).toEqual([["pine 2x8 pine"], [300], [308], ["a+b (30)"]]);
  expect(await replace("A2+8", "A2*2")).toBe(1);
  expect(await h.values("A3")).toEqual([[600]]);
  h.undo();
  h.undo();
  expect(await h.values("A1:A4")).toEqual([["pine 2x8 pine"], [280], [288], ["a+b (28)"]]);
});

it("a text never becomes a number or a formula, a number that is none any more becomes a text, and nothing leaves an empty cell", async () => {
  h.type("A1", "x12");
  h.type("A2", "x=1");
  h.type("A3", 15);
  h.type("A4", "x");
  await h.values("A1:A4");
  expect(await replace("x", "")).toBe(3);
  expect(await replace("5", "five")).toBe(1);
  expect(await h.values("A1:A4")).toEqual([["12"], ["=1"], ["1five"], [""]]);
  expect((await h.host.read({ sheet: "Sheet1", row: 1, column: 0, rows: 1, columns: 1 }))[0]![0]!.formula).toBeNull();
  expect(await replace("", "y")).toBe(0);
  expect(await replace("(", "y")).toBe(0);
});
