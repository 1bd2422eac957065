import { isStill, type MovedSheet } from "./moved.ts";
import { movedBoxes, movedChart, movedComments, movedDrawing, movedTable } from "./movedParts.ts";
import { relationId, type Parts } from "./parts.ts";
import { attribute, elements, replaced, rootOf, tagOf } from "./xml.ts";

// Parts of a sheet that say nothing of its cells.
const APART = new Set(["printerSettings", "hyperlink", "image", "customProperty", "worksheetCustomProperty"]);

/** What is lost when a sheet's lines have moved, in words, by the kind of part. */
const WORDS: Readonly<Record<string, string>> = {
  table: "table frames whose columns or headings changed",
  pivotTable: "pivot tables",
  queryTable: "links of tables to data elsewhere",
  slicer: "slicers",
  timeline: "timelines",
  ctrlProp: "buttons and boxes of forms",
};

/** Moves what belongs to sheets whose lines have moved: pictures, charts, comments and tables go with their cells, and what is not understood is taken out and named. */
export function moveParts(
  parts: Parts,
  files: readonly { readonly path: string; readonly sheet: MovedSheet }[],
  sheets: ReadonlyMap<string, MovedSheet | null>,
  before: ReadonlySet<string>,
  lost: Set<string>,
): void {
  for (const path of before) {
    if (!/chart[^/]*\.xml$/i.test(path) || !parts.has(path)) continue;
    change(parts, path, movedChart(parts.text(path), sheets));
  }
  for (const { path, sheet } of files) {
    if (isStill(sheet)) continue;
    const gone = new Set<string>();
    for (const { id, kind, to } of parts.relations(path)) {
      if (to === null || !parts.has(to) || APART.has(kind)) continue;
      if (kind === "drawing") change(parts, to, movedDrawing(parts.text(to), sheet));
      else if (kind === "comments" || kind === "threadedComment")
        change(parts, to, movedComments(parts.text(to), sheet));
      else if (kind === "vmlDrawing") change(parts, to, movedBoxes(parts.text(to), sheet));
      else {
        const table = kind === "table" ? movedTable(parts.text(to), sheet, sheets) : null;
        if (table !== null) change(parts, to, table);
        // A sheet that has only another name keeps what stands in it.
        else if (!sheet.rows.still || !sheet.columns.still) {
          gone.add(id);
          lost.add(
            `${WORDS[kind] ?? `parts that are not known here (${kind})`} on ${sheet.name}, where rows or columns were inserted, deleted or moved`,
          );
        }
      }
    }
    if (gone.size === 0) continue;
    parts.set(path, withoutParts(parts.text(path), gone));
    parts.unrelate(path, gone);
  }
}

function change(parts: Parts, path: string, xml: string): void {
  if (xml !== parts.text(path)) parts.set(path, xml);
}

/** A sheet's XML without the elements that stand for parts which are gone. */
function withoutParts(xml: string, gone: ReadonlySet<string>): string {
  const names = (tag: string) => gone.has(relationId(tag));
  const changes = elements(xml, rootOf(xml)).flatMap((at) => {
    if (at.name === "sheetData") return [];
    if (names(tagOf(xml, at))) return [{ start: at.start, end: at.end, by: "" }];
    const inside = elements(xml, at);
    const its = inside.filter((one) => names(tagOf(xml, one)));
    if (its.length === 0) return [];
    if (its.length === inside.length) return [{ start: at.start, end: at.end, by: "" }];
    const tag = tagOf(xml, at);
    const count =
      attribute(tag, "count") === null ? tag : tag.replace(/count="\d+"/, `count="${inside.length - its.length}"`);
    return [{ start: at.start, end: at.open, by: count }, ...its.map(({ start, end }) => ({ start, end, by: "" }))];
  });
  return replaced(xml, changes);
}
