import type { BookSheet } from "./book.ts";
import { readBook, type ReadFile } from "./readBook.ts";

/** What a file is read from, as {@link readBook} takes it. */
export type ReadAsk = Parameters<typeof readBook>;

/** What comes of it, in parts that the page takes one at a time: first the book without its rows, then those, then the end; or why there is none. */
export type ReadPart =
  | ReadFile
  | { readonly sheet: number; readonly rows: BookSheet["rows"] }
  | { readonly end: true }
  | { readonly fault: string };

const CELLS_AT_ONCE = 5_000;

// Read beside the page, for unpacking a large file would hold it up.
self.addEventListener("message", async ({ data }: MessageEvent<ReadAsk>) => {
  const post = (part: ReadPart) => self.postMessage(part);
  try {
    const { book, ...rest } = await readBook(...data);
    post({ book: { ...book, sheets: book.sheets.map((sheet) => ({ ...sheet, rows: [] })) }, ...rest });
    book.sheets.forEach(({ rows }, sheet) => {
      for (let from = 0; from < rows.length;) {
        let to = from;
        for (let cells = 0; to < rows.length && cells < CELLS_AT_ONCE; to++) cells += rows[to]!.length;
        post({ sheet, rows: rows.slice(from, to) });
        from = to;
      }
    });
    post({ end: true });
  } catch (error) {
    post({ fault: (error as Error).message });
  }
});
