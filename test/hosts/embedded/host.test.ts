import { describe, expect, it, vi } from "vitest";
import type { WriteStep } from "../../../src/hosts/host.ts";
import type { Headless } from "./headless.ts";
import { useHeadless } from "./useHeadless.ts";

// What the embedded sheet does beyond what every host must (conformance.test.ts).
let t: Headless;
const make = useHeadless((fresh) => (t = fresh));

const STEP: WriteStep = {
  title: "test",
  blocks: [
    {
      sheet: "Made",
      newSheet: true,
      row: 0,
      column: 0,
      frozenRows: 1,
      widths: [150],
      cells: [[{ content: "Piece", style: "heading" }], [{ content: "=RAFTER.ROWS(3)" }]],
      spill: { row: 1, column: 0, rows: 3, columns: 2 },
    },
    {
      sheet: "Sheet1",
      row: 0,
      column: 0,
      cells: [[{ content: "=SUM(Made!A2:B9)" }], [{ content: 5, format: "0.00" }]],
    },
  ],
};

it("reads a workbook just opened when its formulas have their first results", async () => {
  t = make(undefined, 20, { 0: { 0: { f: "=RAFTER.ROWS(2)" }, 3: { f: "=SUM(A1:B2)*2" } } });
  expect((await t.values("A1:D1"))[0]).toEqual([1, 10, "", 66]);
});

describe("onChange", () => {
  it.each<[string, () => unknown]>([
    ["a new sheet", () => t.sheet.workbook.insertSheet("Other")],
    ["a sheet's name", () => t.worksheet().setName("Other")],
    ["an inserted row", () => t.worksheet().insertRowBefore(0)],
    ["a deleted column", () => t.worksheet().deleteColumn(0)],
    ["a written and taken back sheet", async () => t.host.takeBack(await t.host.write(STEP))],
  ])("hears of %s", async (_, change) => {
    let heard = 0;
    t.host.onChange(() => void heard++);
    await change();
    await expect.poll(() => heard).toBeGreaterThan(0);
  });
  it("hears of a sheet that goes", async () => {
    const made = t.sheet.workbook.insertSheet("Other");
    let heard = 0;
    t.host.onChange(() => void heard++);
    t.sheet.workbook.deleteSheet(made);
    expect(heard).toBeGreaterThan(0);
  });
});

describe("undo and redo of a write", () => {
  const everything = async () => ({
    sheets: await t.host.sheets(),
    sum: await t.values("A1:A2"),
    width: t.sheet.workbook.getSheetByName("Made")?.getColumnWidth(0),
  });
  it("are one step each, any number of times", async () => {
    t.type("A2", "mine");
    const before = await everything();
    await t.host.write(STEP);
    const after = await everything();
    expect(after).toEqual({ sheets: ["Sheet1", "Made"], sum: [[66], [5]], width: 150 });
    for (let i = 0; i < 3; i++) {
      t.undo();
      expect(await everything()).toEqual(before);
      t.redo();
      expect(await everything()).toEqual(after);
      expect(await t.values("Made!A1:B4")).toEqual([
        ["Piece", ""],
        [1, 10],
        [2, 20],
        [3, 30],
      ]);
      expect(t.worksheet("Made").getFrozenRows()).toBe(1);
    }
  });
  it("leave a taking back nothing to do after undo, and all of it after redo", async () => {
    const before = await everything();
    for (const redo of [false, true]) {
      const written = await t.host.write(STEP);
      t.undo();
      if (redo) t.redo();
      expect(await t.host.takeBack(written)).toEqual([]);
      expect(await everything()).toEqual(before);
    }
  });
  it("undo a taking back, and redo it", async () => {
    const before = await everything();
    const written = await t.host.write(STEP);
    const after = await everything();
    await t.host.takeBack(written);
    t.undo();
    expect(await everything()).toEqual(after);
    t.redo();
    expect(await everything()).toEqual(before);
  });
});

describe("takeBack", () => {
  it("keeps a width that the user changed since, and rows that the write added", async () => {
    const written = await t.host.write({
      title: "test",
      blocks: [{ sheet: "Sheet1", row: 1500, column: 0, widths: [150], cells: [[{ content: 1 }]] }],
    });
    t.worksheet().setColumnWidth(0, 77);
    expect(await t.host.takeBack(written)).toEqual([]);
    expect(t.worksheet().getColumnWidth(0)).toBe(77);
    expect(await t.values("A1501")).toEqual([[""]]);
  });
  it("names a cell whose formula moved with an inserted row", async () => {
    const written = await t.host.write({
      title: "test",
      blocks: [{ sheet: "Sheet1", row: 3, column: 0, cells: [[{ content: 1 }]] }],
    });
    t.worksheet().insertRowBefore(0);
    expect(await t.host.takeBack(written)).toEqual(["Sheet1!A4"]);
    expect(await t.values("A5")).toEqual([[1]]);
  });
  it("takes back what is left when the user has deleted the new sheet", async () => {
    const written = await t.host.write({
      ...STEP,
      blocks: [STEP.blocks[0]!, { sheet: "Sheet1", row: 0, column: 0, cells: [[{ content: 5 }]] }],
    });
    t.type("C1", "=Made!A1");
    t.sheet.workbook.deleteSheet(t.worksheet("Made"));
    expect(await t.host.takeBack(written)).toEqual([]);
    expect(await t.host.sheets()).toEqual(["Sheet1"]);
    expect(await t.values("A1:B1")).toEqual([["", ""]]);
  });
  it("that the sheet stops half-way leaves all as it was, and can be tried again", async () => {
    const written = await t.host.write(STEP);
    const run = t.commands.syncExecuteCommand.bind(t.commands);
    const taken = vi
      .spyOn(t.commands, "syncExecuteCommand")
      .mockImplementation((id, ...rest) =>
        id === "sheet.mutation.remove-sheet" ? (false as never) : run(id, ...rest),
      );
    await expect(t.host.takeBack(written)).rejects.toThrow("did not take a change");
    taken.mockRestore();
    expect(await t.values("A1:A2")).toEqual([[66], [5]]);
    expect(await t.host.takeBack(written)).toEqual([]);
    expect(await t.host.sheets()).toEqual(["Sheet1"]);
  });
});

it("listens no more after many steps than after one", async () => {
  const { _commandExecutedListeners: listeners } = t.commands as unknown as { _commandExecutedListeners: unknown[] };
  const before = listeners.length;
  for (let i = 0; i < 3; i++) await t.host.takeBack(await t.host.write(STEP));
  expect([before > 0, listeners.length]).toEqual([true, before]);
});

describe("what is remembered", () => {
  it("is kept in the workbook's own snapshot", async () => {
    await t.host.remember("inputs", "24'");
    expect(JSON.stringify(t.sheet.workbook.save().custom)).toContain("24'");
  });
});

it("writes many tables in turns with the page", async () => {
  let turns = 0;
  const seen = new Set<number>();
  const turning = setInterval(() => void turns++);
  const cells = Array.from({ length: 300 }, (_, i) => Array.from({ length: 8 }, (__, j) => ({ content: i * j })));
  await t.host.write(
    {
      title: "many",
      blocks: Array.from({ length: 12 }, (_, k) => ({ sheet: `Many ${k}`, newSheet: true, row: 0, column: 0, cells })),
    },
    { progress: () => void seen.add(turns) },
  );
  clearInterval(turning);
  expect(seen.size).toBeGreaterThan(1);
});
