import { describe, expect, it, vi } from "vitest";
import { area, block, SHEET, step } from "./steps.ts";
import type { Sheet } from "./sheet.ts";

/** What is in the way of a step, and what the host tells and keeps besides. */
export function asking(s: Sheet): void {
  describe("occupied", () => {
    it("is empty where nothing is in the way", async () => {
      await s.t.type(SHEET, 0, 1, "in a hole");
      await s.t.format(SHEET, 0, 0, "0.00");
      expect(
        await s.t.host.occupied(step(block(0, 0, [[1, null]]), block(0, 0, [[1]], { sheet: "Made", newSheet: true }))),
      ).toEqual([]);
      expect(await s.t.host.sheets()).toEqual([SHEET]);
    });
    it("names filled cells once each, spill areas included", async () => {
      await s.t.type(SHEET, 1, 1, 0);
      await s.t.type(SHEET, 2, 0, '=""');
      await s.t.type(SHEET, 3, 2, "in the spill");
      await s.t.type(SHEET, 4, 2, "below the spill");
      const got = await s.t.host.occupied(
        step(
          block(
            1,
            0,
            [
              [1, 2],
              ["=3", null],
            ],
            { spill: { row: 1, column: 0, rows: 2, columns: 3 } },
          ),
          block(1, 1, [["again"]]),
        ),
      );
      expect(got).toEqual(["Sheet1!B2", "Sheet1!A3", "Sheet1!C4"]);
    });
    it("quotes sheet names that need it", async () => {
      await s.t.host.write(step(block(0, 0, [["x"]], { sheet: "Bob's jacks", newSheet: true })));
      expect(await s.t.host.occupied(step(block(0, 0, [["y"]], { sheet: "Bob's jacks" })))).toEqual([
        "'Bob''s jacks'!A1",
      ]);
    });
    it("sees values that a formula spilled, where the host calculates", async () => {
      if (!s.t.calculates) return;
      await s.t.type(SHEET, 0, 0, "=SEQUENCE(3)");
      await vi.waitFor(async () => expect((await s.t.host.read(area(2, 0)))[0]![0]!.value).toBe(3), 20_000);
      expect(await s.t.host.occupied(step(block(2, 0, [[1]])))).toEqual(["Sheet1!A3"]);
    });
    it("refuses what write would refuse", async () => {
      await expect(s.t.host.occupied(step(block(0, 0, [[1]], { sheet: "Nowhere" })))).rejects.toThrow("Nowhere");
      await expect(s.t.host.occupied(step(block(0, 0, [[1]], { newSheet: true })))).rejects.toThrow(SHEET);
    });
  });

  describe("messages", () => {
    it("gives none for empty and good cells", async () => {
      await s.t.type(SHEET, 0, 0, 5);
      expect(await s.t.host.messageAt(SHEET, 0, 0)).toBeNull();
      expect(await s.t.host.messageAt(SHEET, 9, 9)).toBeNull();
      expect(await s.t.host.messageAt("Nowhere", 0, 0)).toBeNull();
    });
    it("gives the refusal's words until the cell holds something else", async () => {
      const message = await s.t.refuse(SHEET, 1, 2);
      await vi.waitFor(async () => expect(await s.t.host.messageAt(SHEET, 1, 2)).toBe(message), 20_000);
      expect(message.length).toBeGreaterThan(10);
      expect(await s.t.host.messageAt(SHEET, 2, 1)).toBeNull();
      await s.t.type(SHEET, 1, 2, 5);
      expect(await s.t.host.messageAt(SHEET, 1, 2)).toBeNull();
    });
  });

  describe("memory", () => {
    it("recalls what was remembered, by key", async () => {
      expect(await s.t.host.recall("inputs")).toBeNull();
      const text = JSON.stringify({ span: "24'", note: 'märz 🪚 "quoted"\n' });
      await s.t.host.remember("inputs", text);
      await s.t.host.remember("toString", "other");
      expect(await s.t.host.recall("inputs")).toBe(text);
      expect(await s.t.host.recall("toString")).toBe("other");
      await s.t.host.remember("inputs", "");
      expect(await s.t.host.recall("inputs")).toBe("");
      expect(await s.t.host.recall("hasOwnProperty")).toBeNull();
    });
  });

  describe("pictures", () => {
    const svg = '<svg xmlns="http://www.w3.org/2000/svg" width="10" height="10"><rect width="10" height="10"/></svg>';
    it("leave the cells alone, where the host has any", async () => {
      await s.t.type(SHEET, 0, 0, "mine");
      const before = await s.everything();
      await s.t.host.picture?.(SHEET, 1, 1, svg, { width: 10, height: 10 });
      expect(await s.everything()).toEqual(before);
    });
  });
}
