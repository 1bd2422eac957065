import { expect, it } from "vitest";
import { worksheetFunction } from "../../../../src/registry/worksheetFunction.ts";
import type { Headless } from "../headless.ts";
import { useHeadless } from "../useHeadless.ts";

const make = useHeadless(() => undefined);

// Some milliseconds of work, and how many turns the page had had by then.
let worked = 0;
let turns = 0;
const seen: number[] = [];
const slow = worksheetFunction({
  name: "SLOW",
  family: "test",
  summary: "Takes its time.",
  parameters: [{ name: "value", description: "Anything.", quantity: "number", read: (cell) => Number(cell) }],
  result: "value",
  returns: "the value.",
  examples: [
    { cells: [1], result: 1 },
    { cells: [2], result: 2 },
  ],
  compute({ value }) {
    for (let i = 0; i < 1_200_000; i++) worked += Math.sqrt(i);
    seen.push(turns);
    return value as number;
  },
});

/** The table of many slow formulas. */
const many = () => Array.from({ length: 100 }, (_, i) => [{ f: `=RAFTER.SLOW(${i})` }]);

it("a calculation of many formulas lets the page take its turns", async () => {
  const t: Headless = make([slow]);
  await t.values("A1");
  const turning = setInterval(() => void turns++);
  t.worksheet().getRange(0, 0, 100, 1).setValues(many());
  expect((await t.values("A1:A100")).flat()).toEqual(Array.from({ length: 100 }, (_, i) => i));
  clearInterval(turning);
  // The engine by itself would do it all in one piece.
  expect(worked).toBeGreaterThan(0);
  expect(new Set(seen).size).toBeGreaterThan(3);
});

it("the one that a page starts with begins at once and is done in one piece: nobody sees the sheet yet", async () => {
  const cellData = Object.fromEntries(many().map(([cell], row) => [row, { 0: cell! }]));
  const t: Headless = make([slow], 1000, cellData, true);
  seen.length = 0;
  // Before any timer: the engine by itself would wait for more edits first.
  await new Promise((resolve) => setImmediate(resolve));
  expect(seen.length).toBe(100);
  expect((await t.values("A1:A100")).flat()).toEqual(many().map((_, i) => i));
});
