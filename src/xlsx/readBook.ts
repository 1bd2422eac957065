import type { Color, Sheet, Workbook } from "hucre";
import { EncryptedFileError, readXlsx, resolveThemeColor } from "hucre";
import type { Book, BookName, BookSheet, Line, Print } from "./book.ts";
import { keptTexts } from "./keptTexts.ts";
import { POINT_PIXELS, WIDTH_PIXELS } from "./fileUnits.ts";
import { readCells } from "./readCells.ts";
import { typedFormula } from "./storedFormula.ts";

/** A file that was read: its book, and in words what the book has no place for. */
export interface ReadFile {
  readonly book: Book;
  readonly left: readonly string[];
}

/** Why a file cannot be opened, in words for its reader. */
export class UnreadableFile extends Error {}

/** Most bytes of a file, and most cells in it, that are opened: more would stop the page. */
export const MOST_BYTES = 20_000_000;
export const MOST_CELLS = 200_000;

/**
 * Reads an .xlsx file.
 *
 * @throws UnreadableFile, with the reason in words, where it is none or is broken.
 */
export async function readBook(bytes: Uint8Array, title: string): Promise<ReadFile> {
  if (bytes.length === 0) throw new UnreadableFile("The file is empty.");
  if (bytes.length > MOST_BYTES)
    throw new UnreadableFile(
      `The file has ${Math.ceil(bytes.length / 1e6)} MB; ${MOST_BYTES / 1e6} MB at most can be opened here.`,
    );
  if (startsWith(bytes, [0xd0, 0xcf, 0x11, 0xe0]))
    throw new UnreadableFile(
      "This is an old .xls workbook or one locked with a password. Save it as an .xlsx workbook without a password and open that.",
    );
  if (!startsWith(bytes, [0x50, 0x4b]))
    throw new UnreadableFile("This is no .xlsx workbook. A workbook saved as .xlsx can be opened here.");
  const workbook = await understood(() => readXlsx(bytes, { readStyles: true, maxInputBytes: MOST_BYTES }));
  if (workbook.sheets.length === 0) throw new UnreadableFile("There is no sheet in the file.");
  const count = workbook.sheets.reduce((sum, { rows }) => sum + rows.reduce((cells, row) => cells + row.length, 0), 0);
  if (count > MOST_CELLS)
    throw new UnreadableFile(
      `The file has ${count.toLocaleString("en")} cells; ${MOST_CELLS.toLocaleString("en")} at most can be opened here.`,
    );
  const left = new Set<string>();
  const resolve = colors(workbook);
  const sheets = await understood(() =>
    workbook.sheets.map((sheet, i) => sheetOf(sheet, `s${i}`, workbook, resolve, left)),
  );
  const names = namesOf(workbook, left);
  if (workbook.externalLinks?.length) left.add("links to other workbooks");
  const kept = keptTexts(workbook.properties?.custom ?? {});
  return {
    book: {
      title: workbook.properties?.title || title,
      sheets,
      ...(names.length > 0 && { names }),
      ...(Object.keys(kept).length > 0 && { kept }),
    },
    left: [...left],
  };
}

async function understood<T>(read: () => T | Promise<T>): Promise<T> {
  try {
    return await read();
  } catch (error) {
    if (error instanceof EncryptedFileError)
      throw new UnreadableFile("The workbook is locked with a password. Save it without one and open that.");
    throw new UnreadableFile("The file is broken, or is no .xlsx workbook: its parts could not be read.", {
      cause: error,
    });
  }
}

function startsWith(bytes: Uint8Array, start: readonly number[]): boolean {
  return start.every((byte, i) => bytes[i] === byte);
}

/** The names of the whole workbook; those of one sheet, and those that Excel keeps for itself, are not such. */
function namesOf({ namedRanges = [] }: Workbook, left: Set<string>): BookName[] {
  const own = namedRanges.filter(({ name }) => !/^_xl/i.test(name));
  const ofSheets = own.filter(({ scope }) => scope !== undefined);
  if (ofSheets.length > 0) left.add(`names that one sheet has for itself (${some(ofSheets.map(({ name }) => name))})`);
  return own
    .filter(({ scope }) => scope === undefined)
    .map(({ name, range }) => ({ name, formula: typedFormula(range) }));
}

function some(names: readonly string[]): string {
  return names.length > 4 ? `${names.slice(0, 3).join(", ")} and ${names.length - 3} more` : names.join(", ");
}

/** Colors of the file's theme as #rrggbb; null where a color is the reader's own choice. */
function colors({ themeColors = [] }: Workbook): (color: Color) => string | null {
  return ({ rgb, theme, tint, indexed }) => {
    if (rgb) return `#${rgb.slice(-6).toLowerCase()}`;
    if (theme !== undefined && theme < themeColors.length)
      return `#${resolveThemeColor(themeColors, theme, tint).slice(-6).toLowerCase()}`;
    return indexed === 9 ? "#ffffff" : null;
  };
}

// What a sheet of a file can hold and a book cannot.
const OTHER: readonly (readonly [keyof Sheet, string])[] = [
  ["charts", "charts"],
  ["images", "pictures"],
  ["textBoxes", "text boxes"],
  ["tables", "table frames"],
  ["dataValidations", "rules for what may be typed"],
  ["conditionalRules", "formats that depend on values"],
  ["autoFilter", "filters"],
  ["protection", "protection"],
  ["sparklines", "small charts in cells"],
  ["pivotTables", "pivot tables"],
  ["slicers", "slicers"],
  ["timelines", "timelines"],
  ["threadedComments", "comments"],
  ["backgroundImage", "background pictures"],
  ["splitPane", "split windows"],
  ["rowBreaks", "page breaks"],
  ["colBreaks", "page breaks"],
];

function sheetOf(
  sheet: Sheet,
  id: string,
  workbook: Workbook,
  resolve: (color: Color) => string | null,
  left: Set<string>,
): BookSheet {
  for (const [part, words] of OTHER) {
    const there = sheet[part];
    if (Array.isArray(there) ? there.length > 0 : there) left.add(words);
  }
  const columns = sheet.columns?.map(({ width, hidden }): Line | null =>
    width === undefined && !hidden
      ? null
      : { ...(width !== undefined && { size: Math.round(width * WIDTH_PIXELS) }), ...(hidden && { hidden }) },
  );
  const heights = new Map(
    [...(sheet.rowDefs ?? [])]
      .filter(([, { height, hidden }]) => height !== undefined || hidden)
      .map(([row, { height, hidden }]): [number, Line] => [
        row,
        { ...(height !== undefined && { size: Math.round(height * POINT_PIXELS) }), ...(hidden && { hidden }) },
      ]),
  );
  const print = printOf(sheet);
  return {
    name: sheet.name,
    rows: readCells(sheet, id, workbook.dateSystem === "1904", resolve, left),
    ...(columns?.some(Boolean) && { columns }),
    ...(heights.size > 0 && { heights }),
    ...(sheet.merges?.length && {
      merges: sheet.merges.map((m) => ({
        row: m.startRow,
        column: m.startCol,
        rows: m.endRow - m.startRow + 1,
        columns: m.endCol - m.startCol + 1,
      })),
    }),
    ...(sheet.freezePane?.rows && { frozenRows: sheet.freezePane.rows }),
    ...(sheet.freezePane?.columns && { frozenColumns: sheet.freezePane.columns }),
    ...((sheet.hidden || sheet.veryHidden) && { hidden: true }),
    ...(print && { print }),
  };
}

function printOf({ pageSetup, headerFooter }: Sheet): Print | null {
  const print: Print = {
    ...(pageSetup?.orientation === "landscape" && { landscape: true }),
    ...(pageSetup?.paperSize && { paper: pageSetup.paperSize }),
    ...(pageSetup?.fitToPage && { fit: { across: pageSetup.fitToWidth ?? 1, down: pageSetup.fitToHeight ?? 1 } }),
    ...(pageSetup?.printArea && { area: pageSetup.printArea }),
    ...(pageSetup?.printTitlesRow && { titleRows: pageSetup.printTitlesRow }),
    ...(headerFooter?.oddHeader && { header: headerFooter.oddHeader }),
    ...(headerFooter?.oddFooter && { footer: headerFooter.oddFooter }),
  };
  return Object.keys(print).length > 0 ? print : null;
}
