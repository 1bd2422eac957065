import { describe, expect, it } from "vitest";
import { ExcelFake } from "../excelFake.ts";

/** What a lax stand-in would let through. */
describe("the stand-in for Excel", () => {
  const fake = new ExcelFake();
  const on = (job: (range: any, context: any) => unknown) =>
    fake.run(async (context: any) =>
      job(context.workbook.worksheets.getItem("Sheet1").getRangeByIndexes(0, 0, 2, 2), context),
    );

  it.each<[string, (range: any, context: any) => unknown, string]>([
    ["a property that was not loaded", (range) => range.values, "PropertyNotLoaded"],
    ["a property that was loaded but not synced", (range) => range.load("values").values, "PropertyNotLoaded"],
    ["a property there is not", (range) => range.load("value"), "no property"],
    ["a method there is not", (range) => range.clearAll(), "no member"],
    [
      "a null object before sync",
      (_, context) => context.workbook.worksheets.getItemOrNullObject("X").isNullObject,
      "PropertyNotLoaded",
    ],
    ["a grid of the wrong shape", (range) => (range.formulas = [["=1"]]), "1x1"],
    [
      "a range off the sheet",
      (_, context) => context.workbook.worksheets.getItem("Sheet1").getRangeByIndexes(-1, 0, 1, 1),
      "InvalidArgument",
    ],
    [
      "a member's property that was not asked for",
      async (_, context) => {
        context.workbook.worksheets.load("items/name");
        await context.sync();
        return context.workbook.worksheets.items[0].visibility;
      },
      "PropertyNotLoaded",
    ],
    [
      "a sheet that is not there",
      async (_, context) => {
        context.workbook.worksheets.getItem("X").load("name");
        await context.sync();
      },
      "ItemNotFound",
    ],
    [
      "a request that is too large",
      async (_, context) => {
        const range = context.workbook.worksheets.getItem("Sheet1").getRangeByIndexes(0, 0, 30_000, 1);
        range.formulas = Array.from({ length: 30_000 }, () => ["x".repeat(200)]);
        await context.sync();
      },
      "RequestPayloadSizeLimitExceeded",
    ],
    [
      "ranges that nobody let go of",
      async (range, context) => {
        for (let n = 0; n < 30_000; n++) range.getCell(0, 0).untrack();
        await context.sync();
        for (let n = 0; n < 30_000; n++) range.getCell(0, 0);
        await context.sync();
      },
      "RequestPayloadSizeLimitExceeded",
    ],
    [
      "an answer that is too large",
      async (_, context) => {
        for (let row = 0; row < 200; row++) fake.sheet("Sheet1")!.enter(row, 5, `'${"x".repeat(30_000)}`);
        context.workbook.worksheets.getItem("Sheet1").getRangeByIndexes(0, 5, 200, 1).load("values");
        await context.sync();
      },
      "ResponsePayloadSizeLimitExceeded",
    ],
  ])("throws on %s", async (_, job, words) => {
    await expect(on(job)).rejects.toThrow(words);
  });
  it("throws on a run that gives no promise, and has Excel's code on what it throws", async () => {
    await expect(fake.run((() => 5) as never)).rejects.toMatchObject({ code: "RunMustReturnPromise" });
    await expect(on((range) => range.values)).rejects.toMatchObject({ code: "PropertyNotLoaded" });
  });
  it("writes at sync and not before, and reads entries as Excel does", async () => {
    await fake.run(async (context: any) => {
      context.workbook.worksheets.getItem("Sheet1").getRangeByIndexes(0, 0, 1, 4).formulas = [
        ["6/12", "'6/12", null, "=1"],
      ];
      expect(fake.sheet("Sheet1")!.peek(0, 1).value).toBe("");
      await context.sync();
    });
    const sheet = fake.sheet("Sheet1")!;
    expect([0, 1, 2, 3].map((column) => sheet.peek(0, column).formula)).toEqual([45_822, "6/12", "", "=1"]);
  });
});
