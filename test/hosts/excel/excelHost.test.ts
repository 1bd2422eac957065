import { beforeEach, describe, expect, it, vi } from "vitest";
import type { Host } from "../../../src/hosts/host.ts";
import { area, block, schedule, step } from "../conformance/steps.ts";
import { excelUnderTest } from "../excelUnderTest.ts";
import { excelError } from "../fakeSheet.ts";
import type { ExcelFake } from "../excelFake.ts";

let fake: ExcelFake;
let host: Host;
beforeEach(() => {
  ({ fake, host } = excelUnderTest());
});
describe("writing in Excel", () => {
  it("takes few round trips and leaves no run unsynced", async () => {
    fake.syncs = 0;
    await host.write(schedule(40));
    expect(fake.syncs).toBeLessThanOrEqual(7);
    expect(fake.unsynced).toBe(0);
  });
  it("refuses a protected sheet by name before anything is written, and taking back as well", async () => {
    const written = await host.write(step(block(0, 0, [["x"]], { sheet: "Locked", newSheet: true })));
    fake.sheet("Locked")!.isProtected = true;
    const before = fake.everything();
    await expect(host.write(step(block(0, 0, [["new"]]), block(0, 0, [["y"]], { sheet: "Locked" })))).rejects.toThrow(
      "The sheet Locked is protected",
    );
    await expect(host.takeBack(written)).rejects.toThrow("The sheet Locked is protected");
    expect(fake.everything()).toEqual(before);
  });
  it("puts everything back, looks included, when a later part fails", async () => {
    fake.type("Sheet1", 0, 0, "6/12");
    await host.write(step(block(0, 0, [["x"]], { sheet: "Other", newSheet: true })));
    const before = fake.everything();
    let failures = 1;
    fake.broken = (sheet) => sheet === "Other" && failures-- > 0;
    const heading = { content: "Piece", style: "heading" as const };
    await expect(
      host.write(
        step(
          { sheet: "Sheet1", row: 0, column: 0, cells: [[heading]], widths: [99] },
          block(0, 0, [[1]], { sheet: "Made", newSheet: true }),
          block(0, 0, [["y"]], { sheet: "Other" }),
        ),
      ),
    ).rejects.toThrow("does not allow");
    expect(fake.everything()).toEqual(before);
  });
  it("says so when something could not be put back", async () => {
    fake.broken = () => true;
    await expect(host.write(step(block(0, 0, [["y"]])))).rejects.toThrow("could not all be put back: look at Sheet1");
  });
  it("waits for a cell to be finished, and says so when Excel does not let it", async () => {
    vi.spyOn(fake, "run").mockImplementation(async (...given: unknown[]) => {
      expect(given[0]).toEqual({ delayForCellEdit: true });
      throw excelError("InvalidOperationInCellEditMode", "busy");
    });
    await expect(host.write(schedule(4))).rejects.toThrow("Press Enter or Esc");
  });
  // Typings of Office.js: EntityCellValue, LinkedEntityCellValue, LocalImageCellValue and WebImageCellValue have the basicType Error and the basicValue #VALUE!.
  it.each(["Error", "RichValue"] as const)(
    "refuses to write over a linked data type that reads as %s, which nothing could put back",
    async (rich) => {
      fake.type("Sheet1", 1, 1, "Stock");
      fake.sheet("Sheet1")!.cell(1, 1).rich = rich;
      const before = fake.everything();
      await expect(
        host.write(
          step(
            block(0, 0, [
              [1, 2],
              [3, 4],
            ]),
          ),
        ),
      ).rejects.toThrow("Sheet1!B2");
      expect(fake.everything()).toEqual(before);
      await host.write(
        step(
          block(0, 0, [
            [1, 2],
            [3, null],
          ]),
        ),
      );
    },
  );
});

describe("taking back in Excel", () => {
  it("restores logicals, error values, dates and text that begins with =", async () => {
    const sheet = fake.sheet("Sheet1")!;
    sheet.enter(0, 0, true);
    sheet.enter(0, 1, "#N/A");
    sheet.enter(0, 2, "'#N/A");
    sheet.enter(0, 3, "'=1+2");
    sheet.enter(0, 4, 45_822);
    sheet.cell(0, 4).format = "m/d/yyyy";
    const before = fake.everything();
    const written = await host.write(step(block(0, 0, [[1, 2, 3, 4, 5]])));
    expect(await host.takeBack(written)).toEqual([]);
    expect(fake.everything()).toEqual(before);
  });
  it("reads and gives back the looks of a large styled table in answers that each fit", async () => {
    // 40,000 cells of 140 bytes each are more than the 5 MB of one answer.
    const note = { content: 1, style: "note" as const };
    const cells = Array.from({ length: 400 }, () => Array.from({ length: 100 }, () => note));
    fake.sheet("Sheet1")!.cell(399, 99).bold = true;
    const before = JSON.stringify(fake.everything());
    const written = await host.write(step({ sheet: "Sheet1", row: 0, column: 0, cells }));
    expect(fake.sheet("Sheet1")!.peek(399, 99).italic).toBe(true);
    expect(await host.takeBack(written)).toEqual([]);
    expect(JSON.stringify(fake.everything())).toBe(before);
  });
  it("restores fills and leaves no white fill where there was none", async () => {
    fake.sheet("Sheet1")!.cell(0, 1).fill = "#ffee00";
    fake.sheet("Sheet1")!.cell(0, 1).bold = true;
    const before = fake.everything();
    const heading = { content: "Piece", style: "heading" as const };
    const written = await host.write(step({ sheet: "Sheet1", row: 0, column: 0, cells: [[heading, heading]] }));
    expect(fake.sheet("Sheet1")!.peek(0, 0)).toMatchObject({ bold: true, fill: "#e4ebf1" });
    await host.takeBack(written);
    expect(fake.everything()).toEqual(before);
  });
  it.each(["value", "parent"] as const)(
    "takes spilled values for the formula's doing, however they changed and whatever (%s) stands for their formula",
    async (spilledFormulas) => {
      fake.spilledFormulas = spilledFormulas;
      const written = await host.write(schedule(4));
      fake.spill("Jacks", 0, 3, [
        ["Piece", "Side"],
        ["J1", 16],
        ["J2", 32],
      ]);
      expect(await host.takeBack(written)).toEqual([]);
      expect(await host.sheets()).toEqual(["Sheet1"]);
    },
  );
  it("looks at a large live spill in pieces that each fit a request", async () => {
    const written = await host.write(schedule(700));
    fake.spill(
      "Jacks",
      0,
      3,
      Array.from({ length: 700 }, (_, i) => Array.from({ length: 13 }, (_, j) => i + j)),
    );
    expect(await host.occupied(step(block(0, 3, [["x"]], { sheet: "Jacks" })))).toEqual(["Jacks!D1"]);
    expect(await host.takeBack(written)).toEqual([]);
  });
  it("sees a cell typed far away on the new sheet", async () => {
    const written = await host.write(schedule(4));
    fake.type("Jacks", 49_999, 9, "mine");
    expect(await host.takeBack(written)).toEqual(["Jacks!J50000"]);
  });
  it("sees a cell typed beside a live spill on the new sheet", async () => {
    const written = await host.write(schedule(4));
    fake.spill("Jacks", 0, 3, [["Piece"], ["J1"]]);
    fake.type("Jacks", 9, 3, "mine");
    expect(await host.takeBack(written)).toEqual(["Jacks!D10"]);
  });
  it("does not turn another formula's spilled values into dead numbers", async () => {
    fake.type("Sheet1", 0, 0, "=SEQUENCE(3)");
    fake.spill("Sheet1", 0, 0, [[1], [2], [3]]);
    expect(await host.occupied(step(block(1, 0, [[9]])))).toEqual(["Sheet1!A2"]);
    const written = await host.write(step(block(1, 0, [[9]])));
    await host.takeBack(written);
    expect(fake.sheet("Sheet1")!.peek(1, 0)).toMatchObject({ formula: "", value: "" });
  });
  it("empties the made sheet where it has become the last one", async () => {
    const written = await host.write(schedule(4));
    fake.sheets = fake.sheets.filter(({ name }) => name !== "Sheet1");
    fake.active = fake.sheets[0]!;
    expect(await host.takeBack(written)).toEqual([]);
    expect((await host.read(area(0, 0, 1, 1, "Jacks")))[0]![0]!.value).toBe("");
  });
  it("has nothing to do where the made sheet was removed by hand", async () => {
    const written = await host.write(schedule(4));
    fake.sheets = fake.sheets.filter(({ name }) => name !== "Jacks");
    expect(await host.takeBack(written)).toEqual([]);
    expect(await host.sheets()).toEqual(["Sheet1"]);
  });
});

describe("the rest of the port in Excel", () => {
  it("reads a huge area in pieces that each fit a request", async () => {
    for (const row of [0, 29_999]) fake.sheet("Sheet1")!.enter(row, 0, row);
    fake.sheet("Sheet1")!.enter(0, 3, 1);
    const cells = await host.read(area(0, 0, 1_048_576, 5));
    expect([cells.length, cells[29_999]![0]!.value, cells[1_048_575]!.length]).toEqual([1_048_576, 29_999, 5]);
  });
  it("takes the active cell where no cells are selected", async () => {
    fake.select(2, 2, 3, 3);
    fake.chartSelected = true;
    expect(await host.selection()).toEqual(area(2, 2));
  });
  it("tells of recalculation too", async () => {
    let heard = 0;
    const stop = host.onChange(() => void heard++);
    await vi.waitFor(() => {
      fake.showAt("Sheet1", 0, 0, 7);
      expect(heard).toBeGreaterThan(0);
    }, 20_000);
    stop();
    await vi.waitFor(() => expect(fake.handlers.calculated.size + fake.handlers.change.size).toBe(0), 20_000);
  });
  it("hears nothing that was on its way when it was stopped", async () => {
    const heard: unknown[] = [];
    const stop = host.onSelection((a) => heard.push(a));
    await vi.waitFor(() => expect(fake.handlers.selection.size).toBe(1), 20_000);
    fake.select(1, 1, 1, 1);
    stop();
    await vi.waitFor(() => expect(fake.handlers.selection.size).toBe(0), 20_000);
    expect(heard).toEqual([]);
  });
  it("puts one picture at a cell, in points, and takes the place of the one before", async () => {
    const size = { width: 400, height: 200 };
    await host.picture!("Sheet1", 3, 2, "<svg/>", size);
    await host.picture!("Sheet1", 3, 2, "<svg/>", size);
    expect(fake.sheet("Sheet1")!.shapes).toEqual([
      { png: "iVBORw0KGgo=", name: "Longpoint Sheet1!C4", left: 96, top: 45, width: 300, height: 150 },
    ]);
    await expect(host.picture!("Nowhere", 0, 0, "<svg/>", size)).rejects.toThrow("Nowhere");
  });
});
