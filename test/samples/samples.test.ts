import { readFileSync } from "node:fs";
import { beforeAll, describe, expect, it } from "vitest";
import { samples } from "../../samples/index.ts";
import { isPlain } from "../../samples/sample.ts";
import { HEAD } from "../../samples/table.ts";
import { loadBundled } from "../../src/build/loadBundled.ts";
import type { Book } from "../../src/xlsx/book.ts";
import { readBook } from "../../src/xlsx/readBook.ts";
import { cellsOf, registryValue } from "./registryValue.ts";

let fresh: ReadonlyMap<string, Uint8Array>;
let again: ReadonlyMap<string, Uint8Array>;
const books = new Map<string, Book>();
beforeAll(async () => {
  const { sampleBytes } =
    await loadBundled<typeof import("../../src/build/sampleBytes.ts")>("src/build/sampleBytes.ts");
  fresh = await sampleBytes();
  again = await sampleBytes();
  for (const { name } of samples) books.set(name, (await readBook(readFileSync(`samples/${name}.xlsx`), name)).book);
}, 120_000);

describe.each(samples.map(({ name, book }) => [name, book] as const))("samples/%s.xlsx", (name, made) => {
  it("is what `npm run samples` writes today, and the same each time", async () => {
    expect(again.get(name)).toEqual(fresh.get(name));
    expect(books.get(name)).toEqual((await readBook(fresh.get(name)!, name)).book);
  });

  it("holds every sheet of its data, formulas and looks as they were set", () => {
    const book = books.get(name)!;
    expect(book.title).toBe(made.title);
    expect(book.sheets.map((sheet) => sheet.name)).toEqual(
      [...made.sheets, ...made.sheets.map((sheet) => ({ name: `${sheet.name}, plain` }))].map((sheet) => sheet.name),
    );
    for (const [i, { rows, columns, frozenRows, print }] of made.sheets.entries()) {
      const sheet = book.sheets[i]!;
      expect([sheet.columns, sheet.frozenRows, sheet.print]).toEqual([columns, frozenRows, print]);
      for (const [row, line] of rows.entries())
        for (const [column, cell] of line.entries()) {
          const there = sheet.rows[row]?.[column] ?? null;
          expect([there?.formula, there?.look]).toEqual([cell?.formula, cell?.look]);
          if (cell && cell.formula === undefined && cell.value !== null) expect(there?.value).toBe(cell.value);
        }
    }
  });

  it("keeps for every call of ours what the registry itself gives, spills to their last cell", async () => {
    const book = books.get(name)!;
    let held = 0;
    for (const { sheet, row, column, cell } of cellsOf(book)) {
      const value = cell.formula === undefined ? null : await registryValue(book, sheet, cell.formula);
      if (value === null) continue;
      held++;
      const rows = Array.isArray(value) ? (value as unknown[][]) : [[value]];
      expect([cell.formula, cell.spill?.rows ?? 1, cell.spill?.columns ?? 1]).toEqual([
        cell.formula,
        rows.length,
        rows[0]!.length,
      ]);
      const lines = book.sheets.find((one) => one.name === sheet)!.rows;
      const stored = rows.map((line, i) => line.map((_, j) => lines[row + i]?.[column + j]?.value ?? ""));
      expect(stored).toEqual(rows);
    }
    expect(held).toBeGreaterThan(5);
  });

  it("has no error in any cell, and its plain sheets hold no formula and every value", () => {
    const book = books.get(name)!;
    const errors = [...cellsOf(book)].filter(
      ({ cell }) => typeof cell.value === "string" && /^#[A-Z/0!?]+/.test(cell.value),
    );
    expect(errors).toEqual([]);
    const plain = book.sheets.filter((sheet) => isPlain(sheet.name));
    expect(plain.flatMap(({ rows }) => rows.flat()).filter((cell) => cell?.formula !== undefined)).toEqual([]);
    for (const copy of plain) {
      const live = book.sheets.find((sheet) => `${sheet.name}, plain` === copy.name)!;
      for (const { row, column, cell } of cellsOf({ title: "", sheets: [live] }))
        expect(copy.rows[row]?.[column]?.value ?? "").toBe(cell.value ?? "");
    }
  });
});

describe("what the samples come to, by hand", () => {
  const value = (name: string, sheet: string, row: number, column: number) =>
    books.get(name)!.sheets.find((one) => one.name === sheet)!.rows[row - 1]![column]!.value as number;

  it("bid: the sum of its amounts, and the overhead on it", () => {
    const order = books
      .get("bid")!
      .sheets.find(({ name }) => name === "Lumber order")!
      .rows.slice(HEAD)
      .map((row) => row.map((cell) => cell?.value ?? null));
    const price = new Map(
      books
        .get("bid")!
        .sheets.find(({ name }) => name === "Boards")!
        .rows.slice(1)
        .map((row) => [`${row[0]!.value} ${parseFloat(row[1]!.value as string) * 12}`, row[2]!.value as number]),
    );
    const bought = order.filter(([size, board]) => price.has(`${size} ${board}`));
    const lumber = bought.reduce(
      (total, [size, board, count]) => total + price.get(`${size} ${board}`)! * (count as number),
      0,
    );
    expect(value("bid", "Bid", 7, 4)).toBe(bought.reduce((total, row) => total + (row[2] as number), 0));
    expect(value("bid", "Bid", 7, 7)).toBeCloseTo(lumber, 9);
    // The order is proved least: without the boards for waste it costs what its last row says.
    const planned = bought
      .filter((row) => !/waste/.test(String(row[6] ?? "")))
      .reduce((total, [size, board, count]) => total + price.get(`${size} ${board}`)! * (count as number), 0);
    expect(order.find(([size]) => size === "Least possible")!.slice(3, 7)).toEqual([
      expect.closeTo(planned, 9),
      null,
      null,
      "proved: no order of these boards costs less",
    ]);
    const sum =
      lumber +
      [8, 9, 10, 11, 12].reduce((total, row) => total + value("bid", "Bid", row, 4) * value("bid", "Bid", row, 6), 0);
    expect(value("bid", "Bid", 13, 7)).toBeCloseTo(sum, 9);
    expect(value("bid", "Bid", 15, 7)).toBeCloseTo(sum * 1.12, 9);
    // 156 in from the corner to the king common: 132, 108, 84, 60, 36 and 12 in, a left and a right one at each of four corners; 1/4 h each.
    expect(value("bid", "Bid", 11, 4)).toBe(6 * 8 * 0.25);
    // 4 hips, 1 ridge, 6 king commons, and 216 in of ridge: 8 pairs of commons between.
    expect(value("bid", "Bid", 12, 4)).toBe(4 + 1 + 6 + 16);
  });

  it("check: every printed figure agrees, and of the measured ones the wrongly read one alone does not", () => {
    const rows = books.get("check")!.sheets.flatMap(({ rows: lines }) => lines);
    const says = rows.filter((row) => row[5]?.formula).map((row) => row[5]!.value);
    expect(says.filter((text) => text === "agrees")).toHaveLength(says.length - 1);
    // 92 3/4 in read for 80.15 in.
    expect(says.find((text) => text !== "agrees")).toBe(`long by 1' 0 5/8"`);
  });

  it("metric: half of 7.2 m, and the common at 30° over it", () => {
    expect(value("metric", "Job", 7, 4)).toBe(3600);
    expect(value("metric", "Job", 9, 4)).toBeCloseTo((3600 - 22.5) / Math.cos(Math.PI / 6), 6);
  });

  it("metric: an order in meters, proved least, whose boards come to the sum", () => {
    const sheet = (name: string) =>
      books
        .get("metric")!
        .sheets.find((one) => one.name === name)!
        .rows.slice(name === "Boards" ? 1 : HEAD)
        .map((row) => row.map((cell) => cell?.value ?? null));
    const price = new Map(
      sheet("Boards").map(([size, length, each]) => [`${size} ${parseFloat(length as string) * 1000}`, each as number]),
    );
    const bought = sheet("Lumber order").filter(([size, board]) => price.has(`${size} ${Math.round(board as number)}`));
    expect(bought.length).toBeGreaterThan(2);
    const sum = bought.reduce(
      (total, [size, board, count]) => total + price.get(`${size} ${Math.round(board as number)}`)! * (count as number),
      0,
    );
    expect(value("metric", "Job", 18, 4)).toBeCloseTo(sum, 9);
    expect(value("metric", "Job", 17, 4)).toBe(bought.reduce((total, row) => total + (row[2] as number), 0));
    expect(
      sheet("Lumber order")
        .find(([size]) => size === "Least possible")!
        .at(6),
    ).toBe("proved: no order of these boards costs less");
  });
});
