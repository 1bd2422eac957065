import { describe, expect, it } from "vitest";
import { area, block, SHEET, step } from "./steps.ts";
import type { Sheet } from "./sheet.ts";

/** What taking back brings back, and what it leaves alone. */
export function takingBack(s: Sheet): void {
  describe("takeBack", () => {
    it("restores contents and formats, and removes the new sheet", async () => {
      await s.t.type(SHEET, 0, 0, 12.25);
      await s.t.type(SHEET, 0, 1, "6/12");
      await s.t.type(SHEET, 0, 2, "=1+2");
      await s.t.type(SHEET, 1, 0, "'quoted");
      await s.t.format(SHEET, 0, 0, "0.0");
      await s.t.format(SHEET, 1, 1, "m/d/yyyy");
      const before = await s.everything();
      const written = await s.t.host.write(
        step(
          block(
            0,
            0,
            [
              ["a", "b", "c"],
              ["d", "=1", 3],
            ],
            { widths: [33, null, 99] },
          ),
          block(0, 0, [[1]], { sheet: "Made", newSheet: true }),
        ),
      );
      expect(await s.t.host.takeBack(written)).toEqual([]);
      expect(await s.everything()).toEqual(before);
    });
    it("restores widths and styles", async () => {
      if (!s.t.width || !s.t.bold) return;
      const width = await s.t.width(SHEET, 0);
      const written = await s.t.host.write(
        step(block(0, 0, [], { cells: [[{ content: "Piece", style: "heading" }]], widths: [171] })),
      );
      await s.t.host.takeBack(written);
      expect(await s.t.width(SHEET, 0)).toBeCloseTo(width, 1);
      expect(await s.t.bold(SHEET, 0, 0)).toBe(false);
    });
    it("restores what a spill area held", async () => {
      await s.t.type(SHEET, 2, 1, "24-6");
      const before = await s.everything();
      const written = await s.t.host.write(
        step(block(1, 0, [["=1"]], { spill: { row: 0, column: 0, rows: 3, columns: 2, formats: ["0.0", "0.00"] } })),
      );
      expect(await s.t.host.takeBack(written)).toEqual([]);
      expect(await s.everything()).toEqual(before);
    });
    it("changes nothing and names the cells when written cells were edited since", async () => {
      const written = await s.t.host.write(
        step(
          block(0, 0, [
            [1, "two"],
            ["=3", null],
          ]),
          block(0, 0, [[1]], { sheet: "Made", newSheet: true }),
        ),
      );
      await s.t.type(SHEET, 0, 1, "mine");
      await s.t.type(SHEET, 1, 0, "");
      await s.t.type("Made", 6, 1, "mine too");
      const edited = await s.everything();
      expect(await s.t.host.takeBack(written)).toEqual(["Sheet1!B1", "Sheet1!A2", "Made!B7"]);
      expect(await s.everything()).toEqual(edited);
      expect(await s.contents(area(6, 1, 1, 1, "Made"))).toEqual([["mine too"]]);
    });
    it("names an edited cell of a spill area", async () => {
      const written = await s.t.host.write(
        step(block(0, 0, [["=1"]], { spill: { row: 0, column: 0, rows: 3, columns: 2 } })),
      );
      await s.t.type(SHEET, 2, 1, "mine");
      expect(await s.t.host.takeBack(written)).toEqual(["Sheet1!B3"]);
      expect(await s.contents(area(0, 0))).toEqual([["=1"]]);
    });
    it("works again once the edit is undone by hand", async () => {
      const written = await s.t.host.write(step(block(0, 0, [["two"]])));
      await s.t.type(SHEET, 0, 0, "mine");
      expect(await s.t.host.takeBack(written)).toEqual(["Sheet1!A1"]);
      await s.t.type(SHEET, 0, 0, "two");
      expect(await s.t.host.takeBack(written)).toEqual([]);
      expect(await s.contents(area(0, 0))).toEqual([[""]]);
    });
    it("leaves edits outside the written cells alone, a block's holes included", async () => {
      const written = await s.t.host.write(step(block(0, 0, [[1, null]])));
      await s.t.type(SHEET, 0, 1, "mine");
      await s.t.type(SHEET, 4, 0, "mine");
      expect(await s.t.host.takeBack(written)).toEqual([]);
      expect(await s.contents(area(0, 0, 1, 2))).toEqual([["", "mine"]]);
      expect(await s.contents(area(4, 0))).toEqual([["mine"]]);
    });
    it("does nothing the second time", async () => {
      const written = await s.t.host.write(step(block(0, 0, [[1]])));
      await s.t.host.takeBack(written);
      await s.t.type(SHEET, 0, 0, "mine");
      expect(await s.t.host.takeBack(written)).toEqual([]);
      expect(await s.contents(area(0, 0))).toEqual([["mine"]]);
    });
    it("does nothing the second time, though the first is still under way", async () => {
      await s.t.type(SHEET, 0, 0, "mine");
      const before = await s.everything();
      const written = await s.t.host.write(step(block(0, 0, [[1]])));
      expect(await Promise.all([s.t.host.takeBack(written), s.t.host.takeBack(written)])).toEqual([[], []]);
      expect(await s.everything()).toEqual(before);
    });
    it("follows sheets that have another name by now", async () => {
      await s.t.type(SHEET, 0, 0, "mine");
      const written = await s.t.host.write(
        step(block(0, 0, [[1]]), block(0, 0, [[1]], { sheet: "Made", newSheet: true })),
      );
      await s.t.rename(SHEET, "Bid 2");
      await s.t.rename("Made", "Jacks");
      await s.t.type("Jacks", 3, 1, "mine too");
      expect(await s.t.host.takeBack(written)).toEqual(["Jacks!B4"]);
      await s.t.type("Jacks", 3, 1, "");
      expect(await s.t.host.takeBack(written)).toEqual([]);
      expect(await s.t.host.sheets()).toEqual(["Bid 2"]);
      expect(await s.contents(area(0, 0, 1, 1, "Bid 2"))).toEqual([["mine"]]);
    });
    it("refuses a receipt that is not its own", async () => {
      await expect(s.t.host.takeBack({ title: "Fill the sheet", areas: [] })).rejects.toThrow("cannot be taken back");
    });
    it("takes back two steps, last first", async () => {
      const first = await s.t.host.write(step(block(0, 0, [[1]])));
      const second = await s.t.host.write(step(block(0, 0, [[2]])));
      expect(await s.t.host.takeBack(first)).toEqual(["Sheet1!A1"]);
      expect(await s.t.host.takeBack(second)).toEqual([]);
      expect(await s.t.host.takeBack(first)).toEqual([]);
      expect(await s.contents(area(0, 0))).toEqual([[""]]);
    });
    it("is not needed where undo can be reached: one step back is all of it", async () => {
      if (!s.t.undo) return;
      await s.t.type(SHEET, 0, 0, "old");
      const before = await s.everything();
      await s.t.host.write(
        step(
          block(0, 0, [
            ["a", 1],
            ["=1+1", null],
          ]),
          block(5, 5, [["b"]]),
        ),
      );
      await s.t.undo();
      expect(await s.everything()).toEqual(before);
    });
  });
}
