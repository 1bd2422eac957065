import type { Book, BookSheet, Original } from "../book.ts";
import type { CellTools } from "./cell.ts";
import { dynamicMark } from "./dynamicMark.ts";
import { fileSheets, workbookPath, type FileSheet } from "./fileSheets.ts";
import { isStill, movedSheet, STILL, type MovedSheet } from "./moved.ts";
import { linksInto } from "./links.ts";
import { moveParts } from "./moveParts.ts";
import { namesXml } from "./names.ts";
import { notesInto } from "./notes.ts";
import { Parts } from "./parts.ts";
import { propertiesInto } from "./properties.ts";
import { EMPTY_SHEET, sheetXml } from "./sheet.ts";
import { Styles } from "./styles.ts";
import { attribute, elements, escaped, prefixOf, replaced, rootOf, tagOf, withAttribute, type Xml } from "./xml.ts";

const SHEET_TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml";
const STYLES_TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.styles+xml";

/** A file that was written into. */
export interface Written {
  readonly bytes: Uint8Array;
  /** What could not be kept, in words. */
  readonly lost: readonly string[];
  /** How a file of its kind must be named: one with macros keeps them, and programs go by the name. */
  readonly ending: "xlsx" | "xlsm" | "xltx" | "xltm";
}

/**
 * Writes a book into the file that it was opened from: what was changed since goes into it, and every other part stays as it is.
 *
 * @throws Error where the file is not as it was when it was opened.
 */
export function writeInto({ bytes, as }: Original, book: Book): Written {
  const parts = new Parts(bytes);
  const before = parts.reached();
  const lost = new Set<string>();
  const workbook = workbookPath(parts);
  const relations = parts.relations(workbook);
  const pathOf = (kind: string) => relations.find((one) => one.kind === kind)?.to ?? null;
  const xml = parts.text(workbook);
  const root = rootOf(xml);
  const inside = elements(xml, root);
  const prefix = prefixOf(xml, root);
  const list = inside.find(({ name }) => name === "sheets");
  const files = fileSheets(parts, workbook);
  const fileOf = new Map<BookSheet, FileSheet>();
  for (const sheet of book.sheets) {
    const its = sheet.from?.file === as.sheets[0]?.from?.file && files.find(({ name }) => name === sheet.from?.sheet);
    if (its && its.path && ![...fileOf.values()].includes(its)) fileOf.set(sheet, its);
  }
  const sheets = new Map<string, MovedSheet | null>(
    files.map((file) => {
      const now = book.sheets.find((sheet) => fileOf.get(sheet) === file);
      return [file.name.toLowerCase(), now ? movedSheet(now.from!, now.name) : null];
    }),
  );
  const asOpened = new Map(as.sheets.map((sheet) => [sheet.from?.sheet, sheet]));

  const stylesPath = pathOf("styles");
  const styles = new Styles(stylesPath === null ? null : parts.text(stylesPath));
  const dynamic = dynamicMark(parts, workbook);
  const rich = richTexts(parts, pathOf("sharedStrings"));
  const tools = (own: string): CellTools => ({ prefix: own, styles, dynamic, rich, lost });

  let formulas = false;
  const paths = new Map<BookSheet, string>();
  const tags = book.sheets.map((sheet): string => {
    const file = fileOf.get(sheet);
    const moved = (file && sheets.get(file.name.toLowerCase())) ?? { was: sheet.name, name: sheet.name, ...STILL };
    const text = file ? parts.text(file.path!) : EMPTY_SHEET;
    const was = file ? (asOpened.get(file.name) ?? null) : null;
    const its = rootOf(text);
    if (file && its.name !== "worksheet") {
      if (JSON.stringify(was?.rows) !== JSON.stringify(sheet.rows))
        lost.add(`what was typed on ${sheet.name}, a sheet for a chart`);
    } else {
      const written = sheetXml(text, was, sheet, moved, sheets, tools(prefixOf(text, its)));
      formulas ||= written.formulas;
      if (file) paths.set(sheet, file.path!);
      if (file && written.xml !== null) parts.set(file.path!, written.xml);
      if (!file) {
        if (sheet.print) lost.add(`how the copied sheet ${sheet.name} is printed`);
        const { path, tag } = newSheet(parts, workbook, sheet, written.xml ?? text, files, prefix);
        paths.set(sheet, path);
        return tag;
      }
    }
    const state =
      was?.hidden === sheet.hidden ? file.tag : withAttribute(file.tag, "state", sheet.hidden ? "hidden" : null);
    return sheet.name === file.name ? state : withAttribute(state, "name", sheet.name);
  });
  const shownStyles = styles.xml();
  if (shownStyles !== null) {
    if (stylesPath !== null) parts.set(stylesPath, shownStyles);
    else parts.add(workbook, "xl/styles.xml", shownStyles, "styles", STYLES_TYPE);
  }
  const gone = files.filter((file) => sheets.get(file.name.toLowerCase()) === null);
  parts.unrelate(workbook, new Set(gone.map(({ id }) => id)));
  if ([...sheets.values()].some((one) => one === null || !isStill(one)))
    moveParts(
      parts,
      files.flatMap(({ name, path }) =>
        path && sheets.get(name.toLowerCase()) ? [{ path, sheet: sheets.get(name.toLowerCase())! }] : [],
      ),
      sheets,
      before,
      lost,
    );

  for (const [sheet, path] of paths) {
    const file = fileOf.get(sheet);
    const was = file && asOpened.get(file.name);
    const moved = (file && sheets.get(file.name.toLowerCase())) ?? STILL;
    notesInto(parts, path, was?.notes ?? [], sheet.notes ?? [], moved);
    linksInto(parts, path, was?.links ?? [], sheet.links ?? [], moved);
  }

  const order = book.sheets.map((sheet) => fileOf.get(sheet)?.name ?? null);
  const changes = [
    ...(list && tags.join("") !== files.map(({ tag }) => tag).join("")
      ? [{ start: list.start, end: list.end, by: `<${prefix}sheets>${tags.map(closed).join("")}</${prefix}sheets>` }]
      : []),
    ...namesXml(xml, inside, prefix, as, book, { files: files.map(({ name }) => name), order, sheets }),
    ...activeSheet(xml, inside, files, order, book),
  ];
  const touched = parts.changed || changes.length > 0;
  const calculation = touched ? calculatedAnew(xml, inside, prefix, root) : [];
  if (changes.length + calculation.length > 0) parts.set(workbook, replaced(xml, [...changes, ...calculation]));
  if (formulas) {
    const chain = relations.find(({ kind }) => kind === "calcChain");
    if (chain) parts.unrelate(workbook, new Set([chain.id]));
  }
  propertiesInto(parts, book.kept ?? {}, as.kept ?? {});
  if (parts.changed) {
    const signed = parts.relations("").filter(({ kind }) => kind === "origin");
    if (signed.length > 0) lost.add("the digital signature, which no longer holds");
    parts.unrelate("", new Set(signed.map(({ id }) => id)));
  }
  parts.removeUnreached(before);
  return {
    bytes: parts.changed ? parts.bytes() : bytes,
    lost: [...lost],
    ending: endingOf(parts.contentType(workbook)),
  };
}

function endingOf(contentType: string | null): Written["ending"] {
  const macros = /macroEnabled/i.test(contentType ?? "");
  if (/template/i.test(contentType ?? "")) return macros ? "xltm" : "xltx";
  return macros ? "xlsm" : "xlsx";
}

const closed = (tag: string) => tag.replace(/\s*\/?>$/, "/>");

function newSheet(
  parts: Parts,
  workbook: string,
  sheet: BookSheet,
  xml: string,
  files: readonly FileSheet[],
  prefix: string,
): { readonly path: string; readonly tag: string } {
  let number = files.length + 1;
  while (parts.has(`xl/worksheets/sheet${number}.xml`)) number++;
  const path = `xl/worksheets/sheet${number}.xml`;
  const id = parts.add(workbook, path, xml, "worksheet", SHEET_TYPE);
  const numbers = files.map(({ tag }) => Number(attribute(tag, "sheetId")));
  const hidden = sheet.hidden ? ' state="hidden"' : "";
  // A number of its own among the sheets', above all that were there.
  const own = Math.max(0, ...numbers) + number;
  const tag = `<${prefix}sheet xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships" name="${escaped(sheet.name)}" sheetId="${own}"${hidden} r:id="${id}"/>`;
  return { path, tag };
}

/** The sheet that a program shows first: the same as in the file, wherever it stands now. */
function activeSheet(
  xml: string,
  inside: readonly Xml[],
  files: readonly FileSheet[],
  order: readonly (string | null)[],
  book: Book,
): { start: number; end: number; by: string }[] {
  if (
    order.length === files.length &&
    order.every((name, i) => name === files[i]!.name) &&
    !book.sheets.some((s) => s.hidden)
  )
    return [];
  const views = inside.find(({ name }) => name === "bookViews");
  return (views ? elements(xml, views) : []).map((view) => {
    const tag = tagOf(xml, view);
    const was = files[Number(attribute(tag, "activeTab") ?? 0)]?.name;
    const now = order.findIndex((name, i) => name === was && !book.sheets[i]!.hidden);
    const active =
      now >= 0
        ? now
        : Math.max(
            0,
            book.sheets.findIndex(({ hidden }) => !hidden),
          );
    const by = withAttribute(withAttribute(tag, "activeTab", active), "firstSheet", null);
    return { start: view.start, end: view.open, by: Number(attribute(tag, "activeTab") ?? 0) === active ? tag : by };
  });
}

/** Has the program that opens the file calculate all of it: functions that are not known here hang on changed cells too. */
function calculatedAnew(
  xml: string,
  inside: readonly Xml[],
  prefix: string,
  root: Xml,
): { start: number; end: number; by: string }[] {
  const its = inside.find(({ name }) => name === "calcPr");
  if (its) return [{ start: its.start, end: its.open, by: withAttribute(tagOf(xml, its), "fullCalcOnLoad", 1) }];
  const before = inside.findLast(({ name }) =>
    ["sheets", "functionGroups", "externalReferences", "definedNames"].includes(name),
  );
  const at = before?.end ?? root.close;
  return [{ start: at, end: at, by: `<${prefix}calcPr fullCalcOnLoad="1"/>` }];
}

/** Tells which of the file's shared texts have formats of single words. */
function richTexts(parts: Parts, path: string | null): (text: number) => boolean {
  let known: readonly boolean[] | null = null;
  return (text) => {
    if (path === null) return false;
    if (known === null) {
      const xml = parts.text(path);
      known = elements(xml, rootOf(xml)).map((one) => elements(xml, one).some(({ name }) => name === "r"));
    }
    return known[text] ?? false;
  };
}
