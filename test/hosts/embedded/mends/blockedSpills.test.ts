import { beforeEach, expect, it } from "vitest";
import type { Headless } from "../headless.ts";
import { useHeadless } from "../useHeadless.ts";

let t: Headless;
useHeadless((fresh) => (t = fresh));

/** Two tables that want the same cells, both blocked. */
beforeEach(() => {
  t.type("F6", "mine");
  t.type("E4", "=RAFTER.ROWS(4)");
  t.type("D1", "=SEQUENCE(6,3)");
});
const filled = (cells: unknown[][]) =>
  cells.flatMap((line, row) => line.flatMap((value, column) => (value === "" ? [] : [[row, column, value]])));

it("two blocked tables whose areas cross, moved by a row: no #SPILL! stays behind, nor after undo", async () => {
  const before = filled(await t.values("D1:G9"));
  expect(before).toEqual([
    [0, 0, "#SPILL!"],
    [3, 1, "#SPILL!"],
    [5, 2, "mine"],
  ]);
  t.worksheet().insertRowsBefore(0, 1);
  expect(filled(await t.values("D2:G10"))).toEqual(before);
  expect(filled(await t.values("D1:G1"))).toEqual([]);
  t.undo();
  expect(filled(await t.values("D1:G9"))).toEqual(before);
});

it("one emptied: the other is as it was", async () => {
  t.type("E4", "");
  t.type("F6", "");
  expect((await t.values("D1:F6")).flat()).toEqual(Array.from({ length: 18 }, (_, i) => i + 1));
});
