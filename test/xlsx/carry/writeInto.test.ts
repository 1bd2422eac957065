import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { beforeAll, describe, expect, it } from "vitest";
import type { Book, BookCell, Original } from "../../../src/xlsx/book.ts";
import { readBook } from "../../../src/xlsx/readBook.ts";
import { writeInto } from "../../../src/xlsx/carry/writeInto.ts";
import { byExceljs, byLibreOffice, converted, office, partsOf, shownByOffice, withMore } from "./otherPrograms.ts";

/** A file as it is kept when it is opened. */
async function opened(bytes: Uint8Array): Promise<Original> {
  return { bytes, as: (await readBook(bytes, "", "a file")).book, unknown: 0 };
}

/** A book with other cells in its first sheet, by row and column from 0. */
function changed(book: Book, cells: Readonly<Record<string, BookCell | null>>): Book {
  const [first, ...others] = book.sheets;
  const rows = first!.rows.map((row) => [...row]);
  for (const [place, cell] of Object.entries(cells)) {
    const [row, column] = place.split(",").map(Number) as [number, number];
    while (rows.length <= row) rows.push([]);
    rows[row]![column] = cell;
  }
  const full = rows.map((row) => Array.from(row, (cell) => cell ?? null));
  return { ...book, sheets: [{ ...first!, rows: full }, ...others] };
}

/** The names of the parts that are not as they were. */
function others(before: Uint8Array, after: Uint8Array): string[] {
  const [a, b] = [partsOf(before), partsOf(after)];
  return [...new Set([...Object.keys(a), ...Object.keys(b)])].filter((path) => a[path] !== b[path]).sort();
}

const files = new Map<string, Uint8Array>();
beforeAll(async () => {
  files.set("exceljs", withMore(await byExceljs()));
  if (office) files.set("LibreOffice", byLibreOffice());
}, 120_000);

describe("a workbook of another program", () => {
  it.skipIf(!office).each(["exceljs", "LibreOffice"])(
    "of %s is the same to the byte where nothing was changed",
    async (name) => {
      const original = await opened(files.get(name)!);
      expect(writeInto(original, original.as)).toEqual({ bytes: original.bytes, lost: [], ending: "xlsx" });
    },
  );

  it.skipIf(!office).each(["exceljs", "LibreOffice"])(
    "of %s keeps every part but the sheet, in which one cell has changed",
    async (name) => {
      const original = await opened(files.get(name)!);
      const old = original.as.sheets[0]!.rows[1]![1]!;
      const { bytes, lost } = writeInto(original, changed(original.as, { "1,1": { ...old, value: 50 } }));
      expect(lost).toEqual([]);
      expect(others(original.bytes, bytes)).toEqual(["xl/workbook.xml", "xl/worksheets/sheet1.xml"]);
      const [before, after] = [partsOf(original.bytes), partsOf(bytes)];
      const sheet = "xl/worksheets/sheet1.xml";
      const cell = /<c r="B2"[^>]*>.*?<\/c>/s;
      const row = (xml: string) => xml.replace(/ spans="[^"]*"/g, "").replace(/<dimension[^>]*>/, "");
      expect(row(after[sheet]!.replace(cell, ""))).toBe(row(before[sheet]!.replace(cell, "")));
      expect(after[sheet]).toMatch(/<c r="B2"[^>]*><v>50<\/v><\/c>/);
      expect(after["xl/workbook.xml"]!.replace(' fullCalcOnLoad="1"', "").replace("<calcPr/>", "")).toBe(
        before["xl/workbook.xml"]!.replace(' fullCalcOnLoad="1"', "").replace("<calcPr/>", ""),
      );
      const again = await readBook(bytes, "");
      expect(again.book.sheets[0]!.rows[1]![1]).toEqual({ ...old, value: 50 });
    },
  );

  it.skipIf(!office)("is read by LibreOffice with what was typed and what stands beside it", async () => {
    const all: Record<string, Uint8Array> = {};
    for (const [name, bytes] of files) {
      const original = await opened(bytes);
      const at = (row: number, column: number) => original.as.sheets[0]!.rows[row]![column]!;
      const [sum, total] = name === "exceljs" ? [3, 1018.9] : [2, 160];
      const book = changed(original.as, {
        "1,1": { value: 50 },
        // As the sheet has calculated them.
        [`1,${sum}`]: { ...at(1, sum), value: sum === 3 ? 925 : 100 },
        [`4,${sum}`]: { ...at(4, sum), value: total },
        "20,0": { value: 'a < b & "c"\n_x0041_' },
        "20,1": { value: 99, formula: "=B2*2-1", look: { bold: true, fill: "#fdf6dd", format: "0.00" } },
        "20,2": { value: true },
      });
      all[`${name}.xlsx`] = writeInto(original, book).bytes;
    }
    const shown = shownByOffice(all);
    for (const rows of Object.values(shown)) {
      expect(String(rows[1]![1])).toBe("50");
      expect(rows[20]!.slice(0, 3).map(String)).toEqual(['a < b & "c"\n_x0041_', "99", "TRUE"]);
    }
    expect(String(shown["exceljs.xlsx"]![4]![3])).toBe("1018.9");
    expect(String(shown["LibreOffice.xlsx"]![4]![2])).toBe("160");
  });
});

/** The book with its first sheet's lines where they are now: the file's number of each, or -1 for a new one. */
function moved(original: Original, rows: readonly number[] | null, columns: readonly number[] | null = null): Book {
  const [first, ...rest] = original.as.sheets;
  const wide = columns ?? Array.from({ length: 12 }, (_, i) => i);
  const lines = rows ?? first!.rows.map((_, i) => i);
  const here = lines.map((row) =>
    wide.map((column) => (row < 0 || column < 0 ? null : (first!.rows[row]?.[column] ?? null))),
  );
  const from = {
    ...first!.from!,
    marked: { rows: 40, columns: 12 },
    ...(rows && { rows }),
    ...(columns && { columns }),
  };
  // What lives in the sheet goes with its cells there.
  const to = (all: readonly number[] | null, index: number) => (all ? all.indexOf(index) : index);
  const at = <One extends { readonly row: number; readonly column: number }>(all: readonly One[] = []) =>
    all
      .map((one) => ({ ...one, row: to(rows, one.row), column: to(columns, one.column) }))
      .filter(({ row, column }) => row >= 0 && column >= 0);
  const filters = (first!.filters ?? []).map(({ area, ...filter }) => {
    const [row, column] = [to(rows, area.row), to(columns, area.column)];
    const [last, end] = [to(rows, area.row + area.rows - 1), to(columns, area.column + area.columns - 1)];
    return { ...filter, area: { row, column, rows: last - row + 1, columns: end - column + 1 } };
  });
  const live = { notes: at(first!.notes), links: at(first!.links), filters };
  return { ...original.as, sheets: [{ ...first!, rows: here, from, ...live }, ...rest] };
}
const until = (n: number, from = 0) => Array.from({ length: n }, (_, i) => from + i);

describe("where rows and columns have moved", () => {
  it("what belongs to cells goes with them, and charts read what they read", async () => {
    const original = await opened(files.get("exceljs")!);
    // Two rows above the third; the last of them filled.
    const { bytes, lost } = writeInto(original, moved(original, [0, 1, -1, -1, ...until(38, 2)]));
    expect(lost).toEqual([]);
    const parts = partsOf(bytes);
    const sheet = parts["xl/worksheets/sheet1.xml"]!;
    expect(parts["xl/charts/chart1.xml"]).toContain("<c:f>Estimate!$D$2:$D$6</c:f>");
    expect(sheet).toMatch(/<conditionalFormatting sqref="D2:D6">/);
    expect(sheet).toMatch(/<dataValidation [^>]*sqref="A12"/);
    expect(sheet).toMatch(/<dataValidation [^>]*sqref="B2"/);
    expect(sheet).toMatch(/<hyperlink ref="A9"/);
    expect(sheet).toMatch(/<autoFilter ref="A1:D6"\/>/);
    expect(sheet).toMatch(/<c r="A10"[^>]*t="s"/);
    expect(parts["xl/tables/table1.xml"]).toContain('ref="A16:B18"');
    expect(Object.entries(parts).find(([path]) => /comments\d*\.xml$/.test(path))![1]).toContain('ref="A8"');
    const drawing = parts["xl/drawings/drawing1.xml"]!;
    expect(drawing).toMatch(/<xdr:from><xdr:col>5<\/xdr:col>.*?<xdr:row>1<\/xdr:row>/);
    expect(drawing).toContain("<xdr:row>9</xdr:row>");
    expect(parts["xl/workbook.xml"]).toContain("$A1:$F22");
    expect(parts["xl/workbook.xml"]).toContain("$1:$1");
    // Nothing else is touched.
    for (const path of [
      "xl/theme/theme1.xml",
      "xl/printerSettings/printerSettings1.bin",
      "customXml/item1.xml",
      "xl/future/thing1.xml",
      "xl/sharedStrings.xml",
      "xl/styles.xml",
    ])
      expect([path, parts[path]]).toEqual([path, partsOf(original.bytes)[path]]);
  });

  it("a table that lost a column is named and goes, and so does what stood on deleted cells", async () => {
    const original = await opened(files.get("exceljs")!);
    const { bytes, lost } = writeInto(original, moved(original, null, [0, ...until(10, 2)]));
    expect(lost).toEqual([
      "table frames whose columns or headings changed on Estimate, where rows or columns were inserted, deleted or moved",
    ]);
    const parts = partsOf(bytes);
    expect(parts["xl/tables/table1.xml"]).toBeUndefined();
    expect(parts["[Content_Types].xml"]).not.toContain("table1.xml");
    expect(parts["xl/worksheets/sheet1.xml"]).not.toContain("tablePart");
    expect(parts["xl/worksheets/sheet1.xml"]).not.toMatch(/sqref="B2"/);
    expect(parts["xl/charts/chart1.xml"]).toContain("<c:f>Estimate!$C$2:$C$4</c:f>");
  });

  it.skipIf(!office)("LibreOffice reads the file with its chart, its picture and its values", async () => {
    const original = await opened(files.get("exceljs")!);
    const { bytes } = writeInto(original, moved(original, [0, 1, -1, -1, ...until(38, 2)]));
    const flat = strFromU8(converted({ "moved.xlsx": bytes }, "fods", "fods")["moved.xlsx"]!);
    expect(flat.match(/<chart:series /g)).toHaveLength(1);
    expect(flat).toContain("<draw:image");
    expect(flat).toContain("Measured on site");
    expect(flat).toContain('calcext:target-range-address="Estimate.D2:Estimate.D6"');
  });
});

describe("sheets", () => {
  it("that are renamed, deleted, put elsewhere or new stand so in the file, and charts follow the name", async () => {
    const original = await opened(files.get("exceljs")!);
    const [estimate, notes] = original.as.sheets;
    const added = {
      name: "Jacks",
      rows: [
        [
          { value: 4, look: { bold: true } },
          { value: "x", formula: "=RAFTER.JACKTABLE(A1:B2)", spill: { rows: 2, columns: 2 } },
        ],
      ],
    };
    const named = writeInto(original, { ...original.as, sheets: [added, notes!, { ...estimate!, name: "Jim's bid" }] });
    expect(named.lost).toEqual([]);
    const parts = partsOf(named.bytes);
    expect(parts["xl/charts/chart1.xml"]).toContain("<c:f>'Jim''s bid'!$D$2:$D$4</c:f>");
    expect(parts["xl/workbook.xml"]).toMatch(/localSheetId="2"[^>]*>'Jim''s bid'!\$A1:\$F20</);
    expect(parts["xl/metadata.xml"]).toContain("XLDAPR");
    const { book } = await readBook(named.bytes, "");
    expect(book.sheets.map(({ name }) => name)).toEqual(["Jacks", "Notes", "Jim's bid"]);
    expect(book.sheets[0]!.rows[0]![1]).toMatchObject({
      formula: "=RAFTER.JACKTABLE(A1:B2)",
      spill: { rows: 2, columns: 2 },
    });
    const gone = partsOf(writeInto(original, { ...original.as, sheets: [notes!], names: [] }).bytes);
    expect(Object.keys(gone).filter((path) => /drawing|chart|comment|table|media|sheet1\.xml/.test(path))).toEqual([]);
    expect(gone["xl/workbook.xml"]).not.toContain("Print_Area");
    expect(gone["xl/future/thing1.xml"]).toBeDefined();
  });

  it("keep a cell's turn, its lock and its theme's color under a changed look, and add styles at the end", async () => {
    const original = await opened(files.get("exceljs")!);
    const [first] = original.as.sheets;
    const at = (row: number, column: number) => first!.rows[row]![column]!;
    const before = partsOf(original.bytes)["xl/styles.xml"]!;
    const { bytes } = writeInto(
      original,
      changed(original.as, { "8,0": { ...at(8, 0), look: { ...at(8, 0).look, fill: "#ffee00" } } }),
    );
    const styles = partsOf(bytes)["xl/styles.xml"]!;
    const xfs = (xml: string) => /<cellXfs[^>]*>(.*?)<\/cellXfs>/s.exec(xml)![1]!;
    expect(xfs(styles).startsWith(xfs(before))).toBe(true);
    expect(xfs(styles).slice(xfs(before).length)).toMatch(/textRotation="45"/);
    expect((await readBook(bytes, "")).book.sheets[0]!.rows[8]![0]!.look).toEqual({
      ...at(8, 0).look,
      fill: "#ffee00",
    });
  });

  it("with macros keep them, under the name that programs expect", async () => {
    const parts = unzipSync(await byExceljs());
    const types = strFromU8(parts["[Content_Types].xml"]!);
    parts["[Content_Types].xml"] = strToU8(
      types.replace("spreadsheetml.sheet.main", "ms-excel.sheet.macroEnabled.main"),
    );
    parts["xl/vbaProject.bin"] = new Uint8Array([1, 2, 3]);
    const original = await opened(zipSync(parts));
    const old = original.as.sheets[0]!.rows[1]![1]!;
    const { bytes, ending } = writeInto(original, changed(original.as, { "1,1": { ...old, value: 50 } }));
    expect(ending).toBe("xlsm");
    expect(partsOf(bytes)["xl/vbaProject.bin"]).toBe("1,2,3");
  });

  it("say when words of a changed cell had formats of their own", async () => {
    const original = await opened(files.get("exceljs")!);
    const old = original.as.sheets[0]!.rows[7]![0]!;
    expect(writeInto(original, changed(original.as, { "7,0": { ...old, value: "dry" } })).lost).toEqual([
      "formats of single words in cells that were changed",
    ]);
  });

  it("carry what the pane keeps among the properties of others", async () => {
    const original = await opened(files.get("exceljs")!);
    const kept = { pane: JSON.stringify({ span: "27' 3" }) };
    const { bytes } = writeInto(original, { ...original.as, kept });
    expect((await readBook(bytes, "")).book.kept).toEqual(kept);
    const next = await opened(bytes);
    expect((await readBook(writeInto(next, { ...next.as, kept: { pane: "{}" } }).bytes, "")).book.kept).toEqual({
      pane: "{}",
    });
  });
});
