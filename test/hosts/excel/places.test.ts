import { beforeEach, describe, expect, it, vi } from "vitest";
import type { Host } from "../../../src/hosts/host.ts";
import { area, block, step } from "../conformance/steps.ts";
import type { ExcelFake } from "../excelFake.ts";
import { excelUnderTest } from "../excelUnderTest.ts";

let fake: ExcelFake;
let host: Host;
beforeEach(() => {
  ({ fake, host } = excelUnderTest());
});

describe("a place in Excel that would go wrong", () => {
  const two = step(
    block(3, 0, [
      ["a", 1],
      ["b", 2],
    ]),
  );
  const before = () => fake.everything();
  it.each<[string, () => unknown, RegExp]>([
    [
      "a filter hides a row of it",
      () => fake.sheet("Sheet1")!.hidden.rows.add(4),
      /Rows are hidden.*Sheet1!A4.*filter.*Data, Clear/,
    ],
    [
      "a column of it is hidden",
      () => fake.sheet("Sheet1")!.hidden.columns.add(1),
      /Columns are hidden.*Sheet1!A4.*Unhide/,
    ],
    ["cells of it are merged", () => fake.sheet("Sheet1")!.merged.add("4,1"), /Sheet1!B5 are merged.*Merge & Center/],
  ])("is refused in words where %s", async (_, make, words) => {
    vi.stubGlobal("Office", { context: { requirements: { isSetSupported: () => true } } });
    make();
    const stood = before();
    await expect(host.write(two)).rejects.toThrow(words);
    expect(before()).toEqual(stood);
    vi.unstubAllGlobals();
  });
  it("takes a value in a row that the user hid: it changes what is there, and hides nothing new", async () => {
    fake.sheet("Sheet1")!.hidden.rows.add(3);
    await host.write(step(block(3, 1, [[7]])));
    expect(fake.sheet("Sheet1")!.peek(3, 1).value).toBe(7);
  });
  it("is written to where the workbook calculates by hand, which is then said", async () => {
    expect((await host.write(two)).hint).toBeUndefined();
    fake.calculationMode = "Manual";
    expect((await host.write(two)).hint).toContain("F9");
  });
  it("says what to do where a table is blocked", async () => {
    fake.type("Sheet1", 0, 0, "=RAFTER.JACKTABLE(A1:B2)");
    fake.showAt("Sheet1", 0, 0, "#SPILL!");
    expect(await host.messageAt("Sheet1", 0, 0)).toMatch(/^Something stands where this table must go/);
  });
  it("is asked for anew where its sheet was deleted meanwhile", async () => {
    await host.write(step(block(0, 0, [["x"]], { sheet: "Other", newSheet: true })));
    fake.sheets = fake.sheets.filter(({ name }) => name !== "Other");
    await expect(host.write(step(block(0, 0, [["y"]], { sheet: "Other" })))).rejects.toThrow("no sheet named Other");
    await expect(host.show(area(0, 0, 1, 1, "Other"))).rejects.toThrow("no sheet named Other");
  });
  it("reads cells that hold more text than one answer may weigh", async () => {
    for (let row = 0; row < 300; row++) fake.sheet("Sheet1")!.enter(row, 0, `'${"x".repeat(30_000)}`);
    const tall = step(
      block(
        0,
        0,
        Array.from({ length: 300 }, () => ["y"]),
      ),
    );
    expect(await host.occupied(tall)).toHaveLength(300);
  });
});
