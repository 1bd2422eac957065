import { beforeEach, describe, expect, it } from "vitest";
import type { Headless } from "../headless.ts";
import type { HeadlessFilters } from "../headlessFilters.ts";
import { useHeadless } from "../useHeadless.ts";

let t: Headless;
let filter: HeadlessFilters;
useHeadless((fresh) => (t = fresh));

beforeEach(async () => {
  filter = await t.filters();
  const rows = [
    ["Wood", "Pieces"],
    ["pine", 4],
    ["fir", 5],
    ["pine", 6],
    ["fir", 7],
    ["pine", 8],
  ] as const;
  rows.forEach(([wood, count], i) => (t.type(`A${i + 1}`, wood), t.type(`B${i + 1}`, count)));
  t.type("B7", "=SUM(B2:B6)");
  await t.values("A1");
  filter.set("A1:B6");
});

/** Does something, undoes and redoes it: what was before and after comes back. */
async function thereAndBack(act: () => unknown) {
  const before = [filter.now(), await t.values("A1:E20")];
  await act();
  const after = [filter.now(), await t.values("A1:E20")];
  t.undo();
  expect([filter.now(), await t.values("A1:E20")]).toEqual(before);
  t.redo();
  expect([filter.now(), await t.values("A1:E20")]).toEqual(after);
  return filter.now();
}

const rowAt =
  (row: number, count = 1) =>
  () =>
    t.worksheet().insertRowsBefore(row, count);

describe("a filter", () => {
  it("is set, lets values through, and is cleared; undo brings back each", async () => {
    expect(filter.now()).toEqual({ area: [0, 0, 5, 1], columns: [], hidden: [] });
    expect(await thereAndBack(() => filter.only(0, "pine"))).toEqual({
      area: [0, 0, 5, 1],
      columns: [0],
      hidden: [2, 4],
    });
    // What is typed hides nothing until it is asked anew, and undo of a filter does not ask.
    t.type("A2", "fir");
    expect(await thereAndBack(() => filter.only(1, "4", "6"))).toEqual({
      area: [0, 0, 5, 1],
      columns: [0, 1],
      hidden: [1, 2, 4, 5],
    });
    t.undo();
    expect(filter.now()!.hidden).toEqual([2, 4]);
    expect(await thereAndBack(() => filter.remove())).toBeNull();
  });

  it("does not grow when a cell below it is set, or a formula there moves", async () => {
    t.type("A7", "all");
    await t.values("A1");
    expect(filter.now()!.area).toEqual([0, 0, 5, 1]);
    expect((await thereAndBack(rowAt(0)))!.area).toEqual([1, 0, 6, 1]);
  });

  it.each([
    ["above it", 0, 1, [1, 0, 6, 1], [3, 5]],
    ["above it, more than it has", 0, 9, [9, 0, 14, 1], [11, 13]],
    ["in it", 3, 2, [0, 0, 7, 1], [2, 6]],
    ["in it, more than it has", 3, 9, [0, 0, 14, 1], [2, 13]],
    ["below it", 6, 2, [0, 0, 5, 1], [2, 4]],
  ])("goes with its cells when rows come in %s", async (_, row, count, area, hidden) => {
    filter.only(0, "pine");
    expect(await thereAndBack(rowAt(row, count))).toEqual({ area, columns: [0], hidden });
  });

  it.each([
    ["left of it", 0, 3, [0, 3, 5, 4], [3]],
    ["in it", 1, 1, [0, 0, 5, 2], [0]],
  ])("goes with its cells when columns come in %s", async (_, column, count, area, columns) => {
    filter.only(0, "pine");
    expect(await thereAndBack(() => t.worksheet().insertColumnsBefore(column, count))).toEqual({
      area,
      columns,
      hidden: [2, 4],
    });
  });

  it("goes with its cells when rows above it, of it, or its heading are deleted, or columns of it", async () => {
    t.worksheet().insertRowsBefore(0, 2);
    filter.only(0, "pine");
    expect(filter.now()).toEqual({ area: [2, 0, 7, 1], columns: [0], hidden: [4, 6] });
    expect(await thereAndBack(() => t.worksheet().deleteRows(0, 1))).toEqual({
      area: [1, 0, 6, 1],
      columns: [0],
      hidden: [3, 5],
    });
    expect(await thereAndBack(() => t.worksheet().deleteColumns(0, 1))).toEqual({
      area: [1, 0, 6, 0],
      columns: [],
      hidden: [],
    });
    t.undo();
    expect(await thereAndBack(() => t.worksheet().deleteRows(1, 1))).toBeNull();
  });

  it("keeps hidden rows when those around them are deleted, and formulas count only what went", async () => {
    filter.only(0, "pine");
    // Rows 2 to 6, of which 3 and 5 are hidden and stay.
    expect(await thereAndBack(() => t.worksheet().deleteRows(1, 5))).toEqual({
      area: [0, 0, 2, 1],
      columns: [0],
      hidden: [1, 2],
    });
    expect(await t.values("A1:B4")).toEqual([
      ["Wood", "Pieces"],
      ["fir", 5],
      ["fir", 7],
      ["", 12],
    ]);
    expect(t.worksheet().getRange("B4").getFormula()).toBe("=SUM(B2:B3)");
  });

  it("goes with its cells on a sheet that is not looked at, and with a sheet that went and came back", async () => {
    filter.only(0, "pine");
    t.sheet.workbook.create("Other", 50, 10);
    t.sheet.workbook.setActiveSheet(t.sheet.workbook.getSheetByName("Other")!);
    expect((await thereAndBack(rowAt(0)))!.area).toEqual([1, 0, 6, 1]);
    const before = filter.now();
    t.sheet.workbook.deleteSheet("s1");
    expect(filter.now()).toBeNull();
    t.undo();
    expect(filter.now()).toEqual(before);
    t.type("A3", "oak");
    await t.values("A1");
    filter.only(0, "oak");
    expect(filter.now()!.hidden).toEqual([3, 4, 5, 6, 2].sort((a, b) => a - b).filter((row) => row !== 2));
  });
});
