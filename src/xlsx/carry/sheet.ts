import type { BookSheet, Line } from "../book.ts";
import { lettersOf } from "../../registry/columnLetters.ts";
import { WIDTH_PIXELS } from "../fileUnits.ts";
import type { CellTools } from "./cell.ts";
import { filterIn, filterXml, isOtherFilter } from "./filters.ts";
import { inputRulesXml } from "./inputRules.ts";
import { isStill, MOST, type MovedSheet } from "./moved.ts";
import { movedInSheet } from "./movedParts.ts";
import { rowsXml } from "./rows.ts";
import { afterParts } from "./sheetOrder.ts";
import { attribute, elements, replaced, rootOf, tagOf, withAttribute, type Xml } from "./xml.ts";

/** A sheet with nothing in it. */
export const EMPTY_SHEET =
  '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n' +
  '<worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><sheetData/></worksheet>';

/** A sheet's XML as it is now, null where nothing in it has changed, and whether a formula has. */
export function sheetXml(
  file: string,
  was: BookSheet | null,
  now: BookSheet,
  moved: MovedSheet,
  sheets: ReadonlyMap<string, MovedSheet | null>,
  tools: CellTools,
): { readonly xml: string | null; readonly formulas: boolean } {
  const still = [...sheets.values()].every((one) => one !== null && isStill(one));
  // First what stays in the file goes with its cells; what the book says is put in as it is now.
  const xml = still ? file : movedInSheet(file, moved, sheets);
  const root = rootOf(xml);
  const all = elements(xml, root);
  const part = (name: string) => all.find((one) => one.name === name);
  const { prefix } = tools;
  const changes: { start: number; end: number; by: string }[] = [];
  const put = (name: string, by: string) => {
    const there = part(name);
    const start = there?.start ?? afterParts(xml, name);
    changes.push({ start, end: there?.end ?? start, by });
  };
  const rows = rowsXml(xml, part("sheetData"), was, now, moved, tools);
  if (rows.xml !== null) {
    put("sheetData", `<${prefix}sheetData>${rows.xml}</${prefix}sheetData>`);
    put("dimension", `<${prefix}dimension ref="${rows.used ?? "A1"}"/>`);
  }
  if (!moved.columns.still || !same(was?.columns, now.columns))
    put("cols", columnsXml(xml, part("cols"), was, now, moved, prefix));
  if (!moved.rows.still || !moved.columns.still || !same(places(was), places(now)))
    put("mergeCells", mergesXml(now, prefix));
  if (was?.frozenRows !== now.frozenRows || was?.frozenColumns !== now.frozenColumns)
    put("sheetViews", viewsXml(xml, part("sheetViews"), now, prefix));
  if (!same(was?.inputRules, now.inputRules))
    put("dataValidations", inputRulesXml(xml, part("dataValidations"), now.inputRules ?? [], prefix));
  if (isOtherFilter(was?.filters?.[0], now.filters?.[0], moved)) {
    const its = part("autoFilter");
    if (its && filterIn(xml) === null) tools.lost.add(`the filter that ${now.name} had in the file`);
    put("autoFilter", filterXml(xml, its, now.filters?.[0], prefix));
  }
  if (still && !same(was?.valueRules, now.valueRules))
    tools.lost.add("changes to formats that depend on values, which stay as the file has them");
  if (was?.tab !== now.tab) put("sheetPr", tabXml(xml, part("sheetPr"), now, prefix));
  // What is empty need not be put in anew; it may only be taken out.
  const real = changes.filter(({ start, end, by }) => end > start || by !== "");
  const written = real.length > 0 ? replaced(xml, real) : xml;
  return { xml: written === file ? null : written, formulas: rows.formulas };
}

const same = (a: unknown, b: unknown) => JSON.stringify(a ?? []) === JSON.stringify(b ?? []);

function places(sheet: BookSheet | null): string[] {
  return (sheet?.merges ?? []).map(({ row, column, rows, columns }) => `${row},${column},${rows},${columns}`).sort();
}

function mergesXml({ merges = [] }: BookSheet, prefix: string): string {
  if (merges.length === 0) return "";
  const all = merges.map(
    ({ row, column, rows, columns }) =>
      `<${prefix}mergeCell ref="${lettersOf(column)}${row + 1}:${lettersOf(column + columns - 1)}${row + rows}"/>`,
  );
  return `<${prefix}mergeCells count="${merges.length}">${all.join("")}</${prefix}mergeCells>`;
}

/** Widths: those that changed as they are now, all else of a column as the file says. */
function columnsXml(
  xml: string,
  cols: Xml | undefined,
  was: BookSheet | null,
  now: BookSheet,
  { columns }: MovedSheet,
  prefix: string,
): string {
  const ranges = (cols ? elements(xml, cols) : []).map((one) => {
    const tag = tagOf(xml, one);
    return { tag, first: Number(attribute(tag, "min")) - 1, last: Number(attribute(tag, "max")) - 1 };
  });
  const fileTag = (column: number | null) =>
    column === null ? undefined : ranges.find(({ first, last }) => column >= first && column <= last)?.tag;
  // Behind these the file's columns go on in whole stretches.
  const single = Math.max(was?.columns?.length ?? 0, now.columns?.length ?? 0, columns.still ? 0 : 256);
  const tags: { tag: string; first: number; last: number }[] = [];
  for (let column = 0; column < single; column++) {
    const from = columns.from(column);
    const lineNow = now.columns?.[column] ?? null;
    const tag = changedColumn(fileTag(from), from === null ? null : (was?.columns?.[from] ?? null), lineNow, prefix);
    if (tag) tags.push({ tag, first: column, last: column });
  }
  for (const { tag, first, last } of ranges) {
    const from = Math.max(columns.near(Math.max(first, columns.from(single) ?? single)), single);
    const until = Math.min(columns.to(last) ?? last, MOST.columns - 1);
    if (last >= first && until >= from) tags.push({ tag, first: from, last: until });
  }
  if (tags.length === 0) return "";
  const all = tags.map(({ tag, first, last }) => withAttribute(withAttribute(tag, "min", first + 1), "max", last + 1));
  return `<${prefix}cols>${all.join("")}</${prefix}cols>`;
}

function changedColumn(tag: string | undefined, was: Line | null, now: Line | null, prefix: string): string | null {
  if (was?.size === now?.size && was?.hidden === now?.hidden) return tag ?? null;
  let made = tag ?? `<${prefix}col min="1" max="1"/>`;
  if (was?.size !== now?.size) {
    // A column that is as wide as usual again needs no width of its own, but its element must have one.
    made = withAttribute(made, "width", now?.size === undefined ? 9.140625 : now.size / WIDTH_PIXELS);
    made = withAttribute(made, "customWidth", now?.size === undefined ? null : 1);
    made = withAttribute(made, "bestFit", null);
  }
  if (was?.hidden !== now?.hidden) made = withAttribute(made, "hidden", now?.hidden ? 1 : null);
  return attribute(made, "width") === null ? withAttribute(made, "width", 9.140625) : made;
}

/** The sheet's first view with its frozen lines; what is selected is chosen anew. */
function viewsXml(
  xml: string,
  views: Xml | undefined,
  { frozenRows = 0, frozenColumns = 0 }: BookSheet,
  prefix: string,
): string {
  const inside = views ? elements(xml, views) : [];
  const [first] = inside;
  const tag = first ? tagOf(xml, first).replace(/\s*\/?>$/, ">") : `<${prefix}sheetView workbookViewId="0">`;
  const others = first ? elements(xml, first).filter(({ name }) => name !== "pane" && name !== "selection") : [];
  const side = frozenRows > 0 ? (frozenColumns > 0 ? "bottomRight" : "bottomLeft") : "topRight";
  const pane =
    frozenRows + frozenColumns > 0
      ? `<${prefix}pane${frozenColumns > 0 ? ` xSplit="${frozenColumns}"` : ""}${frozenRows > 0 ? ` ySplit="${frozenRows}"` : ""} topLeftCell="${lettersOf(frozenColumns)}${frozenRows + 1}" activePane="${side}" state="frozen"/>`
      : "";
  const kept = others.map(({ start, end }) => xml.slice(start, end)).join("");
  const rest = inside.slice(1).map(({ start, end }) => xml.slice(start, end));
  const view = pane + kept === "" ? tag.replace(/>$/, "/>") : `${tag}${pane}${kept}</${prefix}sheetView>`;
  return `<${prefix}sheetViews>${view}${rest.join("")}</${prefix}sheetViews>`;
}

function tabXml(xml: string, properties: Xml | undefined, { tab }: BookSheet, prefix: string): string {
  const color = tab ? `<${prefix}tabColor rgb="FF${tab.slice(1).toUpperCase()}"/>` : "";
  if (!properties) return color && `<${prefix}sheetPr>${color}</${prefix}sheetPr>`;
  const others = elements(xml, properties).filter(({ name }) => name !== "tabColor");
  const inside = color + others.map(({ start, end }) => xml.slice(start, end)).join("");
  const tag = tagOf(xml, properties).replace(/\s*\/?>$/, ">");
  return `${tag}${inside}</${prefix}sheetPr>`;
}
