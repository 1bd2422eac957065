import { describe, expect, it, vi } from "vitest";
import type { Area, HostCell } from "../../../src/hosts/host.ts";
import { area, block, EMPTY, SHEET, step } from "./steps.ts";
import type { Sheet } from "./sheet.ts";

/** What is selected, and what stands in the cells. */
export function reading(s: Sheet): void {
  describe("selection", () => {
    it("tells the selected area", async () => {
      expect(await s.t.host.selection()).toEqual(area(0, 0));
      await s.t.select(2, 1, 3, 4);
      expect(await s.t.host.selection()).toEqual(area(2, 1, 3, 4));
    });
    it("shows an area, on another sheet too", async () => {
      await s.t.host.write(step(block(0, 0, [["x"]], { sheet: "Hip jacks", newSheet: true })));
      await s.t.host.show(area(4, 2, 2, 1, "Hip jacks"));
      expect(await s.t.host.selection()).toEqual(area(4, 2, 2, 1, "Hip jacks"));
      await s.t.host.show(area(7, 0));
      expect(await s.t.host.selection()).toEqual(area(7, 0));
    });
    it("refuses to show a sheet that is not there", async () => {
      await expect(s.t.host.show(area(0, 0, 1, 1, "Nowhere"))).rejects.toThrow("Nowhere");
      expect(await s.t.host.selection()).toEqual(area(0, 0));
    });
    it("calls back after a change of selection until stopped", async () => {
      const heard: Area[] = [];
      const stop = s.t.host.onSelection((a) => heard.push(a));
      await vi.waitFor(async () => {
        // Again until it is heard: a host may take a moment to begin listening.
        await s.t.select(5, 3, 1, 2);
        expect(heard.at(-1)).toEqual(area(5, 3, 1, 2));
      }, 20_000);
      stop();
      const count = heard.length;
      await s.t.select(1, 1, 1, 1);
      await s.t.host.selection();
      expect(heard.length).toBe(count);
      stop();
    });
    it("calls back after an edit until stopped", async () => {
      let heard = 0;
      const stop = s.t.host.onChange(() => void heard++);
      await vi.waitFor(async () => {
        await s.t.type(SHEET, 0, 0, 5);
        expect(heard).toBeGreaterThan(0);
      }, 20_000);
      stop();
      const count = heard;
      await s.t.type(SHEET, 0, 0, 6);
      await s.t.host.read(area(0, 0));
      expect(heard).toBe(count);
    });
  });

  describe("read", () => {
    it("gives empty cells in the area's shape", async () => {
      expect(await s.t.host.read(area(3, 2, 2, 3))).toEqual([
        [EMPTY, EMPTY, EMPTY],
        [EMPTY, EMPTY, EMPTY],
      ]);
    });
    it("gives numbers in full, texts and formats", async () => {
      await s.t.type(SHEET, 1, 1, 0.1 + 0.2);
      await s.t.type(SHEET, 1, 2, "6/12");
      await s.t.format(SHEET, 1, 1, '0.## "in 12"');
      expect(await s.t.host.read(area(1, 1, 1, 2))).toEqual([
        [
          { formula: null, value: 0.1 + 0.2, format: '0.## "in 12"' },
          { formula: null, value: "6/12", format: "General" },
        ],
      ]);
    });
    it("gives formulas, and their values where the host calculates", async () => {
      await s.t.type(SHEET, 0, 0, "=1+2");
      const [[got]] = (await s.t.host.read(area(0, 0))) as [[HostCell]];
      expect(got.formula).toBe("=1+2");
      if (s.t.calculates) expect(got.value).toBe(3);
    });
    it("gives cells beyond the sheet's edge as empty, in the area's shape", async () => {
      await s.t.type(SHEET, 0, 0, "corner");
      const far = await s.t.host.read(area(5_000_000, 0, 2, 2));
      expect(far).toEqual([
        [EMPTY, EMPTY],
        [EMPTY, EMPTY],
      ]);
      const wide = await s.t.host.read(area(0, 0, 1, 20_000));
      expect(wide[0]!.length).toBe(20_000);
      expect(wide[0]![0]!.value).toBe("corner");
      expect(wide[0]![19_999]).toEqual(EMPTY);
    });
    it("refuses a sheet that is not there, by name", async () => {
      await expect(s.t.host.read(area(0, 0, 1, 1, "Nowhere"))).rejects.toThrow("Nowhere");
    });
  });

  describe("blockAround", () => {
    it("is the filled block around a cell, corners touching included", async () => {
      for (const [row, column] of [
        [2, 2],
        [2, 3],
        [3, 2],
        [4, 4],
        [3, 3],
      ] as const)
        await s.t.type(SHEET, row, column, 1);
      await s.t.type(SHEET, 6, 2, "below, behind an empty row");
      await s.t.type(SHEET, 2, 6, "beside, behind an empty column");
      expect(await s.t.host.blockAround(area(3, 3))).toEqual(area(2, 2, 3, 3));
      expect(await s.t.host.blockAround(area(4, 4))).toEqual(area(2, 2, 3, 3));
    });
    it("is the cell itself when nothing is near", async () => {
      expect(await s.t.host.blockAround(area(8, 5))).toEqual(area(8, 5));
      await s.t.type(SHEET, 8, 5, "alone");
      expect(await s.t.host.blockAround(area(8, 5))).toEqual(area(8, 5));
    });
  });
}
