import type { Book, BookSheet } from "../../../xlsx/book.ts";
import type { EmbeddedSheet } from "../runningSheet.ts";
import type { Kinds, LivePart, LiveParts } from "./livePart.ts";

const running = new WeakMap<EmbeddedSheet, LiveParts>();

/** The parts of a sheet that were started because a file has them. */
export function liveParts(sheet: EmbeddedSheet): Readonly<LiveParts> {
  return running.get(sheet) ?? {};
}

/** How each part is loaded. */
const START: { [Name in keyof Kinds]: (sheet: EmbeddedSheet) => Promise<LivePart<Kinds[Name]>> } = {
  inputRules: async (sheet) => (await import("./inputRules.ts")).startInputRules(sheet),
  valueRules: async (sheet) => (await import("./valueRules.ts")).startValueRules(sheet),
  notes: async (sheet) => (await import("./notes.ts")).startNotes(sheet),
  links: async (sheet) => (await import("./links.ts")).startLinks(sheet),
  filters: async (sheet) => (await import("./filters.ts")).startFilters(sheet),
};
const NAMES = Object.keys(START) as (keyof Kinds)[];
/** What may be made anew in any file of the user's own. */
const ADDED: ReadonlySet<keyof Kinds> = new Set(["notes", "links", "filters"]);

/**
 * Starts what a book has and the sheet cannot do by itself. It is loaded when a file first needs it, for most have none.
 *
 * What cannot be loaded does not live here and stays in the file as it is.
 */
export async function startLiveParts(sheet: EmbeddedSheet, { sheets }: Book): Promise<void> {
  if (!sheet.onPage) return;
  const parts = running.get(sheet) ?? {};
  running.set(sheet, parts);
  const needs = (name: keyof Kinds) => sheets.some((one) => one[name]?.length || (ADDED.has(name) && one.from));
  for (const name of NAMES) if (!parts[name] && needs(name)) await start(sheet, parts, name);
}

async function start<Name extends keyof Kinds>(sheet: EmbeddedSheet, parts: LiveParts, name: Name): Promise<void> {
  const part = await START[name](sheet).catch(() => null);
  if (part) Object.assign(parts, { [name]: part });
}

/** Gives an opened sheet what its book has, in the parts that were started. */
export function fillLiveParts(sheet: EmbeddedSheet, subUnitId: string, book: BookSheet): void {
  const lists: { readonly [Name in keyof Kinds]?: readonly Kinds[Name][] } = book;
  const fill = <Name extends keyof Kinds>(name: Name) => {
    const all = lists[name];
    if (all) liveParts(sheet)[name]?.put(sheet.workbook.getId(), subUnitId, all, book);
  };
  NAMES.forEach(fill);
}
