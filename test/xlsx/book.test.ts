import fc from "fast-check";
import { writeXlsx } from "hucre/xlsx";
import type { Cell, WriteSheet } from "hucre";
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { Book, BookCell, Look } from "../../src/xlsx/book.ts";
import { LINES } from "../../src/xlsx/book.ts";
import { MOST_BYTES } from "../../src/xlsx/checkFile.ts";
import { readBook } from "../../src/xlsx/readBook.ts";
import { UnreadableFile } from "../../src/xlsx/unreadableFile.ts";
import { writeBook } from "../../src/xlsx/writeBook.ts";

const there = async (book: Book) => readBook(await writeBook(book), "");
const one = (rows: Book["sheets"][number]["rows"], more: Partial<Book["sheets"][number]> = {}): Book => ({
  title: "Test",
  sheets: [{ name: "A sheet", rows, ...more }],
});

describe("a book written and read", () => {
  it("keeps values, formulas with results, spills, looks, sizes, merges, frozen rows and print set-up", async () => {
    const book = one(
      [
        [
          { value: 6, look: { format: 'General "in 12"', fill: "#fdf6dd" } },
          { value: "24'", look: { bold: true, size: 14, color: "#3b4754" } },
          { value: true },
        ],
        [
          { value: 26.565051177078, formula: "=RAFTER.PITCHDEG(A1)", look: { format: "0.00" } },
          { value: "6/12", formula: '="6/12"' },
          { value: "", formula: '=IF(A1>1,"",1)' },
        ],
        [
          { value: "Piece", formula: "=RAFTER.JACKTABLE(A1:B2)", spill: { rows: 2, columns: 2 } },
          { value: "Offset", spilled: true },
        ],
        [
          { value: "J1", spilled: true },
          { value: 48, spilled: true },
        ],
        [
          null,
          {
            value: "below",
            look: {
              italic: true,
              underline: true,
              strike: true,
              across: "right",
              upright: "top",
              wrap: true,
              font: "Arial",
              borders: { bottom: { line: "double", color: "#7d8b99" } },
            },
          },
        ],
      ],
      {
        columns: [{ size: 140 }, null, { size: 70, hidden: true }],
        heights: new Map([
          [1, { size: 40 }],
          [3, { hidden: true }],
        ]),
        merges: [{ row: 4, column: 1, rows: 1, columns: 2 }],
        frozenRows: 1,
        frozenColumns: 2,
        print: {
          landscape: true,
          paper: "a4",
          fit: { across: 1, down: 0 },
          area: "$A$1:$C$5",
          titleRows: "$1:$1",
          footer: "&RPage &P",
        },
      },
    );
    const { book: read, left } = await there(book);
    expect(left).toEqual([]);
    expect(read).toEqual(book);
  });

  it("keeps every look, alone and together", async () => {
    const color = fc.integer({ min: 0, max: 0xffffff }).map((n) => `#${n.toString(16).padStart(6, "0")}`);
    const border = fc.record({ line: fc.constantFrom(...LINES), color });
    const look: fc.Arbitrary<Look> = fc.record(
      {
        format: fc.constantFrom("0.00", "0.000", '0.0 "mm"', "$#,##0.00", '0.00"°"'),
        size: fc.constantFrom(8, 10, 12, 14.5),
        bold: fc.constant(true),
        italic: fc.constant(true),
        color,
        fill: color,
        borders: fc.record({ top: border, bottom: border, left: border, right: border }, { requiredKeys: ["bottom"] }),
        across: fc.constantFrom("left", "center", "right"),
        wrap: fc.constant(true),
      },
      { requiredKeys: [] },
    );
    await fc.assert(
      fc.asyncProperty(
        fc.array(
          look.filter((l) => Object.keys(l).length > 0),
          { minLength: 1, maxLength: 6 },
        ),
        async (looks) => {
          const rows = looks.map((l): BookCell[] => [{ value: 1, look: l }]);
          expect((await there(one(rows))).book.sheets[0]!.rows).toEqual(rows);
        },
      ),
      { numRuns: 40 },
    );
  });

  it("keeps any number to its last bit and any text", async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(
          fc.oneof(
            fc.double({ noNaN: true, noDefaultInfinity: true }).map((n) => n + 0),
            fc.string({ minLength: 1, unit: "grapheme", maxLength: 20 }),
          ),
          { minLength: 1, maxLength: 20 },
        ),
        async (values) => {
          const plain = values.filter(
            (value) => typeof value === "number" || !/^#|[\r\0-\x08\x0b-\x1f]|_x/.test(value),
          );
          const { book } = await there(one([plain.map((value) => ({ value })), [{ value: 1 }]]));
          expect(plain.map((_, i) => book.sheets[0]!.rows[0]?.[i]?.value)).toEqual(plain);
        },
      ),
      { numRuns: 60 },
    );
  });
});

describe("what the pane keeps in a workbook", () => {
  it("comes back as it was, however long and whatever is in it", async () => {
    const text = fc.string({ unit: "binary", maxLength: 700 }).map((value) => JSON.stringify({ value }));
    await fc.assert(
      fc.asyncProperty(fc.dictionary(fc.constantFrom("pane", "other", "a.b", "p 2"), text), async (kept) => {
        const { book } = await there({ ...one([[{ value: 1 }]]), kept });
        expect(book.kept ?? {}).toEqual(kept);
      }),
      { numRuns: 40 },
    );
  });

  it("is told from the properties of others", async () => {
    const bytes = await writeXlsx({
      sheets: [{ name: "A", rows: [[1]] }],
      properties: {
        custom: {
          Client: "us",
          "Longpoint pane 2": "b",
          "Longpoint pane 1": "a",
          "Longpoint pane": "c",
          "Longpoint x": 7,
        },
      },
    });
    expect((await readBook(bytes, "")).book.kept).toEqual({ pane: "ab" });
  });
});

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

describe("a file that cannot be opened", () => {
  const bid = readFileSync("samples/bid.xlsx");
  it.each([
    ["nothing in it", Buffer.alloc(0), "empty"],
    ["a letter", Buffer.from("Dear carpenter"), "a text file"],
    ["an old or locked workbook", Buffer.from([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1]), "old .xls format"],
    ["half a file", bid.subarray(0, bid.length / 2), "broken"],
    ["a zip of something else", Buffer.from("UEsFBgAAAAAAAAAAAAAAAAAAAAAAAA==", "base64"), "an archive"],
    ["too much", Buffer.alloc(MOST_BYTES + 1), "20 MB at most"],
  ])("%s: says so in words", async (_, bytes, words) => {
    await expect(readBook(bytes, "x")).rejects.toThrow(UnreadableFile);
    await expect(readBook(bytes, "x")).rejects.toThrow(words);
  });

  it("however its bytes are spoilt, is read or refused in words and throws nothing else", async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.tuple(fc.nat(bid.length - 1), fc.nat(255)), { minLength: 1, maxLength: 8 }),
        async (spots) => {
          const spoilt = Uint8Array.from(bid);
          for (const [at, byte] of spots) spoilt[at] = byte;
          await readBook(spoilt, "x").catch((error) => expect(error).toBeInstanceOf(UnreadableFile));
        },
      ),
      { numRuns: 60 },
    );
  }, 60_000);
});
