import { functions } from "../../functions/index.ts";
import { call } from "../../src/registry/call.ts";
import type { Answer } from "../../src/registry/call.ts";
import type { Book, BookCell } from "../../src/xlsx/book.ts";

const CALL = /^=RAFTER\.([A-Z0-9]+)\((.*)\)$/;
const CELL = /^(?:(?:'([^']+)'|(\w+))!)?\$?([A-Z]+)\$?(\d+)(?::\$?([A-Z]+)\$?(\d+))?$/;

/**
 * What the registry itself gives for a formula that is one call on cells, areas, numbers, texts or calls like it; null for any other formula.
 *
 * Written apart from the sheet's engine, so that the values in a file can be held against it.
 */
export function registryValue(book: Book, sheet: string, formula: string): Answer | Promise<Answer> | null {
  const found = CALL.exec(formula);
  if (!found) return null;
  const definition = functions.find(({ name }) => name === found[1]);
  if (!definition) throw new Error(`No function ${found[1]}.`);
  const inputs = split(found[2]!).map((text) => argument(book, sheet, text));
  return inputs.includes(UNKNOWN) ? null : call(definition, inputs);
}

const UNKNOWN = Symbol("more than a call");

function argument(book: Book, sheet: string, text: string): unknown {
  if (/^-?[\d.]+$/.test(text)) return Number(text);
  if (/^"(?:[^"]|"")*"$/.test(text)) return text.slice(1, -1).replaceAll('""', '"');
  if (/^\{.*\}$/.test(text))
    return text
      .slice(1, -1)
      .split(";")
      .map((row) => split(row).map((one) => argument(book, sheet, one)));
  const cell = CELL.exec(text);
  if (cell) return area(book, cell[1] ?? cell[2] ?? sheet, cell);
  return registryValue(book, sheet, `=${text}`) ?? UNKNOWN;
}

function area(book: Book, sheet: string, [, , , left, top, right, bottom]: RegExpExecArray): unknown {
  const rows = book.sheets.find(({ name }) => name === sheet)!.rows;
  const at = (row: number, column: number) => rows[row]?.[column]?.value ?? null;
  if (right === undefined) return at(Number(top) - 1, number(left!));
  return Array.from({ length: Number(bottom) - Number(top) + 1 }, (_, i) =>
    Array.from({ length: number(right) - number(left!) + 1 }, (__, j) => at(Number(top) - 1 + i, number(left!) + j)),
  );
}

function number(letters: string): number {
  return [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;
}

/** Arguments at the top level: commas in texts, braces and inner calls do not part them. */
function split(text: string): string[] {
  const parts: string[] = [""];
  let depth = 0;
  let quoted = false;
  for (const letter of text) {
    if (letter === '"') quoted = !quoted;
    else if (!quoted && "({".includes(letter)) depth++;
    else if (!quoted && ")}".includes(letter)) depth--;
    if (letter === "," && depth === 0 && !quoted) parts.push("");
    else parts[parts.length - 1] += letter;
  }
  return parts.map((part) => part.trim());
}

/** Every cell of a book with its place. */
export function* cellsOf(book: Book): Generator<{ sheet: string; row: number; column: number; cell: BookCell }> {
  for (const { name, rows } of book.sheets)
    for (const [row, line] of rows.entries())
      for (const [column, cell] of line.entries()) if (cell) yield { sheet: name, row, column, cell };
}
