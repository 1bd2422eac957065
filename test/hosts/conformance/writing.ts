import { describe, expect, it } from "vitest";
import type { BlockLayout, HostCell } from "../../../src/hosts/host.ts";
import { area, block, cell, SHEET, step } from "./steps.ts";
import type { Sheet } from "./sheet.ts";

// Texts that sheets like to turn into dates, times, numbers, logicals, formulas or nothing; written as data they stay what they are.
const TRICKY = [
  "6/12",
  "6:12",
  "3/16",
  "24-6",
  "1e3",
  "TRUE",
  "'quoted",
  "''twice",
  "-5",
  "+1",
  "@here",
  "50%",
  "$4",
  " two  blanks ",
  "9' 4 5/8\"",
  "08",
  "März 🪚",
  "a\nb",
  "#N/A",
  "x".repeat(10_000),
];

/** What a step leaves in the cells. */
export function writing(s: Sheet): void {
  describe("write", () => {
    it("writes numbers, texts and formulas with their formats", async () => {
      await s.t.host.write(
        step({
          sheet: SHEET,
          row: 1,
          column: 1,
          cells: [
            [cell("Span"), cell(288, "0.00")],
            [cell("Double"), cell("=C2*2", '0.## "in 12"')],
          ],
        }),
      );
      expect(await s.contents(area(1, 1, 2, 2))).toEqual([
        ["Span", 288],
        ["Double", "=C2*2"],
      ]);
      expect(await s.formats(area(1, 1, 2, 2))).toEqual([
        ["General", "0.00"],
        ["General", '0.## "in 12"'],
      ]);
      if (s.t.calculates) expect((await s.t.host.read(area(2, 2)))[0]![0]!.value).toBe(576);
    });
    it("keeps every text as it is written, whatever it looks like", async () => {
      await s.t.host.write(
        step(
          block(
            0,
            0,
            TRICKY.map((text) => [text]),
          ),
        ),
      );
      expect(await s.t.host.read(area(0, 0, TRICKY.length))).toEqual(
        TRICKY.map((value) => [{ formula: null, value, format: "General" }]),
      );
    });
    it("tells the areas it wrote and leaves the rest alone, holes of a block included", async () => {
      await s.t.type(SHEET, 1, 1, "hole");
      await s.t.type(SHEET, 3, 0, "below");
      const written = await s.t.host.write(
        step(
          block(0, 0, [
            [1, 2],
            [3, null],
          ]),
          block(5, 2, [["=1"]], { spill: { row: 0, column: 0, rows: 2, columns: 3 } }),
        ),
      );
      expect(written).toEqual({ title: "Fill the sheet", areas: [area(0, 0, 2, 2), area(5, 2, 2, 3)] });
      expect(await s.contents(area(0, 0, 4, 2))).toEqual([
        [1, 2],
        [3, "hole"],
        ["", ""],
        ["below", ""],
      ]);
    });
    it("tells one area for a block, whatever parts of it a formula will spill into", async () => {
      const table = block(
        1,
        1,
        [
          ["Jacks", null, null, null],
          ["=1", "", "", "On the tape"],
          [null, null, null, '=""'],
        ],
        { spill: { row: 1, column: 0, rows: 4, columns: 3 }, sheet: "Jacks", newSheet: true },
      );
      const beside = block(9, 2, [[1]], { spill: { row: -1, column: -2, rows: 4, columns: 1 } });
      expect(await s.t.host.write(step(table, beside))).toEqual({
        title: "Fill the sheet",
        areas: [area(1, 1, 5, 4, "Jacks"), area(8, 0, 4, 3)],
      });
    });
    it("names a sheet as the workbook does, whatever capitals the step has", async () => {
      const shouted = step(block(0, 0, [[1]], { sheet: "SHEET1" }));
      expect(await s.t.host.write(shouted)).toEqual({ title: "Fill the sheet", areas: [area(0, 0)] });
      expect(await s.t.host.occupied(shouted)).toEqual(["Sheet1!A1"]);
    });
    it("empties a cell for an empty text", async () => {
      await s.t.type(SHEET, 0, 0, "old");
      await s.t.host.write(step(block(0, 0, [["", 1]])));
      expect(await s.contents(area(0, 0, 1, 2))).toEqual([["", 1]]);
      expect((await s.t.host.read(area(0, 0)))[0]![0]!.formula).toBeNull();
    });
    it("writes a live formula and a real number into cells that were formatted as text", async () => {
      await s.t.format(SHEET, 0, 0, "@");
      await s.t.format(SHEET, 0, 1, "@");
      await s.t.host.write(step(block(0, 0, [["=1+2", 7]])));
      const [[formula, number]] = (await s.t.host.read(area(0, 0, 1, 2))) as [[HostCell, HostCell]];
      expect([formula.formula, formula.format, number.value, number.format]).toEqual(["=1+2", "General", 7, "General"]);
    });
    it("makes new sheets at the end, several blocks on one, formulas across", async () => {
      await s.t.host.write(
        step(
          block(0, 0, [["='Hip jacks'!A1"]]),
          block(0, 0, [["Piece"]], { sheet: "Hip jacks", newSheet: true, frozenRows: 1 }),
          block(3, 1, [[4]], { sheet: "Hip jacks", newSheet: true }),
        ),
      );
      expect(await s.t.host.sheets()).toEqual([SHEET, "Hip jacks"]);
      expect(await s.contents(area(0, 0, 4, 2, "Hip jacks"))).toEqual([
        ["Piece", ""],
        ["", ""],
        ["", ""],
        ["", 4],
      ]);
      expect(await s.contents(area(0, 0))).toEqual([["='Hip jacks'!A1"]]);
      if (s.t.calculates) expect((await s.t.host.read(area(0, 0)))[0]![0]!.value).toBe("Piece");
      if (s.t.frozenRows) expect(await s.t.frozenRows("Hip jacks")).toBe(1);
    });
    it("sets widths and styles", async () => {
      await s.t.host.write(
        step(block(0, 1, [["Piece"]], { cells: [[{ content: "Piece", style: "heading" }]], widths: [140] })),
      );
      if (s.t.width) expect(Math.round(await s.t.width(SHEET, 1))).toBe(140);
      if (s.t.bold) expect(await s.t.bold(SHEET, 0, 1)).toBe(true);
    });
    it("clears and formats the area a formula will spill into", async () => {
      await s.t.type(SHEET, 2, 1, "in the way");
      await s.t.host.write(
        step(block(1, 0, [["=1"]], { spill: { row: 0, column: 0, rows: 3, columns: 2, formats: [null, "0.00"] } })),
      );
      expect(await s.contents(area(2, 0, 2, 2))).toEqual([
        ["", ""],
        ["", ""],
      ]);
      expect(await s.formats(area(1, 1, 3, 1))).toEqual([["0.00"], ["0.00"], ["0.00"]]);
    });
    it.each<[string, BlockLayout, string]>([
      ["a sheet that is not there", block(0, 0, [[1]], { sheet: "Nowhere" }), "Nowhere"],
      ["a new sheet whose name is taken", block(0, 0, [[1]], { sheet: SHEET, newSheet: true }), SHEET],
      [
        "a new sheet whose name is taken in other case",
        block(0, 0, [[1]], { sheet: "SHEET1", newSheet: true }),
        "SHEET1",
      ],
      ["a sheet name with a slash", block(0, 0, [[1]], { sheet: "6/12", newSheet: true }), "6/12"],
      ["a sheet name that is too long", block(0, 0, [[1]], { sheet: "n".repeat(32), newSheet: true }), "31"],
      ["a sheet without a name", block(0, 0, [[1]], { sheet: " ", newSheet: true }), "name"],
      ["rows of different widths", block(0, 0, [[1, 2], [3]]), "width"],
      ["a block without cells", block(0, 0, []), "nothing"],
      ["a block over the sheet's edge", block(1_048_575, 0, [[1], [2]]), "edge"],
      ["a row before the first", block(-1, 0, [[1]]), "edge"],
      [
        "a spill over the sheet's edge",
        block(0, 16_383, [["=1"]], { spill: { row: 0, column: 0, rows: 1, columns: 2 } }),
        "edge",
      ],
      ["a number that is none", block(0, 0, [[Number.NaN]]), "finite"],
      ["frozen rows on a sheet that is there", block(0, 0, [[1]], { frozenRows: 1 }), "frozen"],
      ["a text longer than a cell holds", block(0, 0, [["x".repeat(32_768)]]), "32767"],
    ])("refuses %s and writes nothing of the step", async (_, bad, words) => {
      await s.t.type(SHEET, 0, 0, "mine");
      const before = await s.everything();
      await expect(
        s.t.host.write(step(block(0, 0, [["lost"]]), block(0, 0, [["made"]], { sheet: "Made", newSheet: true }), bad)),
      ).rejects.toThrow(words);
      expect(await s.everything()).toEqual(before);
    });
  });

  describe("a huge step", () => {
    const huge = (sheet: Partial<BlockLayout> = {}) =>
      step(
        block(0, 0, [["made"]], { sheet: "Made", newSheet: true }),
        block(
          0,
          0,
          Array.from({ length: 3000 }, (_, i) => Array.from({ length: 10 }, (_, j) => i * 10 + j)),
          sheet,
        ),
      );
    it("tells its progress to the end, never backwards", async () => {
      const told: [number, number][] = [];
      await s.t.host.write(huge(), { progress: (done, of) => told.push([done, of]) });
      expect(told.length).toBeGreaterThan(1);
      expect(told.every(([done, of], i) => of === told[0]![1] && done <= of && done >= (told[i - 1]?.[0] ?? 0))).toBe(
        true,
      );
      expect(told.at(-1)![0]).toBe(told.at(-1)![1]);
      expect(await s.contents(area(2999, 8, 2, 2))).toEqual([
        [29_998, 29_999],
        ["", ""],
      ]);
    });
    it("leaves nothing behind when stopped half-way", async () => {
      await s.t.type(SHEET, 0, 0, "6/12");
      await s.t.type(SHEET, 4, 4, "=1+2");
      const before = await s.everything();
      const stopper = new AbortController();
      await expect(
        s.t.host.write(huge(), { signal: stopper.signal, progress: (done, of) => done < of && stopper.abort() }),
      ).rejects.toThrow();
      expect(await s.everything()).toEqual(before);
      expect(await s.contents(area(2999, 9))).toEqual([[""]]);
    });
    it("does not start when stopped before", async () => {
      const before = await s.everything();
      await expect(s.t.host.write(huge(), { signal: AbortSignal.abort() })).rejects.toThrow();
      expect(await s.everything()).toEqual(before);
    });
    it("goes on whole when the stop comes too late", async () => {
      const stopper = new AbortController();
      const written = await s.t.host.write(step(block(0, 0, [[1]])), { signal: stopper.signal });
      stopper.abort();
      expect(await s.contents(area(0, 0))).toEqual([[1]]);
      expect(await s.t.host.takeBack(written)).toEqual([]);
    });
  });
}
