import type { Book } from "../book.ts";
import { lettersOf } from "../../registry/columnLetters.ts";
import { sheetPrefix } from "../sheetPrefix.ts";
import { storedFormula } from "../storedFormula.ts";
import { isOtherFilter } from "./filters.ts";
import { movedFormula, STILL, type MovedSheet } from "./moved.ts";
import { attribute, elements, escaped, tagOf, textOf, withAttribute, type Xml } from "./xml.ts";

/** The sheets that there were and are: by number in the file, by place now (null for a new one), and what became of each. */
export interface SheetPlaces {
  readonly files: readonly string[];
  readonly order: readonly (string | null)[];
  readonly sheets: ReadonlyMap<string, MovedSheet | null>;
}

/** The name by which programs find a sheet's filter. */
const FILTER = "_xlnm._FilterDatabase";

/** What the names of filters stand for that came, went or changed, by the place of their sheet; null for none. */
function filterNames(as: Book, { sheets }: Book, moved: SheetPlaces["sheets"]): Map<number, string | null> {
  const before = new Map(as.sheets.map(({ from, filters }) => [from?.sheet, filters?.[0]]));
  return new Map(
    sheets.flatMap(({ name, from, filters }, place): [number, string | null][] => {
      const was = from && before.get(from.sheet);
      const its = (from && moved.get(from.sheet.toLowerCase())) ?? STILL;
      if (!isOtherFilter(was, filters?.[0], its)) return [];
      const now = filters?.[0]?.area;
      if (!now) return [[place, null]];
      const at = (row: number, column: number) => `$${lettersOf(column)}$${row + 1}`;
      const last = at(now.row + now.rows - 1, now.column + now.columns - 1);
      return [[place, `${sheetPrefix(name)}${at(now.row, now.column)}:${last}`]];
    }),
  );
}

/** The workbook's names as they are now: those that the sheet knows by what it says, all others (of one sheet, of a program) where their cells are. */
export function namesXml(
  xml: string,
  inside: readonly Xml[],
  prefix: string,
  as: Book,
  book: Book,
  { files, order, sheets }: SheetPlaces,
): { start: number; end: number; by: string }[] {
  const list = inside.find(({ name }) => name === "definedNames");
  const key = (name: string) => name.toLowerCase();
  const was = new Map((as.names ?? []).map((one) => [key(one.name), one.formula]));
  const now = new Map((book.names ?? []).map((one) => [key(one.name), one]));
  const written = new Set<string>();
  const filters = filterNames(as, book, sheets);
  const old = (list ? elements(xml, list) : []).map((at) => ({ at, xml: xml.slice(at.start, at.end) }));
  const kept = old.flatMap(({ at, xml: whole }) => {
    let tag = tagOf(xml, at);
    const name = attribute(tag, "name") ?? "";
    const local = attribute(tag, "localSheetId");
    const end = `</${prefix}definedName>`;
    if (local === null && was.has(key(name))) {
      written.add(key(name));
      const its = now.get(key(name));
      if (!its) return [];
      return [its.formula === was.get(key(name)) ? whole : `${tag}${escaped(storedFormula(its.formula))}${end}`];
    }
    if (local !== null) {
      const place = order.indexOf(files[Number(local)] ?? "");
      if (place < 0) return [];
      if (name === FILTER && filters.has(place)) return [];
      if (place !== Number(local)) tag = withAttribute(tag, "localSheetId", place);
    }
    const text = textOf(xml, at);
    const moved = movedFormula(text, sheets, null);
    // A print area without cells is none.
    if (moved !== text && /^_xlnm\./i.test(name) && moved.includes("#REF!")) return [];
    return [moved === text ? tag + xml.slice(at.open, at.end) : `${tag}${escaped(moved)}${end}`];
  });
  const added = [...now.values()]
    .filter(({ name }) => !written.has(key(name)))
    .map(
      ({ name, formula }) =>
        `<${prefix}definedName name="${escaped(name)}">${escaped(storedFormula(formula))}</${prefix}definedName>`,
    );
  const ofFilters = [...filters].flatMap(([place, text]) =>
    text === null
      ? []
      : [
          `<${prefix}definedName name="${FILTER}" localSheetId="${place}" hidden="1">${escaped(text)}</${prefix}definedName>`,
        ],
  );
  const all = [...kept, ...ofFilters, ...added];
  if (all.join("") === old.map((one) => one.xml).join("")) return [];
  const before = inside.findLast(({ name }) => ["sheets", "functionGroups", "externalReferences"].includes(name))!;
  const start = list?.start ?? before.end;
  const by = all.length > 0 ? `<${prefix}definedNames>${all.join("")}</${prefix}definedNames>` : "";
  return [{ start, end: list?.end ?? start, by }];
}
