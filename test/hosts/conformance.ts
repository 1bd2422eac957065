import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import type { Area, BlockLayout, CellLayout, HostCell, WriteStep } from "../../src/hosts/host.ts";
import type { HostUnderTest } from "./hostUnderTest.ts";

const SHEET = "Sheet1";
const EMPTY: HostCell = { formula: null, value: "", format: "General" };
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

/** A cell to write. */
export const cell = (content: string | number, format?: string): CellLayout =>
  format === undefined ? { content } : { content, format };
/** A block of contents at a place of Sheet1; null leaves a cell alone. */
export const block = (
  row: number,
  column: number,
  rows: readonly (readonly (string | number | null)[])[],
  more: Partial<BlockLayout> = {},
): BlockLayout => ({
  sheet: SHEET,
  row,
  column,
  cells: rows.map((r) => r.map((c) => (c === null ? null : cell(c)))),
  ...more,
});
/** A step of blocks. */
export const step = (...blocks: BlockLayout[]): WriteStep => ({ title: "Fill the sheet", blocks });
/** An area of Sheet1. */
export const area = (row: number, column: number, rows = 1, columns = 1, sheet = SHEET): Area => ({
  sheet,
  row,
  column,
  rows,
  columns,
});

/**
 * What every host must do, written against the port alone.
 *
 * `makeHost` gives a fresh workbook with one empty sheet, Sheet1, active, A1 selected.
 */
export function conformance(name: string, makeHost: () => Promise<HostUnderTest>): void {
  let t: HostUnderTest;
  const contents = async (a: Area) =>
    (await t.host.read(a)).map((row) => row.map(({ formula, value }) => formula ?? value));
  const formats = async (a: Area) => (await t.host.read(a)).map((row) => row.map(({ format }) => format));
  const everything = async () => ({ sheets: await t.host.sheets(), cells: await t.host.read(area(0, 0, 12, 8)) });

  describe(`${name} as a host`, () => {
    beforeEach(async () => {
      t = await makeHost();
    });
    afterEach(async () => t.dispose?.());

    describe("selection", () => {
      it("tells the selected area", async () => {
        expect(await t.host.selection()).toEqual(area(0, 0));
        await t.select(2, 1, 3, 4);
        expect(await t.host.selection()).toEqual(area(2, 1, 3, 4));
      });
      it("shows an area, on another sheet too", async () => {
        await t.host.write(step(block(0, 0, [["x"]], { sheet: "Hip jacks", newSheet: true })));
        await t.host.show(area(4, 2, 2, 1, "Hip jacks"));
        expect(await t.host.selection()).toEqual(area(4, 2, 2, 1, "Hip jacks"));
        await t.host.show(area(7, 0));
        expect(await t.host.selection()).toEqual(area(7, 0));
      });
      it("refuses to show a sheet that is not there", async () => {
        await expect(t.host.show(area(0, 0, 1, 1, "Nowhere"))).rejects.toThrow("Nowhere");
        expect(await t.host.selection()).toEqual(area(0, 0));
      });
      it("calls back after a change of selection until stopped", async () => {
        const heard: Area[] = [];
        const stop = t.host.onSelection((a) => heard.push(a));
        await vi.waitFor(async () => {
          // Again until it is heard: a host may take a moment to begin listening.
          await t.select(5, 3, 1, 2);
          expect(heard.at(-1)).toEqual(area(5, 3, 1, 2));
        });
        stop();
        const count = heard.length;
        await t.select(1, 1, 1, 1);
        await t.host.selection();
        expect(heard.length).toBe(count);
        stop();
      });
      it("calls back after an edit until stopped", async () => {
        let heard = 0;
        const stop = t.host.onChange(() => void heard++);
        await vi.waitFor(async () => {
          await t.type(SHEET, 0, 0, 5);
          expect(heard).toBeGreaterThan(0);
        });
        stop();
        const count = heard;
        await t.type(SHEET, 0, 0, 6);
        await t.host.read(area(0, 0));
        expect(heard).toBe(count);
      });
    });

    describe("read", () => {
      it("gives empty cells in the area's shape", async () => {
        expect(await t.host.read(area(3, 2, 2, 3))).toEqual([
          [EMPTY, EMPTY, EMPTY],
          [EMPTY, EMPTY, EMPTY],
        ]);
      });
      it("gives numbers in full, texts and formats", async () => {
        await t.type(SHEET, 1, 1, 0.1 + 0.2);
        await t.type(SHEET, 1, 2, "6/12");
        await t.format(SHEET, 1, 1, '0.## "in 12"');
        expect(await t.host.read(area(1, 1, 1, 2))).toEqual([
          [
            { formula: null, value: 0.1 + 0.2, format: '0.## "in 12"' },
            expect.objectContaining({ formula: null, value: "6/12" }),
          ],
        ]);
      });
      it("gives formulas, and their values where the host calculates", async () => {
        await t.type(SHEET, 0, 0, "=1+2");
        const [[got]] = (await t.host.read(area(0, 0))) as [[HostCell]];
        expect(got.formula).toBe("=1+2");
        if (t.calculates) expect(got.value).toBe(3);
      });
      it("gives cells beyond the sheet's edge as empty, in the area's shape", async () => {
        await t.type(SHEET, 0, 0, "corner");
        const far = await t.host.read(area(5_000_000, 0, 2, 2));
        expect(far).toEqual([
          [EMPTY, EMPTY],
          [EMPTY, EMPTY],
        ]);
        const wide = await t.host.read(area(0, 0, 1, 20_000));
        expect(wide[0]!.length).toBe(20_000);
        expect(wide[0]![0]!.value).toBe("corner");
        expect(wide[0]![19_999]).toEqual(EMPTY);
      });
      it("refuses a sheet that is not there, by name", async () => {
        await expect(t.host.read(area(0, 0, 1, 1, "Nowhere"))).rejects.toThrow("Nowhere");
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
          await t.type(SHEET, row, column, 1);
        await t.type(SHEET, 6, 2, "below, behind an empty row");
        await t.type(SHEET, 2, 6, "beside, behind an empty column");
        expect(await t.host.blockAround(area(3, 3))).toEqual(area(2, 2, 3, 3));
        expect(await t.host.blockAround(area(4, 4))).toEqual(area(2, 2, 3, 3));
      });
      it("is the cell itself when nothing is near", async () => {
        expect(await t.host.blockAround(area(8, 5))).toEqual(area(8, 5));
        await t.type(SHEET, 8, 5, "alone");
        expect(await t.host.blockAround(area(8, 5))).toEqual(area(8, 5));
      });
    });

    describe("write", () => {
      it("writes numbers, texts and formulas with their formats", async () => {
        await t.host.write(
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
        expect(await contents(area(1, 1, 2, 2))).toEqual([
          ["Span", 288],
          ["Double", "=C2*2"],
        ]);
        expect(await formats(area(1, 1, 2, 2))).toEqual([
          ["General", "0.00"],
          ["General", '0.## "in 12"'],
        ]);
        if (t.calculates) expect((await t.host.read(area(2, 2)))[0]![0]!.value).toBe(576);
      });
      it("keeps every text as it is written, whatever it looks like", async () => {
        await t.host.write(
          step(
            block(
              0,
              0,
              TRICKY.map((text) => [text]),
            ),
          ),
        );
        expect((await t.host.read(area(0, 0, TRICKY.length))).map(([c]) => c)).toEqual(
          TRICKY.map((value) => expect.objectContaining({ formula: null, value })),
        );
      });
      it("tells the areas it wrote and leaves the rest alone, holes of a block included", async () => {
        await t.type(SHEET, 1, 1, "hole");
        await t.type(SHEET, 3, 0, "below");
        const written = await t.host.write(
          step(
            block(0, 0, [
              [1, 2],
              [3, null],
            ]),
            block(5, 2, [["=1"]], { spill: { row: 0, column: 0, rows: 2, columns: 3 } }),
          ),
        );
        expect(written.title).toBe("Fill the sheet");
        expect(written.areas).toEqual(expect.arrayContaining([area(0, 0, 2, 2), area(5, 2, 2, 3)]));
        expect(await contents(area(0, 0, 4, 2))).toEqual([
          [1, 2],
          [3, "hole"],
          ["", ""],
          ["below", ""],
        ]);
      });
      it("empties a cell for an empty text", async () => {
        await t.type(SHEET, 0, 0, "old");
        await t.host.write(step(block(0, 0, [["", 1]])));
        expect(await contents(area(0, 0, 1, 2))).toEqual([["", 1]]);
        expect((await t.host.read(area(0, 0)))[0]![0]!.formula).toBeNull();
      });
      it("writes a live formula and a real number into cells that were formatted as text", async () => {
        await t.format(SHEET, 0, 0, "@");
        await t.format(SHEET, 0, 1, "@");
        await t.host.write(step(block(0, 0, [["=1+2", 7]])));
        const [[formula, number]] = (await t.host.read(area(0, 0, 1, 2))) as [[HostCell, HostCell]];
        expect([formula.formula, formula.format, number.value, number.format]).toEqual([
          "=1+2",
          "General",
          7,
          "General",
        ]);
      });
      it("makes new sheets at the end, several blocks on one, formulas across", async () => {
        await t.host.write(
          step(
            block(0, 0, [["='Hip jacks'!A1"]]),
            block(0, 0, [["Piece"]], { sheet: "Hip jacks", newSheet: true, frozenRows: 1 }),
            block(3, 1, [[4]], { sheet: "Hip jacks", newSheet: true }),
          ),
        );
        expect(await t.host.sheets()).toEqual([SHEET, "Hip jacks"]);
        expect(await contents(area(0, 0, 4, 2, "Hip jacks"))).toEqual([
          ["Piece", ""],
          ["", ""],
          ["", ""],
          ["", 4],
        ]);
        expect(await contents(area(0, 0))).toEqual([["='Hip jacks'!A1"]]);
        if (t.calculates) expect((await t.host.read(area(0, 0)))[0]![0]!.value).toBe("Piece");
        if (t.frozenRows) expect(await t.frozenRows("Hip jacks")).toBe(1);
      });
      it("sets widths and styles", async () => {
        await t.host.write(
          step(block(0, 1, [["Piece"]], { cells: [[{ content: "Piece", style: "heading" }]], widths: [140] })),
        );
        if (t.width) expect(Math.round(await t.width(SHEET, 1))).toBe(140);
        if (t.bold) expect(await t.bold(SHEET, 0, 1)).toBe(true);
      });
      it("clears and formats the area a formula will spill into", async () => {
        await t.type(SHEET, 2, 1, "in the way");
        await t.host.write(
          step(block(1, 0, [["=1"]], { spill: { row: 0, column: 0, rows: 3, columns: 2, formats: [null, "0.00"] } })),
        );
        expect(await contents(area(2, 0, 2, 2))).toEqual([
          ["", ""],
          ["", ""],
        ]);
        expect(await formats(area(1, 1, 3, 1))).toEqual([["0.00"], ["0.00"], ["0.00"]]);
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
        await t.type(SHEET, 0, 0, "mine");
        const before = await everything();
        await expect(
          t.host.write(step(block(0, 0, [["lost"]]), block(0, 0, [["made"]], { sheet: "Made", newSheet: true }), bad)),
        ).rejects.toThrow(words);
        expect(await everything()).toEqual(before);
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
        await t.host.write(huge(), { progress: (done, of) => told.push([done, of]) });
        expect(told.length).toBeGreaterThan(1);
        expect(told.every(([done, of], i) => of === told[0]![1] && done <= of && done >= (told[i - 1]?.[0] ?? 0))).toBe(
          true,
        );
        expect(told.at(-1)![0]).toBe(told.at(-1)![1]);
        expect(await contents(area(2999, 8, 2, 2))).toEqual([
          [29_998, 29_999],
          ["", ""],
        ]);
      });
      it("leaves nothing behind when stopped half-way", async () => {
        await t.type(SHEET, 0, 0, "6/12");
        await t.type(SHEET, 4, 4, "=1+2");
        const before = await everything();
        const stopper = new AbortController();
        await expect(
          t.host.write(huge(), { signal: stopper.signal, progress: (done, of) => done < of && stopper.abort() }),
        ).rejects.toThrow();
        expect(await everything()).toEqual(before);
        expect(await contents(area(2999, 9))).toEqual([[""]]);
      });
      it("does not start when stopped before", async () => {
        const before = await everything();
        await expect(t.host.write(huge(), { signal: AbortSignal.abort() })).rejects.toThrow();
        expect(await everything()).toEqual(before);
      });
      it("goes on whole when the stop comes too late", async () => {
        const stopper = new AbortController();
        const written = await t.host.write(step(block(0, 0, [[1]])), { signal: stopper.signal });
        stopper.abort();
        expect(await contents(area(0, 0))).toEqual([[1]]);
        expect(await t.host.takeBack(written)).toEqual([]);
      });
    });

    describe("takeBack", () => {
      it("restores contents and formats, and removes the new sheet", async () => {
        await t.type(SHEET, 0, 0, 12.25);
        await t.type(SHEET, 0, 1, "6/12");
        await t.type(SHEET, 0, 2, "=1+2");
        await t.type(SHEET, 1, 0, "'quoted");
        await t.format(SHEET, 0, 0, "0.0");
        await t.format(SHEET, 1, 1, "m/d/yyyy");
        const before = await everything();
        const written = await t.host.write(
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
        expect(await t.host.takeBack(written)).toEqual([]);
        expect(await everything()).toEqual(before);
      });
      it("restores widths and styles", async () => {
        if (!t.width || !t.bold) return;
        const width = await t.width(SHEET, 0);
        const written = await t.host.write(
          step(block(0, 0, [], { cells: [[{ content: "Piece", style: "heading" }]], widths: [171] })),
        );
        await t.host.takeBack(written);
        expect(await t.width(SHEET, 0)).toBeCloseTo(width, 1);
        expect(await t.bold(SHEET, 0, 0)).toBe(false);
      });
      it("restores what a spill area held", async () => {
        await t.type(SHEET, 2, 1, "24-6");
        const before = await everything();
        const written = await t.host.write(
          step(block(1, 0, [["=1"]], { spill: { row: 0, column: 0, rows: 3, columns: 2, formats: ["0.0", "0.00"] } })),
        );
        expect(await t.host.takeBack(written)).toEqual([]);
        expect(await everything()).toEqual(before);
      });
      it("changes nothing and names the cells when written cells were edited since", async () => {
        const written = await t.host.write(
          step(
            block(0, 0, [
              [1, "two"],
              ["=3", null],
            ]),
            block(0, 0, [[1]], { sheet: "Made", newSheet: true }),
          ),
        );
        await t.type(SHEET, 0, 1, "mine");
        await t.type(SHEET, 1, 0, "");
        await t.type("Made", 6, 1, "mine too");
        const edited = await everything();
        expect([...(await t.host.takeBack(written))].sort()).toEqual(["Made!B7", "Sheet1!A2", "Sheet1!B1"]);
        expect(await everything()).toEqual(edited);
        expect(await contents(area(6, 1, 1, 1, "Made"))).toEqual([["mine too"]]);
      });
      it("names an edited cell of a spill area", async () => {
        const written = await t.host.write(
          step(block(0, 0, [["=1"]], { spill: { row: 0, column: 0, rows: 3, columns: 2 } })),
        );
        await t.type(SHEET, 2, 1, "mine");
        expect(await t.host.takeBack(written)).toEqual(["Sheet1!B3"]);
        expect(await contents(area(0, 0))).toEqual([["=1"]]);
      });
      it("works again once the edit is undone by hand", async () => {
        const written = await t.host.write(step(block(0, 0, [["two"]])));
        await t.type(SHEET, 0, 0, "mine");
        expect(await t.host.takeBack(written)).toEqual(["Sheet1!A1"]);
        await t.type(SHEET, 0, 0, "two");
        expect(await t.host.takeBack(written)).toEqual([]);
        expect(await contents(area(0, 0))).toEqual([[""]]);
      });
      it("leaves edits outside the written cells alone, a block's holes included", async () => {
        const written = await t.host.write(step(block(0, 0, [[1, null]])));
        await t.type(SHEET, 0, 1, "mine");
        await t.type(SHEET, 4, 0, "mine");
        expect(await t.host.takeBack(written)).toEqual([]);
        expect(await contents(area(0, 0, 1, 2))).toEqual([["", "mine"]]);
        expect(await contents(area(4, 0))).toEqual([["mine"]]);
      });
      it("does nothing the second time", async () => {
        const written = await t.host.write(step(block(0, 0, [[1]])));
        await t.host.takeBack(written);
        await t.type(SHEET, 0, 0, "mine");
        expect(await t.host.takeBack(written)).toEqual([]);
        expect(await contents(area(0, 0))).toEqual([["mine"]]);
      });
      it("takes back two steps, last first", async () => {
        const first = await t.host.write(step(block(0, 0, [[1]])));
        const second = await t.host.write(step(block(0, 0, [[2]])));
        expect(await t.host.takeBack(first)).toEqual(["Sheet1!A1"]);
        expect(await t.host.takeBack(second)).toEqual([]);
        expect(await t.host.takeBack(first)).toEqual([]);
        expect(await contents(area(0, 0))).toEqual([[""]]);
      });
      it("is not needed where undo can be reached: one step back is all of it", async () => {
        if (!t.undo) return;
        await t.type(SHEET, 0, 0, "old");
        const before = await everything();
        await t.host.write(
          step(
            block(0, 0, [
              ["a", 1],
              ["=1+1", null],
            ]),
            block(5, 5, [["b"]]),
          ),
        );
        await t.undo();
        expect(await everything()).toEqual(before);
      });
    });

    describe("occupied", () => {
      it("is empty where nothing is in the way", async () => {
        await t.type(SHEET, 0, 1, "in a hole");
        await t.format(SHEET, 0, 0, "0.00");
        expect(
          await t.host.occupied(step(block(0, 0, [[1, null]]), block(0, 0, [[1]], { sheet: "Made", newSheet: true }))),
        ).toEqual([]);
        expect(await t.host.sheets()).toEqual([SHEET]);
      });
      it("names filled cells once each, spill areas included", async () => {
        await t.type(SHEET, 1, 1, 0);
        await t.type(SHEET, 2, 0, '=""');
        await t.type(SHEET, 3, 2, "in the spill");
        await t.type(SHEET, 4, 2, "below the spill");
        const got = await t.host.occupied(
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
        await t.host.write(step(block(0, 0, [["x"]], { sheet: "Bob's jacks", newSheet: true })));
        expect(await t.host.occupied(step(block(0, 0, [["y"]], { sheet: "Bob's jacks" })))).toEqual([
          "'Bob''s jacks'!A1",
        ]);
      });
      it("sees values that a formula spilled, where the host calculates", async () => {
        if (!t.calculates) return;
        await t.type(SHEET, 0, 0, "=SEQUENCE(3)");
        await vi.waitFor(async () => expect((await t.host.read(area(2, 0)))[0]![0]!.value).toBe(3));
        expect(await t.host.occupied(step(block(2, 0, [[1]])))).toEqual(["Sheet1!A3"]);
      });
      it("refuses what write would refuse", async () => {
        await expect(t.host.occupied(step(block(0, 0, [[1]], { sheet: "Nowhere" })))).rejects.toThrow("Nowhere");
        await expect(t.host.occupied(step(block(0, 0, [[1]], { newSheet: true })))).rejects.toThrow(SHEET);
      });
    });

    describe("messages", () => {
      it("gives none for empty and good cells", async () => {
        await t.type(SHEET, 0, 0, 5);
        expect(await t.host.messageAt(SHEET, 0, 0)).toBeNull();
        expect(await t.host.messageAt(SHEET, 9, 9)).toBeNull();
        expect(await t.host.messageAt("Nowhere", 0, 0)).toBeNull();
      });
      it("gives the refusal's words until the cell holds something else", async () => {
        const message = await t.refuse(SHEET, 1, 2);
        await vi.waitFor(async () => expect(await t.host.messageAt(SHEET, 1, 2)).toBe(message));
        expect(message.length).toBeGreaterThan(10);
        expect(await t.host.messageAt(SHEET, 2, 1)).toBeNull();
        await t.type(SHEET, 1, 2, 5);
        expect(await t.host.messageAt(SHEET, 1, 2)).toBeNull();
      });
    });

    describe("memory", () => {
      it("recalls what was remembered, by key", async () => {
        expect(await t.host.recall("inputs")).toBeNull();
        const text = JSON.stringify({ span: "24'", note: 'märz 🪚 "quoted"\n' });
        await t.host.remember("inputs", text);
        await t.host.remember("toString", "other");
        expect(await t.host.recall("inputs")).toBe(text);
        expect(await t.host.recall("toString")).toBe("other");
        await t.host.remember("inputs", "");
        expect(await t.host.recall("inputs")).toBe("");
        expect(await t.host.recall("hasOwnProperty")).toBeNull();
      });
    });

    describe("pictures", () => {
      const svg = '<svg xmlns="http://www.w3.org/2000/svg" width="10" height="10"><rect width="10" height="10"/></svg>';
      it("leave the cells alone, where the host has any", async () => {
        await t.type(SHEET, 0, 0, "mine");
        const before = await everything();
        await t.host.picture?.(SHEET, 1, 1, svg, { width: 10, height: 10 });
        expect(await everything()).toEqual(before);
      });
    });
  });
}
