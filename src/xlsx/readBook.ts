import type { Color, Sheet, Workbook } from "hucre";
import { EncryptedFileError, readXlsx, resolveThemeColor } from "hucre";
import type { Book, BookName, BookSheet, Filter, InputRule, Line, Note, Print, Rectangle } from "./book.ts";
import { cellsOnly } from "./carry/cellsOnly.ts";
import { fileSheets } from "./carry/fileSheets.ts";
import { filterIn } from "./carry/filters.ts";
import { inputRulesIn } from "./carry/inputRules.ts";
import { linksIn } from "./carry/links.ts";
import { notesIn } from "./carry/notes.ts";
import { picturesIn, type FilePictures } from "./carry/pictures.ts";
import { Parts } from "./carry/parts.ts";
import { checkCells } from "./checkCells.ts";
import { checkFile, hasMacros, MOST_BYTES } from "./checkFile.ts";
import { keptTexts } from "./keptTexts.ts";
import { POINT_PIXELS, WIDTH_PIXELS } from "./fileUnits.ts";
import { readCells } from "./readCells.ts";
import { sheetNames } from "./sheetNames.ts";
import { typedFormula } from "./storedFormula.ts";
import { valueRulesOf } from "./valueRules.ts";
import { UnreadableFile } from "./unreadableFile.ts";

const PAST = { rows: 200, columns: 50 };

/** A file that was read: its book, and in words what the book has no place for. */
export interface ReadFile {
  readonly book: Book;
  readonly left: readonly string[];
  /** Of a file that is kept beside its book: shown from its bytes, and no part of the book. */
  readonly pictures: FilePictures["sheets"];
}

/**
 * Reads an .xlsx file.
 *
 * @param file a name by which its sheets remember that they come from it, for a file that is kept beside its book.
 * @throws UnreadableFile, with the reason in words, where it is none or is broken.
 */
export async function readBook(bytes: Uint8Array, title: string, file?: string): Promise<ReadFile> {
  checkFile(bytes);
  const left = new Set<string>();
  const workbook = await understood(() => readParts(bytes, left));
  if (workbook.sheets.length === 0) throw new UnreadableFile("There is no sheet in the file.");
  checkCells(workbook);
  if (hasMacros(bytes)) left.add("macros");
  const names = sheetNames(
    workbook.sheets.map(({ name }) => name),
    left,
  );
  const resolve = colors(workbook);
  const parts = file === undefined ? null : new Parts(bytes);
  const live = parts && liveParts(parts, workbook, resolve);
  const none: FilePictures = { sheets: new Map(), left: [] };
  const pictures = parts ? unlessBroken(() => picturesIn(parts), { ...none, left: ["pictures"] }) : none;
  for (const words of pictures.left) left.add(words);
  const sheets = await understood(() =>
    workbook.sheets.map((sheet, i) => ({
      ...sheetOf(sheet, `s${i}`, workbook, resolve, left, live?.get(sheet.name)),
      name: names[i]!,
      ...(file !== undefined && { from: { file, sheet: sheet.name } }),
    })),
  );
  const ofBook = namesOf(workbook, left);
  if (workbook.externalLinks?.length) left.add("links to other workbooks");
  const kept = keptTexts(workbook.properties?.custom ?? {});
  return {
    book: {
      title: workbook.properties?.title || title,
      sheets,
      ...(ofBook.length > 0 && { names: ofBook }),
      ...(Object.keys(kept).length > 0 && { kept }),
    },
    left: [...left],
    pictures: pictures.sheets,
  };
}

/** Reads a part that cells do without; where it is broken, something else in its place. */
function unlessBroken<T>(read: () => T, other: T): T {
  try {
    return read();
  } catch {
    return other;
  }
}

/** What of a file's sheet lives in the sheet here and is written back into the file. */
interface LiveParts {
  readonly inputRules: readonly InputRule[];
  readonly valueRules: ReturnType<typeof valueRulesOf>;
  readonly notes: readonly Note[];
  readonly links: ReturnType<typeof linksIn>;
  readonly filter: Filter | null;
}

function liveParts(
  parts: Parts,
  { sheets }: Workbook,
  resolve: (color: Color) => string | null,
): ReadonlyMap<string, LiveParts> {
  const paths = new Map(fileSheets(parts).map(({ name, path }) => [name, path]));
  return new Map(
    sheets.map(({ name, conditionalRules = [], rows, cells }) => {
      const path = paths.get(name);
      // A text of one line: a number with a link would become a text here.
      const isText = (row: number, column: number) => {
        const value = rows[row]?.[column];
        return typeof value === "string" && /^.+$/.test(value) && cells?.get(`${row},${column}`)?.formula === undefined;
      };
      return [
        name,
        {
          inputRules: path ? inputRulesIn(parts.text(path)) : [],
          valueRules: valueRulesOf(conditionalRules, resolve),
          notes: path ? unlessBroken(() => notesIn(parts, path), []) : [],
          links: path ? linksIn(parts, path, isText) : { links: [], all: true },
          filter: path ? filterIn(parts.text(path)) : null,
        },
      ];
    }),
  );
}

/** Reads the parts of a file; where one is broken that cells do without, the cells alone. */
async function readParts(bytes: Uint8Array, left: Set<string>): Promise<Workbook> {
  const options = { readStyles: true, maxInputBytes: MOST_BYTES };
  try {
    return await readXlsx(bytes, options);
  } catch (error) {
    if (error instanceof EncryptedFileError) throw error;
    const workbook = await readXlsx(cellsOnly(bytes), options);
    left.add("charts, pictures, comments or tables, of which one is broken");
    return workbook;
  }
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
  live: LiveParts | undefined,
): BookSheet {
  for (const [part, words] of OTHER) {
    const there = sheet[part];
    if (part === "conditionalRules" && live?.valueRules.all) continue;
    if (part === "dataValidations" && live?.inputRules.length === sheet.dataValidations?.length) continue;
    if (part === "images" && live) continue;
    if (part === "autoFilter" && live?.filter) continue;
    const said = part === "autoFilter" && live ? "filters by color, date, average or rank" : words;
    if (Array.isArray(there) ? there.length > 0 : there) left.add(said);
  }
  const cells = [...(sheet.cells?.values() ?? [])];
  if (cells.filter(({ comment }) => comment).length > (live?.notes.length ?? 0)) left.add("comments");
  if (live ? !live.links.all : cells.some(({ hyperlink }) => hyperlink))
    left.add(live?.links.links.length ? "other links than those of texts to pages and mail" : "links");
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
  const tab = sheet.view?.tabColor && resolve(sheet.view.tabColor);
  return {
    name: sheet.name,
    rows: readCells(sheet, id, workbook.dateSystem === "1904", resolve, left),
    ...(columns?.some(Boolean) && { columns }),
    ...(heights.size > 0 && { heights }),
    ...(sheet.merges?.length && { merges: mergesOf(sheet, left) }),
    ...(sheet.freezePane?.rows && { frozenRows: sheet.freezePane.rows }),
    ...(sheet.freezePane?.columns && { frozenColumns: sheet.freezePane.columns }),
    ...((sheet.hidden || sheet.veryHidden) && { hidden: true }),
    ...(tab && { tab }),
    ...(print && { print }),
    ...(live && live.inputRules.length > 0 && { inputRules: live.inputRules }),
    ...(live && live.valueRules.rules.length > 0 && { valueRules: live.valueRules.rules }),
    ...(live && live.notes.length > 0 && { notes: live.notes }),
    ...(live && live.links.links.length > 0 && { links: live.links.links }),
    ...(live?.filter && { filters: [live.filter] }),
  };
}

/** A merge may cover the whole sheet, which would then have a million rows here: it ends a little past what is filled. */
function mergesOf({ merges = [], rows }: Sheet, left: Set<string>): Rectangle[] {
  const filledColumns = rows.reduce((most, row) => Math.max(most, row.length), 0);
  return merges.map(({ startRow, endRow, startCol, endCol }) => {
    const lastRow = Math.min(endRow, Math.max(rows.length, startRow) + PAST.rows);
    const lastColumn = Math.min(endCol, Math.max(filledColumns, startCol) + PAST.columns);
    if (lastRow < endRow || lastColumn < endCol) left.add("merged cells far beyond the filled ones");
    return { row: startRow, column: startCol, rows: lastRow - startRow + 1, columns: lastColumn - startCol + 1 };
  });
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
