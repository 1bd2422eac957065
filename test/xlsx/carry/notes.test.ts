import { strFromU8 } from "fflate";
import { beforeAll, describe, expect, it } from "vitest";
import type { Book, Note, Original } from "../../../src/xlsx/book.ts";
import { writeInto } from "../../../src/xlsx/carry/writeInto.ts";
import { readBook } from "../../../src/xlsx/readBook.ts";
import { writeBook } from "../../../src/xlsx/writeBook.ts";
import { byExceljs, byLibreOffice, converted, office, partsOf, withMore } from "./otherPrograms.ts";

const files = new Map<string, Uint8Array>();
beforeAll(async () => {
  files.set("exceljs", withMore(await byExceljs()));
  if (office) files.set("LibreOffice", byLibreOffice());
}, 120_000);

const names = office ? ["exceljs", "LibreOffice"] : ["exceljs"];
const opened = async (bytes: Uint8Array): Promise<Original> => ({
  bytes,
  as: (await readBook(bytes, "", "a file")).book,
  unknown: 0,
});
/** The book with other notes on its first sheet, and with rows put in above the third where asked. */
function having(book: Book, notes: readonly Note[], rows?: readonly number[]): Book {
  const [first, ...others] = book.sheets;
  const lines = rows && {
    rows: rows.map((row) => (row < 0 ? [] : (first!.rows[row] ?? []))),
    from: { ...first!.from!, marked: { rows: 40, columns: 12 }, rows },
  };
  return { ...book, sheets: [{ ...first!, ...lines, notes }, ...others] };
}
const notesOf = async (bytes: Uint8Array) => (await readBook(bytes, "", "again")).book.sheets[0]!.notes;

describe.each(names)("notes of a workbook by %s", (name) => {
  it("are read, and say nothing of being left", async () => {
    const { book, left } = await readBook(files.get(name)!, "", "a file");
    const row = name === "exceljs" ? 5 : 1;
    expect(book.sheets[0]!.notes).toEqual([{ row, column: 0, text: "Measured on site" }]);
    expect(left).not.toContain("comments");
  });

  it("are written where they were typed over, made and deleted; the parts of the others stay", async () => {
    const original = await opened(files.get(name)!);
    const [old] = original.as.sheets[0]!.notes!;
    const changed: Note[] = [
      { row: 2, column: 3, text: 'Sill < 1/2" & level\nsecond line', shown: true },
      { ...old!, text: "Measured twice" },
    ];
    const { bytes, lost } = writeInto(original, having(original.as, changed));
    expect(lost).toEqual([]);
    expect(await notesOf(bytes)).toEqual([...changed].sort((a, b) => a.row - b.row));
    const [before, after] = [partsOf(original.bytes), partsOf(bytes)];
    const other = Object.keys(after).filter((path) => after[path] !== before[path]);
    expect(other.filter((path) => !/comments\d*\.xml$|vmlDrawing\d*\.vml$|workbook\.xml$/.test(path))).toEqual([]);
    const next = await opened(bytes);
    expect(await notesOf(writeInto(next, having(next.as, [])).bytes)).toBeUndefined();
  });

  it("go with their rows, and a new one stands where its row is now", async () => {
    const original = await opened(files.get(name)!);
    const [old] = original.as.sheets[0]!.notes!;
    const rows = [0, -1, ...Array.from({ length: 39 }, (_, i) => i + 1)];
    const now: Note[] = [
      { row: 1, column: 1, text: "new" },
      { ...old!, row: old!.row + 1 },
    ];
    const { bytes } = writeInto(original, having(original.as, now, rows));
    expect(await notesOf(bytes)).toEqual(now);
    const boxes = Object.entries(partsOf(bytes)).find(([path]) => path.endsWith(".vml"))![1];
    expect([...boxes.matchAll(/<x:Row>\s*(\d+)/g)].map(([, row]) => Number(row)).sort()).toEqual([1, old!.row + 1]);
  });
});

it("a sheet that had no note gets one, in a file and in a copied or new sheet of it", async () => {
  const original = await opened(files.get("exceljs")!);
  const [first, second] = original.as.sheets;
  const note = [{ row: 0, column: 1, text: "here" }];
  const added = { name: "New", rows: [[{ value: 1 }]], notes: note };
  const { bytes } = writeInto(original, { ...original.as, sheets: [first!, { ...second!, notes: note }, added] });
  const { book } = await readBook(bytes, "", "again");
  expect(book.sheets.map(({ notes }) => notes?.map(({ text }) => text))).toEqual([
    ["Measured on site"],
    ["here"],
    ["here"],
  ]);
});

it("a book without a file has its notes in the new one", async () => {
  const notes = [{ row: 3, column: 2, text: "twice" }];
  const bytes = await writeBook({ title: "T", sheets: [{ name: "A", rows: [[{ value: 1 }]], notes }] });
  expect(await notesOf(bytes)).toEqual(notes);
});

it.skipIf(!office)("LibreOffice shows notes that were written, each on its cell", async () => {
  const original = await opened(files.get("exceljs")!);
  const notes = [
    { row: 2, column: 3, text: "Sill < 1/2 & level" },
    { row: 5, column: 0, text: "Measured twice" },
  ];
  const { bytes } = writeInto(original, having(original.as, notes));
  const made = await writeBook({ title: "T", sheets: [{ name: "A", rows: [[{ value: 1 }]], notes }] });
  const all = converted({ "into.xlsx": bytes, "made.xlsx": made }, "fods", "fods");
  for (const file of Object.values(all)) {
    const flat = strFromU8(file);
    expect(flat.match(/<office:annotation /g)).toHaveLength(2);
    expect(flat).toContain("Sill &lt; 1/2 &amp; level");
    expect(flat).toContain("Measured twice");
  }
});
