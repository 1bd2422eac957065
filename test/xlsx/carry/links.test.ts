import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { expect, it } from "vitest";
import type { Book, Link, Original } from "../../../src/xlsx/book.ts";
import { isOutside } from "../../../src/xlsx/carry/links.ts";
import { writeInto } from "../../../src/xlsx/carry/writeInto.ts";
import { readBook } from "../../../src/xlsx/readBook.ts";
import { writeBook } from "../../../src/xlsx/writeBook.ts";
import { byExceljs, byLibreOffice, converted, office, partsOf, withMore } from "./otherPrograms.ts";

const SHEET = "xl/worksheets/sheet1.xml";
const RELATIONS = "xl/worksheets/_rels/sheet1.xml.rels";
const opened = async (bytes: Uint8Array): Promise<Original> => ({
  bytes,
  as: (await readBook(bytes, "", "a file")).book,
  unknown: 0,
});
const having = (book: Book, links: readonly Link[], more: object = {}): Book => ({
  ...book,
  sheets: [{ ...book.sheets[0]!, ...more, links }, ...book.sheets.slice(1)],
});
const linksOf = async (bytes: Uint8Array) => (await readBook(bytes, "", "again")).book.sheets[0]!.links;

it.each([
  ["exceljs", async () => withMore(await byExceljs()), 6],
  ...(office ? [["LibreOffice", async () => byLibreOffice(), 3] as const] : []),
] as const)(
  "links of a workbook by %s are read, and written where they changed; all else stays",
  async (_, file, row) => {
    const original = await opened(await file());
    const old = { row, column: 0, to: "https://example.org/plans" };
    expect(original.as.sheets[0]!.links).toEqual([old]);
    const changed = [
      { row: 0, column: 0, to: 'mailto:yard@example.org?subject=A%20"B"&x=1'.replaceAll('"', "%22") },
      { ...old, to: "https://example.org/plans?sheet=2&set=b" },
    ];
    const { bytes, lost } = writeInto(original, having(original.as, changed));
    expect(lost).toEqual([]);
    expect(await linksOf(bytes)).toEqual(changed);
    const [before, after] = [partsOf(original.bytes), partsOf(bytes)];
    expect(Object.keys(after).filter((path) => after[path] !== before[path])).toEqual(
      expect.arrayContaining([SHEET, RELATIONS]),
    );
    expect(after[RELATIONS]).not.toContain('"https://example.org/plans"');
    const none = await opened(bytes);
    const without = writeInto(none, having(none.as, [])).bytes;
    expect(await linksOf(without)).toBeUndefined();
    expect(partsOf(without)[SHEET]).not.toContain("hyperlink");
  },
  60_000,
);

it("a link that was not touched goes with its row as the file has it", async () => {
  const original = await opened(await byExceljs());
  const [first] = original.as.sheets;
  const rows = [-1, ...Array.from({ length: 40 }, (_, i) => i)];
  const moved = { rows: [[], ...first!.rows], from: { ...first!.from!, marked: { rows: 40, columns: 12 }, rows } };
  const book = having(original.as, [{ row: 7, column: 0, to: "https://example.org/plans" }], moved);
  const parts = partsOf(writeInto(original, book).bytes);
  expect(parts[SHEET]).toMatch(/<hyperlink ref="A8" r:id="rId\d+"[^>]*\/>/);
  expect(parts[RELATIONS]).toBe(partsOf(original.bytes)[RELATIONS]);
});

it("what leads elsewhere stays in the file, is said, and is nothing that can be pressed", async () => {
  const parts = unzipSync(await byExceljs());
  parts[RELATIONS] = strToU8(strFromU8(parts[RELATIONS]!).replace("https://example.org/plans", "file:///etc/passwd"));
  const bytes = zipSync(parts);
  const { book, left } = await readBook(bytes, "", "a file");
  expect(book.sheets[0]!.links).toBeUndefined();
  expect(left).toContain("links");
  const changed = having(book, [{ row: 0, column: 0, to: "https://example.org/" }]);
  const after = partsOf(writeInto({ bytes, as: book, unknown: 0 }, changed).bytes);
  expect(after[RELATIONS]).toContain('Target="file:///etc/passwd"');
  expect(after[SHEET]).toMatch(/<hyperlink ref="A7"/);
});

it.each([
  ["https://example.org/a?b=1", true],
  ["HTTP://example.org", true],
  ["mailto:yard@example.org", true],
  ["javascript:alert(1)", false],
  [" javascript:alert(1)", false],
  ["file:///etc/passwd", false],
  ["data:text/html,x", false],
  ["//example.org", false],
  ["\\\\server\\share", false],
  ["https://example.org/ onclick", false],
])("an address such as %s lives here: %s", (address, lives) => {
  expect(isOutside(address)).toBe(lives);
});

it("a book without a file has its links in the new one", async () => {
  const links = [{ row: 0, column: 0, to: "https://example.org/" }];
  const bytes = await writeBook({ title: "T", sheets: [{ name: "A", rows: [[{ value: "here" }]], links }] });
  expect(await linksOf(bytes)).toEqual(links);
});

it.skipIf(!office)("LibreOffice reads a link that was written", async () => {
  const original = await opened(withMore(await byExceljs()));
  const book = having(original.as, [{ row: 1, column: 0, to: "https://example.org/new" }]);
  const { bytes } = writeInto(original, book);
  const flat = strFromU8(converted({ "a.xlsx": bytes }, "fods", "fods")["a.xlsx"]!);
  expect(flat).toContain('xlink:href="https://example.org/new"');
  expect(flat).not.toContain("https://example.org/plans");
});
