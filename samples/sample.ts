import type { Book, BookSheet } from "../src/xlsx/book.ts";

/** A workbook of ours: the name of its file, one sentence for who looks for one, and its sheets with formulas. */
export interface Sample {
  readonly name: string;
  readonly says: string;
  readonly book: Book;
}

const PLAIN = ", plain";

/** The book with each of its sheets once more as plain values, for a reader whose program does not know the functions. */
export function withPlainSheets(book: Book): Book {
  return { ...book, sheets: [...book.sheets, ...book.sheets.map(plainSheet)] };
}

/** Whether a sheet is such a copy. */
export function isPlain(name: string): boolean {
  return name.endsWith(PLAIN);
}

function plainSheet(sheet: BookSheet): BookSheet {
  const rows = sheet.rows.map((row) =>
    row.map((cell) => cell && { value: cell.value === "" ? null : cell.value, ...(cell.look && { look: cell.look }) }),
  );
  return {
    ...sheet,
    name: sheet.name + PLAIN,
    rows: rows.slice(0, rows.findLastIndex((row) => row.some((cell) => cell !== null && cell.value !== null)) + 1),
  };
}
