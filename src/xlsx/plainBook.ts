import type { Book, BookCell, BookSheet } from "./book.ts";
import { callsOurs } from "./storedFormula.ts";
import { withoutTexts } from "./withoutTexts.ts";

/** Whether a formula needs functions of ours: it calls one, or uses a name that does. */
function ours({ names = [] }: Book): (formula: string) => boolean {
  const named = names.filter(({ formula }) => callsOurs(formula)).map(({ name }) => name.replaceAll(".", "\\."));
  const uses = named.length > 0 ? new RegExp(`(?<![\\w.])(?:${named.join("|")})(?![\\w.(])`, "i") : null;
  return (formula) => callsOurs(formula) || (uses?.test(withoutTexts(formula)) ?? false);
}

/** The cells that a program without this add-in shows as #NAME?: those with formulas of ours, and what these spill over. */
export function cellsOfOurs(book: Book): number {
  const isOurs = ours(book);
  return book.sheets.reduce((sum, sheet) => sum + (placesOf(sheet, isOurs)?.size ?? 0), 0);
}

/** The book with the value of every formula of ours in its place, tables as plain cells; all other formulas stay. */
export function plainBook(book: Book): Book {
  const isOurs = ours(book);
  return { ...book, sheets: book.sheets.map((sheet) => plainSheet(sheet, isOurs)) };
}

function plainSheet(sheet: BookSheet, isOurs: (formula: string) => boolean): BookSheet {
  const places = placesOf(sheet, isOurs);
  if (!places) return sheet;
  const plain = (cell: BookCell): BookCell => ({ value: cell.value, ...(cell.look && { look: cell.look }) });
  return {
    ...sheet,
    rows: sheet.rows.map((row, i) => row.map((cell, j) => (cell && places.has(`${i},${j}`) ? plain(cell) : cell))),
  };
}

function placesOf({ rows }: BookSheet, isOurs: (formula: string) => boolean): ReadonlySet<string> | null {
  const places = new Set<string>();
  rows.forEach((row, i) =>
    row.forEach((cell, j) => {
      if (cell?.formula === undefined || !isOurs(cell.formula)) return;
      const { rows: down = 1, columns: across = 1 } = cell.spill ?? {};
      for (let r = i; r < i + down; r++) for (let c = j; c < j + across; c++) if (rows[r]?.[c]) places.add(`${r},${c}`);
    }),
  );
  return places.size > 0 ? places : null;
}
