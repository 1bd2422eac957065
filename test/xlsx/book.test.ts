import fc from "fast-check";
import { writeXlsx } from "hucre/xlsx";
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
