import { readFileSync } from "node:fs";
import type { Download, Page } from "playwright-core";
import type { Book } from "../../src/xlsx/book.ts";
import { readBook } from "../../src/xlsx/readBook.ts";
import type { Bench } from "./bench.ts";

/** What the sheets of a page show: by name the formula, value and format of every cell. */
export type Shown = [string, unknown[][]][];

/** The bytes of a sample workbook. */
export const sampleBytes = (name: string): Buffer => readFileSync(`samples/${name}.xlsx`);

/** Without the name by which the pane follows the block. */
export function withoutLink({ names = [], ...book }: Book): Book {
  const others = names.filter(({ name }) => name !== "RoofBlock");
  return { ...book, ...(others.length > 0 && { names: others }) };
}

/** What a user does with files on the bench page of a test, and what then is there. */
export function fileHands(t: Bench) {
  return {
    /** What the file bar says. */
    says: () => t.page.locator("#files .message [role=status]"),

    /** Waits until it says these words among others. */
    said: (words: string) => t.page.locator("#files .message [role=status]", { hasText: words }).waitFor(),

    /** What the sheet shows, as a book of values and formulas. */
    shown: (): Promise<Shown> =>
      t.page.evaluate(async () => {
        const { host } = window.longpoint;
        const all: [string, unknown[][]][] = [];
        for (const sheet of await host.sheets())
          all.push([
            sheet,
            (await host.read({ sheet, row: 0, column: 0, rows: 130, columns: 30 })).map((row) =>
              row.map(({ formula, value, format }) => [formula, value, format]),
            ),
          ]);
        return all;
      }),

    choose: (name: string, bytes: Buffer): Promise<void> =>
      t.page
        .locator("#files input[type=file]")
        .setInputFiles({ name, mimeType: "application/octet-stream", buffer: bytes }),

    /** Presses Save and reads the file that comes. */
    async saved(): Promise<{ name: string; bytes: Buffer; book: Book; left: readonly string[] }> {
      const coming = t.page.waitForEvent("download");
      await t.page.getByRole("button", { name: "Save .xlsx" }).click();
      await saveUnderNewName(t.page, coming);
      const file = await coming;
      const bytes = readFileSync(await file.path());
      return { name: file.suggestedFilename(), bytes, ...(await readBook(bytes, "")) };
    },
  };
}

/** Takes the name that the first save of an opened file offers, where it offers one before the file comes. */
async function saveUnderNewName(page: Page, coming: Promise<Download>): Promise<void> {
  const button = page.getByRole("button", { name: "Save under this name" });
  let came = false;
  void coming.then(() => (came = true));
  while (!came) {
    if (await button.isVisible()) return button.click();
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
}
