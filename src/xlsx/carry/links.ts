import type { Link } from "../book.ts";
import { columnOf, lettersOf } from "../../registry/columnLetters.ts";
import type { MovedSheet } from "./moved.ts";
import { relationId, type Parts } from "./parts.ts";
import { afterParts } from "./sheetOrder.ts";
import { attribute, elements, escaped, prefixOf, replaced, rootOf, tagOf, type Xml } from "./xml.ts";

const RELATIONS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

/** Whether an address is one of those that live here: a page or mail. Any other, such as a file or a script, stays where it is and is never followed. */
export function isOutside(address: string): boolean {
  return /^(?:https?:\/\/|mailto:)[^\s"<>]+$/i.test(address);
}

/** A link's element in a sheet's XML, on a single cell. */
interface FileLink {
  readonly at: Xml;
  readonly row: number;
  readonly column: number;
  readonly id: string;
  /** Where it leads, for one that lives here. */
  readonly to: string | null;
}

function linksAt(
  parts: Parts,
  sheet: string,
  xml: string,
): { readonly list: Xml | undefined; readonly links: FileLink[] } {
  const list = elements(xml, rootOf(xml)).find(({ name }) => name === "hyperlinks");
  const targets = new Map(parts.relations(sheet).map(({ id, to, target }) => [id, to === null ? target : null]));
  const links = (list ? elements(xml, list) : []).flatMap((at) => {
    const tag = tagOf(xml, at);
    const [, letters, row] = /^\$?([A-Z]+)\$?(\d+)$/i.exec(attribute(tag, "ref") ?? "") ?? [];
    if (!letters) return [];
    const id = relationId(tag);
    const target = targets.get(id) ?? null;
    // A place in the page that it leads to stands apart.
    const to = target !== null && attribute(tag, "location") === null && isOutside(target) ? target : null;
    return [{ at, row: Number(row) - 1, column: columnOf(letters), id, to }];
  });
  return { list, links };
}

/** The links of a file's sheet that live here, by rows, and whether those are all. `may` says on which cells one can. */
export function linksIn(
  parts: Parts,
  sheet: string,
  may: (row: number, column: number) => boolean,
): { readonly links: readonly Link[]; readonly all: boolean } {
  const xml = parts.text(sheet);
  const { list, links } = linksAt(parts, sheet, xml);
  const live = links
    .flatMap(({ row, column, to }) => (to !== null && may(row, column) ? [{ row, column, to }] : []))
    .sort((a, b) => a.row - b.row || a.column - b.column);
  return { links: live, all: live.length === (list ? elements(xml, list).length : 0) };
}

/** Writes the links that have changed into a file's sheet; those that have not are where they belong by now, and stay as they are. */
export function linksInto(
  parts: Parts,
  sheet: string,
  was: readonly Link[],
  now: readonly Link[],
  { rows, columns }: Pick<MovedSheet, "rows" | "columns">,
): void {
  const key = (row: number, column: number) => `${row},${column}`;
  const before = new Map(was.map((link) => [key(link.row, link.column), link.to]));
  const changed = now.filter(({ row, column, to }) => {
    const [from, across] = [rows.from(row), columns.from(column)];
    return from === null || across === null || before.get(key(from, across)) !== to;
  });
  const here = new Set(now.map(({ row, column }) => key(row, column)));
  const gone = new Set(changed.map(({ row, column }) => key(row, column)));
  for (const { row, column } of was) {
    const [to, across] = [rows.to(row), columns.to(column)];
    if (to !== null && across !== null && !here.has(key(to, across))) gone.add(key(to, across));
  }
  if (gone.size === 0) return;
  const added = changed.map(({ row, column, to }) => ({
    place: lettersOf(column) + String(row + 1),
    id: parts.relateOutside(sheet, to, "hyperlink"),
  }));
  const xml = parts.text(sheet);
  const prefix = prefixOf(xml, rootOf(xml));
  const { list, links } = linksAt(parts, sheet, xml);
  const old = links.filter(({ row, column }) => gone.has(key(row, column)));
  const left = (list ? elements(xml, list) : []).filter(({ start }) => !old.some(({ at }) => at.start === start));
  const all = [
    ...left.map(({ start, end }) => xml.slice(start, end)),
    ...added.map(
      ({ place, id }) => `<${prefix}hyperlink xmlns:r="${RELATIONS}" ref="${place}" r:id="${escaped(id)}"/>`,
    ),
  ];
  const tag = list ? tagOf(xml, list).replace(/\s*\/?>$/, ">") : `<${prefix}hyperlinks>`;
  const by = all.length > 0 ? `${tag}${all.join("")}</${prefix}hyperlinks>` : "";
  const at = list ?? { start: afterParts(xml, "hyperlinks"), end: afterParts(xml, "hyperlinks") };
  parts.set(sheet, replaced(xml, [{ start: at.start, end: at.end, by }]));
  const needed = new Set(left.map((one) => relationId(tagOf(xml, one))));
  parts.unrelate(sheet, new Set(old.map(({ id }) => id).filter((id) => id !== "" && !needed.has(id))));
}
