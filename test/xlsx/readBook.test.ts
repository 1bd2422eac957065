import { writeXlsx } from "hucre/xlsx";
import type { Cell, WriteSheet } from "hucre";
import { describe, expect, it } from "vitest";
import { readBook } from "../../src/xlsx/readBook.ts";

describe("a file from elsewhere", () => {
  const cells = (entries: Record<string, Partial<Cell>>) => new Map(Object.entries(entries));
  const file = (sheet: Partial<WriteSheet>, more: Partial<Parameters<typeof writeXlsx>[0]> = {}) =>
    writeXlsx({ sheets: [{ name: "S", rows: [], ...sheet }], ...more });

  it("gives days as their numbers, and formulas that are filled down as one shared formula", async () => {
    const { book } = await readBook(
      await file({
        cells: cells({
          "0,0": { value: new Date(Date.UTC(2024, 5, 12)) },
          "0,1": {
            formula: "A1*2",
            formulaType: "shared",
            formulaSharedIndex: 0,
            formulaRef: "B1:B2",
            formulaResult: 1,
          },
          "1,1": { formula: "", formulaType: "shared", formulaSharedIndex: 0, formulaResult: 2 },
        }),
      }),
      "x",
    );
    const rows = book.sheets[0]!.rows;
    // 12 June 2024 is day 45455 of the 1900 system, as any sheet shows it.
    expect(rows[0]![0]).toEqual({ value: 45455, look: { format: "yyyy-mm-dd" } });
    expect(rows[0]![1]).toMatchObject({ formula: "=A1*2", shared: "s0-0" });
    expect(rows[1]![1]).toEqual({ value: 2, shared: "s0-0" });
  });

  it("says what is not kept, each in words and once", async () => {
    const bytes = await file(
      {
        cells: cells({
          "0,0": { value: 1, comment: { text: "look" } },
          "0,1": { value: "go", hyperlink: { target: "https://example.com" } },
          "0,2": { value: null, richText: [{ text: "a", font: { bold: true } }, { text: "b" }] },
        }),
        dataValidations: [{ type: "list", values: ["a"], range: "A1" }],
        conditionalRules: [
          {
            type: "cellIs",
            operator: "greaterThan",
            formula: "1",
            priority: 1,
            range: "A1",
            style: { font: { bold: true } },
          },
        ],
        autoFilter: { range: "A1:B2" },
      },
      {
        namedRanges: [
          { name: "Spacing", range: "S!$A$1" },
          { name: "Own", range: "S!$A$1", scope: "S" },
        ],
      },
    );
    const { left, book } = await readBook(bytes, "x");
    expect(book.names).toEqual([{ name: "Spacing", formula: "=S!$A$1" }]);
    expect([...left].sort()).toEqual([
      "comments",
      "filters",
      "formats of single words in a cell",
      "formats that depend on values",
      "links",
      "names that one sheet has for itself (Own)",
      "rules for what may be typed",
    ]);
  });

  const leftOf = async (sheet: Partial<WriteSheet>, more = {}) => (await readBook(await file(sheet, more), "x")).left;

  it("names four names of one sheet, of more the first three and how many", async () => {
    const named = (count: number) => ({
      namedRanges: Array.from({ length: count }, (_, i) => ({ name: `Own${i + 1}`, range: "S!$A$1", scope: "S" })),
    });
    expect(await leftOf({}, named(4))).toEqual(["names that one sheet has for itself (Own1, Own2, Own3, Own4)"]);
    expect(await leftOf({}, named(5))).toEqual(["names that one sheet has for itself (Own1, Own2, Own3 and 2 more)"]);
  });

  it("passes over the names that Excel keeps for itself, but no other that begins alike", async () => {
    const { book, left } = await readBook(
      await file(
        {},
        {
          namedRanges: [
            { name: "_xlnm._FilterDatabase", range: "S!$A$1:$B$2", scope: "S" },
            { name: "_XLFN.X", range: "S!$A$1" },
            { name: "x_xlarge", range: "S!$A$2" },
          ],
        },
      ),
      "x",
    );
    expect([book.names, left]).toEqual([[{ name: "x_xlarge", formula: "=S!$A$2" }], []]);
  });

  it.each<[string, Partial<WriteSheet>]>([
    ["protection", { protection: { sheet: true } }],
    ["split windows", { splitPane: { xSplit: 1000 } }],
    ["page breaks", { rowBreaks: [2] }],
    ["page breaks", { colBreaks: [2] }],
  ])("says that %s are not kept", async (words, sheet) =>
    expect(await leftOf({ rows: [[1]], ...sheet })).toEqual([words]),
  );

  it("keeps a wide merge that the cells fill, and lets one end 200 rows and 50 columns past them", async () => {
    const merged = async (endRow: number, endCol: number, startRow = 0, startCol = 0) => {
      const { book, left } = await readBook(
        await file({ rows: [[1], [2, 3]], merges: [{ startRow, endRow, startCol, endCol }] }),
        "x",
      );
      return [book.sheets[0]!.merges![0], left];
    };
    const far = ["merged cells far beyond the filled ones"];
    expect(await merged(202, 52)).toEqual([{ row: 0, column: 0, rows: 203, columns: 53 }, []]);
    expect(await merged(203, 52)).toEqual([{ row: 0, column: 0, rows: 203, columns: 53 }, far]);
    expect(await merged(202, 53)).toEqual([{ row: 0, column: 0, rows: 203, columns: 53 }, far]);
    // One that begins beyond the cells counts from its own start.
    expect(await merged(700, 110, 500, 60)).toEqual([{ row: 500, column: 60, rows: 201, columns: 51 }, []]);
  });

  it("keeps a print set-up of one part only, hidden sheets, and nothing where nothing was set", async () => {
    const sheetOf = async (sheet: Partial<WriteSheet>) =>
      (await readBook(await file({ rows: [[1]], ...sheet }), "x")).book.sheets[0]!;
    expect((await sheetOf({ pageSetup: { orientation: "landscape" } })).print).toEqual({ landscape: true });
    expect((await sheetOf({ pageSetup: { orientation: "portrait" } })).print).toBeUndefined();
    expect((await sheetOf({ headerFooter: { oddHeader: "&CBid" } })).print).toEqual({ header: "&CBid" });
    expect((await sheetOf({ pageSetup: { fitToPage: true } })).print).toEqual({ fit: { across: 1, down: 1 } });
    expect(await sheetOf({})).toEqual({ name: "S", rows: [[{ value: 1 }]] });
    const { book } = await readBook(
      await writeXlsx({
        sheets: ["A", "B", "C"].map((name, i) => ({ name, rows: [[1]], hidden: i === 1, veryHidden: i === 2 })),
      }),
      "x",
    );
    expect(book.sheets.map(({ hidden }) => hidden)).toEqual([undefined, true, true]);
  });

  it("takes the file's name where the file has no title", async () => {
    expect((await readBook(await file({ rows: [[1]] }), "shed")).book.title).toBe("shed");
  });

  it("is not stopped by a spill said to cover the whole sheet", async () => {
    const { book } = await readBook(
      await file({
        cells: cells({
          "0,0": {
            formula: "SEQUENCE(2)",
            formulaType: "array",
            formulaDynamic: true,
            formulaRef: "A1:XFD1048576",
            formulaResult: 1,
          },
          "1,0": { value: 2 },
        }),
      }),
      "x",
    );
    expect(book.sheets[0]!.rows[1]![0]).toEqual({ value: 2, spilled: true });
  });
});
