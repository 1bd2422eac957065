import type { WriteSheet } from "hucre";
import { writeXlsx } from "hucre/xlsx";
import { unzipSync, zipSync } from "fflate";
import { describe, expect, it } from "vitest";
import { MOST_SHEETS } from "../../src/xlsx/checkFile.ts";
import { readBook } from "../../src/xlsx/readBook.ts";
import { sheetNames } from "../../src/xlsx/sheetNames.ts";

const file = async (...sheets: Partial<WriteSheet>[]) =>
  writeXlsx({ sheets: sheets.map((sheet, i) => ({ name: `S${i + 1}`, rows: [["a"]], ...sheet })) });
const refused = (bytes: Uint8Array) =>
  readBook(bytes, "x").then(
    () => "",
    (error: Error) => error.message,
  );
const text = (content: string) => new TextEncoder().encode(content);
/** A file of the given bytes, long enough for any reader. */
const starting = (start: readonly number[], rest = "") =>
  Uint8Array.from([...start, ...text(rest), ...new Uint8Array(4_096)]);
/** The file with what its directory says of every part's unpacked size. */
const saying = (bytes: Uint8Array, size: number) => {
  const copy = bytes.slice();
  const view = new DataView(copy.buffer);
  for (let at = 0; at < copy.length - 46; at++)
    if (view.getUint32(at, true) === 0x02014b50) view.setUint32(at + 24, size, true);
  return copy;
};
const half = (await file({})).subarray(0, 900);
const wide = (word: string) => [...word].flatMap((letter) => [letter.charCodeAt(0), 0]);
const OLE = [0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1];

describe("a file that is something else is told by name", () => {
  it.each([
    ["a workbook with a password", starting([...OLE, ...wide("EncryptedPackage")]), "locked with a password"],
    ["an old workbook", starting([...OLE, ...wide("Workbook")]), "old .xls format"],
    ["a PDF", starting([], "%PDF-1.7"), "a PDF"],
    ["a web page", text("<html><table><tr><td>1</td></tr></table></html>"), "a web page"],
    ["a list with commas", text("Span,Length\n24,36\n"), "a text file"],
    ["bytes of no kind", starting([1, 2, 3]), "no .xlsx workbook"],
    ["nothing", new Uint8Array(), "is empty"],
    ["half a workbook", half, "broken"],
  ])("%s", async (_, bytes, words) => {
    expect(await refused(bytes)).toContain(words);
  });

  it("an archive, slides and a binary workbook, by the parts in it", async () => {
    const renamed = async (from: string, to: string) => {
      const bytes = (await file({})).slice();
      const [old, now] = [text(from), text(to)];
      for (let at = 0; at < bytes.length - old.length; at++)
        if (old.every((byte, i) => bytes[at + i] === byte)) bytes.set(now, at);
      return bytes;
    };
    expect(await refused(await renamed("xl/", "ab/"))).toContain("an archive (.zip)");
    expect(await refused(await renamed("xl/workbook.xml", "xl/workbook.bin"))).toContain(".xlsb");
  });
});

describe("a file beyond a limit is refused with it, before anything is built", () => {
  it("parts that unpack to more than is said to be too much", async () => {
    expect(await refused(saying(await file({}), 40_000_000))).toMatch(/unpacks to \d+ MB; 100 MB at most/);
  });
  it("a picture larger than the page's memory, with its name and the way on", async () => {
    const packed = zipSync({ ...unzipSync(await file({})), "xl/media/site.png": new Uint8Array([1]) });
    const view = new DataView(packed.buffer, packed.byteOffset);
    // What the directory says of the picture's size, which is its last entry.
    const at = packed.findLastIndex((_, i) => i < packed.length - 46 && view.getUint32(i, true) === 0x02014b50);
    view.setUint32(at + 24, 900_000_000, true);
    expect(await refused(packed)).toMatch(
      /unpacks to 901 MB; 100 MB at most .* Most of it is one picture, site\.png: make it smaller or take it out/,
    );
  });
  it("parts that say they unpack to nothing", async () => {
    expect(await refused(saying(await file({}), 0))).toContain("100 MB at most");
  });
  it("sheets", async () => {
    const many = await file(...Array.from({ length: MOST_SHEETS + 1 }, () => ({})));
    expect(await refused(many)).toBe(`The file has 256 sheets; ${MOST_SHEETS} at most can be opened here.`);
  });
  it("a text, with the cell that holds it", async () => {
    expect(await refused(await file({}, { name: "Bid", rows: [["a"], ["b", "x".repeat(32_768)]] }))).toBe(
      "Row 2, column 2 of the sheet Bid holds a text of 32,768 characters; 32,767 at most can be opened here.",
    );
    expect(await refused(await file({ rows: [["x".repeat(32_767)]] }))).toBe("");
  });
  it("a formula, with the cell that holds it", async () => {
    const formula = (length: number) => `1+${"1".repeat(length - 2)}`;
    const cells = (length: number) => new Map([["0,0", { formula: formula(length), formulaResult: 1 }]]) as never;
    expect(await refused(await file({ name: "Bid", rows: [[1]], cells: cells(8_193) }))).toContain(
      "Row 1, column 1 of the sheet Bid holds a formula of 8,193 characters",
    );
    expect(await refused(await file({ rows: [[1]], cells: cells(8_192) }))).toBe("");
  });
});

describe("within the limits it opens", () => {
  it("with a merge of the whole sheet, which ends a little past the cells", async () => {
    const { book, left } = await readBook(
      await file({ merges: [{ startRow: 0, endRow: 1_048_575, startCol: 0, endCol: 16_383 }] }),
      "x",
    );
    expect(book.sheets[0]!.merges).toEqual([{ row: 0, column: 0, rows: 202, columns: 52 }]);
    expect(left).toEqual(["merged cells far beyond the filled ones"]);
  });
  it("with two sheets of one name, and one without a name, which are mended and said", async () => {
    const bytes = await file({ name: "Jacks" }, { name: "Hips" }, { name: "Cuts" });
    const { book } = await readBook(bytes, "x");
    expect(book.sheets.map(({ name }) => name)).toEqual(["Jacks", "Hips", "Cuts"]);
    const left = new Set<string>();
    expect(sheetNames(["Jacks", "JACKS", "", " "], left)).toEqual(["Jacks", "JACKS 2", "Sheet3", "Sheet4"]);
    expect([...left][0]).toBe('the name "JACKS" of a sheet (it is JACKS 2 now)');
  });
  it("naming a formula that asks for something from elsewhere", async () => {
    const cells = new Map([["0,0", { formula: 'IMAGE("http://example.org/"&B1)', formulaResult: "" }]]) as never;
    expect((await readBook(await file({ rows: [[1]], cells }), "x")).left).toEqual([
      "what IMAGE gets from elsewhere (nothing leaves this page)",
    ]);
  });
});
