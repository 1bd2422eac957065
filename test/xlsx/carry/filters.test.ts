import { describe, expect, it } from "vitest";
import type { Book, Filter, Line } from "../../../src/xlsx/book.ts";
import { filterIn, filterXml } from "../../../src/xlsx/carry/filters.ts";
import { writeInto } from "../../../src/xlsx/carry/writeInto.ts";
import { elements, rootOf } from "../../../src/xlsx/carry/xml.ts";
import { readBook } from "../../../src/xlsx/readBook.ts";
import { byExceljs, byLibreOffice, converted, office, partsOf } from "./otherPrograms.ts";

const sheet = (filter: string) =>
  `<x:worksheet xmlns:x="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><x:sheetData/>${filter}</x:worksheet>`;
const at = (xml: string) => elements(xml, rootOf(xml)).find(({ name }) => name === "autoFilter");

// After the examples of ECMA-376, 18.3.2.
const XML = sheet(
  '<x:autoFilter ref="B3:E8"><x:filterColumn colId="0"><x:filters blank="1"><x:filter val="fir &amp; pine"/><x:filter val="6/12"/></x:filters></x:filterColumn><x:filterColumn colId="2"><x:customFilters and="1"><x:customFilter operator="greaterThan" val="3000"/><x:customFilter val="*ine"/></x:customFilters></x:filterColumn><x:sortState ref="B4:E8"><x:sortCondition ref="C4:C8"/></x:sortState></x:autoFilter>',
);
const FILTER: Filter = {
  area: { row: 2, column: 1, rows: 6, columns: 4 },
  columns: [
    { column: 1, values: ["fir & pine", "6/12"], blank: true },
    { column: 3, conditions: [{ operator: "greaterThan", value: "3000" }, { value: "*ine" }], and: true },
  ],
};

describe("a filter", () => {
  it("is read, and written so that it reads the same; what else the file says of it stays", () => {
    expect(filterIn(XML)).toEqual(FILTER);
    const written = filterXml(XML, at(XML), FILTER, "x:");
    expect(filterIn(sheet(written))).toEqual(FILTER);
    expect(written).toContain('<x:sortState ref="B4:E8"><x:sortCondition ref="C4:C8"/></x:sortState>');
    expect(filterXml(XML, undefined, { area: FILTER.area, columns: [] }, "x:")).toBe('<x:autoFilter ref="B3:E8"/>');
    expect(filterXml(XML, at(XML), undefined, "x:")).toBe("");
  });

  it.each([
    ["color", '<x:colorFilter dxfId="0"/>'],
    ["date", '<x:filters><x:dateGroupItem year="2025" dateTimeGrouping="year"/></x:filters>'],
    ["average", '<x:dynamicFilter type="aboveAverage" val="4"/>'],
    ["rank", '<x:top10 val="3"/>'],
    ["icon", '<x:iconFilter iconSet="3Arrows" iconId="0"/>'],
    ["nothing known", ""],
  ])("by %s cannot live here", (_, by) => {
    const column = by
      ? `<x:filterColumn colId="1">${by}</x:filterColumn>`
      : '<x:filterColumn colId="1" hiddenButton="1"/>';
    expect(filterIn(sheet(`<x:autoFilter ref="A1:B4">${column}</x:autoFilter>`))).toBeNull();
  });
});

const SHEET = "xl/worksheets/sheet1.xml";
const NAME = /<definedName name="_xlnm._FilterDatabase"[^>]*>([^<]*)/;

/** What is written where a sheet's filter, and what it hides, is another than in the file. */
async function written(now: readonly Filter[], hidden: readonly number[] = [], made = byExceljs()) {
  const bytes = await made;
  const { book, left } = await readBook(bytes, "estimate", "f");
  const changed: Book = {
    ...book,
    sheets: book.sheets.map((one, i) => {
      const { filters: _, ...rest } = one;
      if (i > 0) return one;
      const heights = new Map<number, Line>([
        ...(one.heights ?? []),
        ...hidden.map((row): [number, Line] => [row, { hidden: true }]),
      ]);
      return { ...rest, heights, ...(now.length > 0 && { filters: now }) };
    }),
  };
  const file = writeInto({ bytes, as: book, unknown: 0 }, changed);
  return {
    left,
    was: partsOf(bytes),
    ...file,
    parts: partsOf(file.bytes),
    again: await readBook(file.bytes, "estimate", "f"),
  };
}

describe("in a file of another program", () => {
  const area = { row: 0, column: 0, rows: 4, columns: 4 };

  it("a filter is no part that is left out, and an untouched one stays as it is", async () => {
    const { left, bytes, was, parts, again } = await written([{ area, columns: [] }]);
    expect(left).not.toContain("filters");
    expect(again.book.sheets[0]!.filters).toEqual([{ area, columns: [] }]);
    expect(parts[SHEET]).toBe(was[SHEET]);
    expect(bytes.length).toBeGreaterThan(0);
  });

  it("criteria and the rows that they hide are written, and nothing else", async () => {
    const filter = { area, columns: [{ column: 0, values: ["Nails"] }] };
    const { parts, was, again } = await written([filter], [1, 3]);
    expect(again.book.sheets[0]!.filters).toEqual([filter]);
    expect([...again.book.sheets[0]!.heights!].filter(([, { hidden }]) => hidden).map(([row]) => row)).toEqual([1, 3]);
    expect(parts[SHEET]).toContain(
      '<autoFilter ref="A1:D4"><filterColumn colId="0"><filters><filter val="Nails"/></filters></filterColumn></autoFilter>',
    );
    for (const path of Object.keys(was))
      if (path !== SHEET && path !== "xl/workbook.xml") expect(parts[path]).toBe(was[path]);
  });

  it("a filter that is set elsewhere or taken away takes its name along", async () => {
    const elsewhere = await written([{ area: { ...area, rows: 3 }, columns: [] }]);
    expect(elsewhere.parts[SHEET]).toContain('<autoFilter ref="A1:D3"');
    expect(NAME.exec(elsewhere.parts["xl/workbook.xml"]!)![1]).toBe("'Estimate'!$A$1:$D$3");
    const gone = await written([]);
    expect(gone.parts[SHEET]).not.toContain("autoFilter");
    expect(gone.parts["xl/workbook.xml"]).not.toContain("_FilterDatabase");
    expect(gone.lost).toEqual([]);
  });

  it.skipIf(!office)(
    "LibreOffice's own is read, and it reads what is written",
    async () => {
      const own = { ...area, columns: 3 };
      const filter = { area: own, columns: [{ column: 0, values: ["Boards"] }] };
      const { left, bytes, lost } = await written([filter], [2, 3], Promise.resolve(byLibreOffice()));
      expect([left.includes("filters"), lost]).toEqual([false, []]);
      const theirs = await readBook(converted({ "estimate.xlsx": bytes }, "xlsx", "xlsx")["estimate.xlsx"]!, "", "f");
      expect(theirs.book.sheets[0]!.filters).toEqual([filter]);
      expect([2, 3].map((row) => theirs.book.sheets[0]!.heights?.get(row)?.hidden)).toEqual([true, true]);
    },
    60_000,
  );
});
