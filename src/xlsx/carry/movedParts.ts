import { columnOf } from "../../registry/columnLetters.ts";
import { movedFormula, movedPlaces, movedReference, type MovedSheet } from "./moved.ts";
import { attribute, elements, escaped, replaced, rootOf, tagOf, textOf, withAttribute, type Xml } from "./xml.ts";

type Sheets = ReadonlyMap<string, MovedSheet | null>;
type Change = { start: number; end: number; by: string };

// Parts of a sheet that say in `ref` or `sqref` which cells they are about, by the element that goes when those are gone.
const ABOUT = new Set(
  "conditionalFormatting dataValidation hyperlink autoFilter sortState sortCondition ignoredError protectedRange cellWatch inputCells".split(
    " ",
  ),
);
const LISTS = new Set("dataValidations hyperlinks ignoredErrors protectedRanges cellWatches".split(" "));
const FORMULAS = new Set(["formula", "formula1", "formula2", "f"]);

/** A sheet's XML in which rules, links, filters and page breaks are where their cells are now, and their formulas read what they read. */
export function movedInSheet(xml: string, sheet: MovedSheet, sheets: Sheets): string {
  const changes: Change[] = [];
  const visit = (at: Xml): "gone" | "there" => {
    const tag = tagOf(xml, at);
    if (at.name === "sheetData" || at.name === "mergeCells" || at.name === "cols" || at.name === "dimension")
      return "there";
    if (FORMULAS.has(at.name)) {
      formulaChange(xml, at, sheets, sheet.was, changes);
      return "there";
    }
    if (at.name === "rowBreaks" || at.name === "colBreaks") {
      breaks(xml, at, sheet, changes);
      return "there";
    }
    if (at.name === "sqref") {
      const places = movedPlaces(textOf(xml, at), sheet);
      if (places === null) return "gone";
      changes.push({ start: at.open, end: at.close, by: places });
      return "there";
    }
    const name = attribute(tag, "sqref") !== null ? "sqref" : attribute(tag, "ref") !== null ? "ref" : null;
    if (name && (ABOUT.has(at.name) || at.name === "selection")) {
      const places = movedPlaces(attribute(tag, name)!, sheet);
      if (places === null) return "gone";
      if (places !== attribute(tag, name))
        changes.push({ start: at.start, end: at.open, by: withAttribute(tag, name, places) });
    }
    const location = at.name === "hyperlink" ? attribute(tag, "location") : null;
    if (location) {
      const to = movedFormula(location, sheets, sheet.was);
      if (to !== location) {
        const last = changes.at(-1);
        const before = last?.start === at.start ? changes.pop()!.by : tag;
        changes.push({ start: at.start, end: at.open, by: withAttribute(before, "location", to) });
      }
    }
    const inside = elements(xml, at);
    const mark = changes.length;
    const gone = inside.filter((one) => {
      const before = changes.length;
      if (visit(one) === "there") return false;
      changes.length = before;
      changes.push({ start: one.start, end: one.end, by: "" });
      return true;
    });
    // A rule whose cells stand in an element of its own goes with them; a list with nothing in it may not stay.
    if (gone.some(({ name: its }) => its === "sqref")) return ((changes.length = mark), "gone");
    if (LISTS.has(at.name) && inside.length > 0) {
      if (gone.length === inside.length) return ((changes.length = mark), "gone");
      if (gone.length > 0 && attribute(tag, "count") !== null)
        changes.push({ start: at.start, end: at.open, by: withAttribute(tag, "count", inside.length - gone.length) });
    }
    return "there";
  };
  for (const at of elements(xml, rootOf(xml)))
    if (visit(at) === "gone") changes.push({ start: at.start, end: at.end, by: "" });
  return replaced(xml, changes);
}

function formulaChange(xml: string, at: Xml, sheets: Sheets, here: string | null, changes: Change[]): void {
  const old = textOf(xml, at);
  const by = movedFormula(old, sheets, here);
  if (by !== old) changes.push({ start: at.open, end: at.close, by: escaped(by) });
}

function breaks(xml: string, at: Xml, { rows, columns }: MovedSheet, changes: Change[]): void {
  const lines = at.name === "rowBreaks" ? rows : columns;
  if (lines.still) return;
  for (const one of elements(xml, at)) {
    const tag = tagOf(xml, one);
    const id = Number(attribute(tag, "id"));
    changes.push({ start: one.start, end: one.open, by: withAttribute(tag, "id", lines.near(id)) });
  }
}

/** Any part of the file with formulas about cells in its `f` elements: charts, rules of newer programs. */
export function movedChart(xml: string, sheets: Sheets): string {
  const changes: Change[] = [];
  const visit = (at: Xml) => {
    if (at.name === "f") formulaChange(xml, at, sheets, null, changes);
    else elements(xml, at).forEach(visit);
  };
  elements(xml).forEach(visit);
  return replaced(xml, changes);
}

/** A sheet's drawing with its anchors where their cells are now. */
export function movedDrawing(xml: string, { rows, columns }: MovedSheet): string {
  const changes: Change[] = [];
  const visit = (at: Xml) => {
    const lines = at.name === "row" ? rows : at.name === "col" ? columns : null;
    if (lines && /^\d+$/.test(textOf(xml, at)))
      changes.push({ start: at.open, end: at.close, by: String(lines.near(Number(textOf(xml, at)))) });
    else if (["wsDr", "twoCellAnchor", "oneCellAnchor", "from", "to"].includes(at.name))
      elements(xml, at).forEach(visit);
  };
  elements(xml).forEach(visit);
  return replaced(xml, changes);
}

/** A sheet's comments on the cells they were made for; those of deleted cells go. */
export function movedComments(xml: string, sheet: MovedSheet): string {
  const changes: Change[] = [];
  const visit = (at: Xml) => {
    const tag = tagOf(xml, at);
    const ref = at.name === "comment" || at.name === "threadedComment" ? attribute(tag, "ref") : null;
    if (ref === null) return elements(xml, at).forEach(visit);
    const to = movedReference(ref, sheet);
    if (to === null) changes.push({ start: at.start, end: at.end, by: "" });
    else changes.push({ start: at.start, end: at.open, by: withAttribute(tag, "ref", to) });
  };
  elements(xml).forEach(visit);
  return replaced(xml, changes);
}

/** The boxes of a sheet's comments, each beside its cell. */
export function movedBoxes(xml: string, { rows, columns }: MovedSheet): string {
  return changedBoxes(xml, (shape, row, column) => {
    const [to, across] = [rows.to(row), columns.to(column)];
    if (to === null || across === null) return "";
    return shape
      .replace(/<x:Row>[^<]*/, `<x:Row>${to}`)
      .replace(/<x:Column>[^<]*/, `<x:Column>${across}`)
      .replace(/<x:Anchor>([^<]*)<\/x:Anchor>/, (whole, text: string) => {
        const n = text.split(",").map(Number);
        if (n.length !== 8 || n.some(Number.isNaN)) return whole;
        const [down, right] = [to - row, across - column];
        return `<x:Anchor>${[n[0]! + right, n[1], Math.max(0, n[2]! + down), n[3], n[4]! + right, n[5], Math.max(0, n[6]! + down), n[7]].join(", ")}</x:Anchor>`;
      });
  });
}

/** The boxes of a sheet, those changed that belong to a cell. Such parts are not always whole XML. */
export function changedBoxes(xml: string, change: (shape: string, row: number, column: number) => string): string {
  return xml.replace(/<(v:shape)\b[\s\S]*?<\/\1>/g, (shape) => {
    const row = /<x:Row>\s*(\d+)\s*<\/x:Row>/.exec(shape);
    const column = /<x:Column>\s*(\d+)\s*<\/x:Column>/.exec(shape);
    return row && column ? change(shape, Number(row[1]), Number(column[1])) : shape;
  });
}

/** A table with its cells where they are now; null where its columns are others, or its heading is gone. */
export function movedTable(xml: string, sheet: MovedSheet, sheets: Sheets): string | null {
  const root = rootOf(xml);
  const ref = attribute(tagOf(xml, root), "ref") ?? "";
  const to = movedReference(ref, sheet);
  if (to === null) return null;
  const [before, after] = [cornersOf(ref), cornersOf(to)];
  if (sheet.rows.to(before.row) !== after.row || before.width !== after.width) return null;
  for (let i = 0; i < before.width; i++) if (sheet.columns.to(before.column + i) !== after.column + i) return null;
  const changes: Change[] = [];
  const visit = (at: Xml) => {
    const tag = tagOf(xml, at);
    const its = attribute(tag, "ref");
    const place = its === null ? null : movedReference(its, sheet);
    if (place !== null) changes.push({ start: at.start, end: at.open, by: withAttribute(tag, "ref", place) });
    if (at.name === "calculatedColumnFormula" || at.name === "totalsRowFormula")
      formulaChange(xml, at, sheets, sheet.was, changes);
    else elements(xml, at).forEach(visit);
  };
  visit(root);
  return replaced(xml, changes);
}

/** The first row and column of an area such as "B2:D9", and how many columns it has. */
function cornersOf(area: string): { readonly row: number; readonly column: number; readonly width: number } {
  const [, first = "A", row = "1", last = first] = /^\$?([A-Z]+)\$?(\d+)(?::\$?([A-Z]+))?/i.exec(area) ?? [];
  return { row: Number(row) - 1, column: columnOf(first), width: columnOf(last) - columnOf(first) + 1 };
}
