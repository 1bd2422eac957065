import { parseCsv } from "hucre/csv";
import { readXlsx } from "hucre/xlsx";
import { spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { samples } from "../../samples/index.ts";
import { isPlain } from "../../samples/sample.ts";
import type { Book, BookCell } from "../../src/xlsx/book.ts";
import { readBook } from "../../src/xlsx/readBook.ts";
import { cellsOf } from "./registryValue.ts";

// Any program that does not know the functions would do; this one is free and runs without a screen.
const installed = spawnSync("soffice", ["--version"], { stdio: "ignore" }).status === 0;
const folder = mkdtempSync(join(tmpdir(), "longpoint-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Every sheet as comma-separated values in full precision (the 9th place), in a file of its own (the 12th). */
const CSV = "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,false,false,false,false,-1";

function convert(to: string): void {
  const profile = `-env:UserInstallation=${pathToFileURL(join(folder, "profile")).href}`;
  const { status, stderr } = spawnSync(
    "soffice",
    [
      "--headless",
      profile,
      "--convert-to",
      to,
      "--outdir",
      folder,
      ...samples.map(({ name }) => `samples/${name}.xlsx`),
    ],
    { encoding: "utf8" },
  );
  if (status !== 0) throw new Error(`soffice ended with ${status}: ${stderr}`);
}

type Rows = readonly (readonly unknown[])[];
const books = new Map<string, Book>();
// By sample and sheet: what is shown, or held, in each cell.
const cells = new Map<string, Rows>();
beforeAll(async () => {
  for (const { name } of samples) {
    const bytes = readFileSync(`samples/${name}.xlsx`);
    books.set(name, (await readBook(bytes, name)).book);
    // Without LibreOffice, the values that stand in the file for it to show, read without our own reader.
    if (!installed) for (const sheet of (await readXlsx(bytes)).sheets) cells.set(`${name}-${sheet.name}`, sheet.rows);
  }
  if (!installed) return;
  convert(CSV);
  convert("pdf");
  for (const file of readdirSync(folder))
    if (file.endsWith(".csv"))
      cells.set(
        file.slice(0, -".csv".length),
        parseCsv(readFileSync(join(folder, file), "utf8"), { skipEmptyRows: false }),
      );
}, 180_000);

const shownIn = (name: string) => (sheet: string, row: number, column: number) =>
  String(cells.get(`${name}-${sheet}`)![row]?.[column] ?? "");

function expectShown(shown: string, { value }: BookCell, at: string): void {
  if (typeof value === "number")
    expect(Math.abs(Number(shown) - value), `${at} shows ${shown}`).toBeLessThanOrEqual(
      1e-12 * Math.max(1, Math.abs(value)),
    );
  else expect([at, shown]).toEqual([at, String(value)]);
}

describe.each(samples.map(({ name }) => name))(
  `samples/%s.xlsx ${installed ? "in LibreOffice" : "as the file holds it (LibreOffice is not installed, so only the file is read)"}`,
  (name) => {
    it("shows every plain value, and no #NAME? beside them", () => {
      const shown = shownIn(name);
      let held = 0;
      for (const { sheet, row, column, cell } of cellsOf(books.get(name)!)) {
        if (!isPlain(sheet) || cell.value === null) continue;
        expect(cell.formula).toBeUndefined();
        expectShown(shown(sheet, row, column), cell, `${sheet} ${row + 1},${column + 1}`);
        held++;
      }
      expect(held).toBeGreaterThan(50);
    });

    it("keeps the figure of every formula that gives one number, ours and its own alike", () => {
      const shown = shownIn(name);
      let held = 0;
      for (const { sheet, row, column, cell } of cellsOf(books.get(name)!)) {
        if (cell.formula === undefined || cell.spill || typeof cell.value !== "number") continue;
        expectShown(shown(sheet, row, column), cell, `${sheet} ${row + 1},${column + 1}`);
        held++;
      }
      expect(held).toBeGreaterThan(3);
    });

    it("goes to paper", () => {
      const setUp = books.get(name)!.sheets.map(({ print }) => print?.fit?.across);
      expect(setUp.every((across) => across === 1)).toBe(true);
      if (!installed) return;
      const pdf = readFileSync(join(folder, `${name}.pdf`), "latin1");
      expect(pdf.startsWith("%PDF-")).toBe(true);
      const pages = pdf.match(/\/Type\s*\/Page\b/g)?.length ?? 0;
      // Every sheet takes a page at least; none may fall apart into columns over dozens of pages.
      expect(pages).toBeGreaterThanOrEqual(setUp.length);
      expect(pages).toBeLessThanOrEqual(4 * setUp.length);
    });
  },
);
