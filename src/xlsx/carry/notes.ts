import type { Note } from "../book.ts";
import { columnOf, lettersOf } from "../../registry/columnLetters.ts";
import type { MovedSheet } from "./moved.ts";
import { changedBoxes } from "./movedParts.ts";
import { relationId, type Parts } from "./parts.ts";
import { afterParts } from "./sheetOrder.ts";
import { attribute, elements, escaped, prefixOf, replaced, rootOf, tagOf, textOf, type Xml } from "./xml.ts";

const COMMENTS_TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.comments+xml";
const BOXES_TYPE = "application/vnd.openxmlformats-officedocument.vmlDrawing";
const NO_COMMENTS =
  '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n' +
  '<comments xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><authors><author></author></authors><commentList></commentList></comments>';
const NO_BOXES =
  '<xml xmlns:v="urn:schemas-microsoft-com:vml" xmlns:o="urn:schemas-microsoft-com:office:office" xmlns:x="urn:schemas-microsoft-com:office:excel"></xml>';

/** A file's comment and the place of its element. */
interface Comment {
  readonly at: Xml;
  readonly row: number;
  readonly column: number;
  readonly text: string;
  /** It stands in for a thread of comments, which only newer programs show: it stays as it is. */
  readonly thread: boolean;
}

/** The notes of a file's sheet, by rows. */
export function notesIn(parts: Parts, sheet: string): Note[] {
  const path = commentsPath(parts, sheet);
  if (path === null) return [];
  const seen = new Set<string>();
  const boxes = boxesPath(parts, sheet);
  if (boxes !== null)
    changedBoxes(parts.text(boxes), (shape, row, column) => {
      if (/<x:Visible\b(?!>\s*f)/i.test(shape)) seen.add(`${row},${column}`);
      return shape;
    });
  return commentsIn(parts.text(path))
    .filter(({ thread }) => !thread)
    .map(({ row, column, text }) => ({
      row,
      column,
      text,
      ...(seen.has(`${row},${column}`) && { shown: true as const }),
    }))
    .sort((a, b) => a.row - b.row || a.column - b.column);
}

function commentsPath(parts: Parts, sheet: string): string | null {
  const its = parts.relations(sheet).find(({ kind }) => kind === "comments")?.to ?? null;
  return its !== null && parts.has(its) ? its : null;
}

/** The sheet's boxes of comments; pictures of its header have such a part too. */
function boxesPath(parts: Parts, sheet: string): string | null {
  const xml = parts.text(sheet);
  const its = elements(xml, rootOf(xml)).find(({ name }) => name === "legacyDrawing");
  const id = its && relationId(tagOf(xml, its));
  const path = parts.relations(sheet).find((one) => one.id === id)?.to ?? null;
  return path !== null && parts.has(path) ? path : null;
}

function commentsIn(xml: string): Comment[] {
  const parts = elements(xml, rootOf(xml));
  const inside = (name: string) => parts.filter((one) => one.name === name).flatMap((one) => elements(xml, one));
  const authors = inside("authors").map((one) => textOf(xml, one));
  return inside("commentList").flatMap((at) => {
    const tag = tagOf(xml, at);
    const [, letters, row] = /^\$?([A-Z]+)\$?(\d+)$/i.exec(attribute(tag, "ref") ?? "") ?? [];
    if (!letters) return [];
    const author = authors[Number(attribute(tag, "authorId") ?? -1)] ?? "";
    const text = elements(xml, at).find(({ name }) => name === "text");
    return [
      {
        at,
        row: Number(row) - 1,
        column: columnOf(letters),
        text: text ? wordsIn(xml, text) : "",
        thread: author.startsWith("tc="),
      },
    ];
  });
}

function wordsIn(xml: string, at: Xml): string {
  const words = elements(xml, at).map((one) =>
    one.name === "t" ? textOf(xml, one) : one.name === "r" ? wordsIn(xml, one) : "",
  );
  return words.join("").replace(/\r\n?|_x000D_\n?/g, "\n");
}

/** Writes the notes that have changed into a file's sheet; those that have not are where they belong by now, and stay as they are. */
export function notesInto(
  parts: Parts,
  sheet: string,
  was: readonly Note[],
  now: readonly Note[],
  { rows, columns }: Pick<MovedSheet, "rows" | "columns">,
): void {
  const key = (row: number, column: number) => `${row},${column}`;
  const before = new Map(was.map((note) => [key(note.row, note.column), note]));
  const here = new Set(now.map(({ row, column }) => key(row, column)));
  const changed = now.filter(({ row, column, text, shown }) => {
    const [from, across] = [rows.from(row), columns.from(column)];
    const old = from === null || across === null ? undefined : before.get(key(from, across));
    return old?.text !== text || old.shown !== shown;
  });
  const gone = new Set<string>();
  for (const { row, column } of was) {
    const [to, across] = [rows.to(row), columns.to(column)];
    if (to !== null && across !== null && !here.has(key(to, across))) gone.add(key(to, across));
  }
  if (changed.length + gone.size === 0) return;
  commentsInto(parts, sheet, changed, gone);
  boxesInto(parts, sheet, changed, gone);
}

function commentsInto(parts: Parts, sheet: string, changed: readonly Note[], gone: ReadonlySet<string>): void {
  let path = commentsPath(parts, sheet);
  if (path === null) {
    path = freePath(parts, (n) => `xl/comments${n}.xml`);
    parts.add(sheet, path, NO_COMMENTS, "comments", COMMENTS_TYPE);
  }
  const xml = parts.text(path);
  const root = rootOf(xml);
  const prefix = prefixOf(xml, root);
  const list = elements(xml, root).find(({ name }) => name === "commentList");
  const there = commentsIn(xml).filter(({ thread }) => !thread);
  const changes = there
    .filter(({ row, column }) => gone.has(`${row},${column}`))
    .map(({ at }) => ({ start: at.start, end: at.end, by: "" }));
  const added: string[] = [];
  for (const note of changed) {
    const words = `<${prefix}text><${prefix}t xml:space="preserve">${escaped(note.text)}</${prefix}t></${prefix}text>`;
    const old = there.find(({ row, column }) => row === note.row && column === note.column);
    if (!old) added.push(`<${prefix}comment ref="${placeOf(note)}" authorId="0">${words}</${prefix}comment>`);
    else if (old.text !== note.text) {
      const its = elements(xml, old.at).find(({ name }) => name === "text");
      changes.push({ start: its?.start ?? old.at.open, end: its?.end ?? old.at.open, by: words });
    }
  }
  const all = added.join("");
  if (list && list.open === list.end)
    changes.push({ start: list.start, end: list.end, by: `<${prefix}commentList>${all}</${prefix}commentList>` });
  else changes.push({ start: list?.close ?? root.close, end: list?.close ?? root.close, by: all });
  parts.set(path, replaced(xml, changes));
}

function boxesInto(parts: Parts, sheet: string, changed: readonly Note[], gone: ReadonlySet<string>): void {
  let path = boxesPath(parts, sheet);
  if (path === null) {
    path = freePath(parts, (n) => `xl/drawings/vmlDrawing${n}.vml`);
    const id = parts.add(sheet, path, NO_BOXES, "vmlDrawing", BOXES_TYPE);
    const xml = parts.text(sheet);
    const at = afterParts(xml, "legacyDrawing");
    const prefix = prefixOf(xml, rootOf(xml));
    const by = `<${prefix}legacyDrawing xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships" r:id="${id}"/>`;
    parts.set(sheet, replaced(xml, [{ start: at, end: at, by }]));
  }
  const left = new Map(changed.map((note) => [`${note.row},${note.column}`, note]));
  const xml = changedBoxes(parts.text(path), (shape, row, column) => {
    const key = `${row},${column}`;
    if (gone.has(key)) return "";
    const note = left.get(key);
    left.delete(key);
    return note ? seenBox(shape, note.shown ?? false) : shape;
  });
  let number = Math.max(1024, ...[...xml.matchAll(/_s(\d+)"/g)].map(([, n]) => Number(n)));
  const boxes = [...left.values()].map((note) => boxOf(note, ++number)).join("");
  const end = xml.lastIndexOf("</xml>");
  parts.set(path, end < 0 ? xml : xml.slice(0, end) + boxes + xml.slice(end));
}

function seenBox(shape: string, seen: boolean): string {
  const other = shape
    .replace(/<x:Visible\s*\/>|<x:Visible>[^<]*<\/x:Visible>/g, "")
    .replace(/visibility:\s*(?:hidden|visible)/, `visibility:${seen ? "visible" : "hidden"}`);
  return seen ? other.replace(/<\/x:ClientData>/, "<x:Visible/></x:ClientData>") : other;
}

/** The box of a note beside its cell, as the programs that show it want one. */
function boxOf({ row, column, shown }: Note, number: number): string {
  const top = Math.max(0, row - 1);
  const anchor = [column + 1, 15, top, 2, column + 3, 15, top + 4, 4].join(", ");
  return (
    `<v:shape id="_x0000_s${number}" type="#_x0000_t202" style="position:absolute;visibility:${shown ? "visible" : "hidden"}" fillcolor="#ffffe1" o:insetmode="auto">` +
    '<v:fill color2="#ffffe1"/><v:path o:connecttype="none"/><v:textbox style="mso-direction-alt:auto"><div style="text-align:left"></div></v:textbox>' +
    `<x:ClientData ObjectType="Note"><x:MoveWithCells/><x:SizeWithCells/><x:Anchor>${anchor}</x:Anchor><x:AutoFill>False</x:AutoFill>` +
    `<x:Row>${row}</x:Row><x:Column>${column}</x:Column>${shown ? "<x:Visible/>" : ""}</x:ClientData></v:shape>`
  );
}

function freePath(parts: Parts, named: (n: number) => string): string {
  let n = 1;
  while (parts.has(named(n))) n++;
  return named(n);
}

const placeOf = ({ row, column }: Note) => lettersOf(column) + String(row + 1);
