import type { BookCell, BookSheet, Line } from "../book.ts";
import { columnOf, lettersOf } from "../../registry/columnLetters.ts";
import { POINT_PIXELS } from "../fileUnits.ts";
import { cellXml, formulaOf, sameCell, sameFormula, type CellTools, type FileCell } from "./cell.ts";
import type { MovedSheet } from "./moved.ts";
import { attribute, elements, tagOf, withAttribute, type Xml } from "./xml.ts";

/** A row of a file's sheet, with its cells by column. */
interface FileRow {
  readonly at: Xml;
  readonly cells: ReadonlyMap<number, FileCell>;
}

/** What the rows of a sheet have become. */
export interface WrittenRows {
  /** null where they are as they were. */
  readonly xml: string | null;
  /** The cells that there are, as "A1:D20"; null where there is none. */
  readonly used: string | null;
  /** A formula came, went or changed. */
  readonly formulas: boolean;
}

/** The rows of a sheet: those in which nothing has changed as the file has them, and of the others the cells that have. */
export function rowsXml(
  xml: string,
  data: Xml | undefined,
  was: BookSheet | null,
  now: BookSheet,
  moved: Pick<MovedSheet, "rows" | "columns">,
  tools: CellTools,
): WrittenRows {
  const file = fileRows(xml, data);
  const { rows, columns } = moved;
  const still = rows.still && columns.still;
  const wasAt = (row: number | null, column: number | null) =>
    row === null || column === null ? null : (was?.rows[row]?.[column] ?? null);
  const nowAt = (row: number, column: number) => now.rows[row]?.[column] ?? null;
  // Most sheets have plain formulas only, and need no look at each.
  const special = /\st\s*=\s*["'](?:shared|array|dataTable)["']/.test(xml);
  const groups = special ? brokenGroups(file, moved, wasAt, nowAt) : new Set<string>();
  const whole = (cell: FileCell | undefined) => {
    const formula = special && cell && formulaOf(cell);
    if (!formula || formula.kind === "normal") return false;
    return formula.kind === "shared" ? groups.has(formula.group ?? "") : !still;
  };
  let last = now.rows.length - 1;
  for (const row of file.keys()) last = Math.max(last, rows.to(row) ?? -1);
  for (const row of now.heights?.keys() ?? []) last = Math.max(last, row);
  const written: string[] = [];
  let changed = !still && file.size > 0;
  let formulas = changed;
  const edges = { top: Infinity, left: Infinity, bottom: -1, right: -1 };
  for (let row = 0; row <= last; row++) {
    const from = rows.from(row);
    const its = from === null ? undefined : file.get(from);
    const lineWas = from === null ? undefined : was?.heights?.get(from);
    const lineNow = now.heights?.get(row);
    const places = new Set<number>(now.rows[row]?.keys());
    for (const column of its?.cells.keys() ?? []) places.add(columns.to(column) ?? -1);
    for (let column = 0; column < (from === null ? 0 : (was?.rows[from]?.length ?? 0)); column++)
      places.add(columns.to(column) ?? -1);
    places.delete(-1);
    const cells = [...places]
      .sort((a, b) => a - b)
      .map((column) => {
        const old = columns.from(column);
        return {
          column,
          file: old === null ? undefined : its?.cells.get(old),
          was: wasAt(from, old),
          now: nowAt(row, column),
        };
      });
    for (const { column, file: old, now: here } of cells)
      if (old ?? here) {
        edges.top = Math.min(edges.top, row);
        edges.left = Math.min(edges.left, column);
        edges.bottom = row;
        edges.right = Math.max(edges.right, column);
      }
    const sameLine = lineWas?.size === lineNow?.size && lineWas?.hidden === lineNow?.hidden;
    const same = cells.every((one) => sameCell(one.was, one.now) && !whole(one.file));
    if (same && sameLine && still) {
      if (its) written.push(xml.slice(its.at.start, its.at.end));
      continue;
    }
    changed ||= !same || !sameLine;
    formulas ||= cells.some((one) => !sameFormula(one.was, one.now) || whole(one.file));
    const inside = cells
      .map((one) => cellXml(one.file, one.was, one.now, [row, one.column], whole(one.file), tools))
      .join("");
    const tag = rowTag(its && tagOf(xml, its.at), row, sameLine ? undefined : (lineNow ?? {}), tools.prefix);
    if (inside !== "") written.push(`${tag}>${inside}</${tools.prefix}row>`);
    else if (/\s(?!r=)[\w:]+=/.test(tag)) written.push(`${tag}/>`);
  }
  const used =
    edges.bottom < 0
      ? null
      : `${lettersOf(edges.left)}${edges.top + 1}${edges.top === edges.bottom && edges.left === edges.right ? "" : `:${lettersOf(edges.right)}${edges.bottom + 1}`}`;
  return { xml: changed ? written.join("") : null, used, formulas: changed && formulas };
}

function fileRows(xml: string, data: Xml | undefined): Map<number, FileRow> {
  const rows = new Map<number, FileRow>();
  if (!data) return rows;
  let row = -1;
  for (const at of elements(xml, data)) {
    // Numbers may be left out; a row or a cell then follows the one before.
    row = Number(attribute(tagOf(xml, at), "r") ?? row + 2) - 1;
    let column = -1;
    const cells = new Map<number, FileCell>();
    for (const cell of elements(xml, at)) {
      if (cell.name !== "c") continue;
      const place = attribute(tagOf(xml, cell), "r");
      column = place === null ? column + 1 : columnOf(/^[A-Z]+/i.exec(place)![0]);
      cells.set(column, { xml, at: cell });
    }
    rows.set(row, { at, cells });
  }
  return rows;
}

/** Formulas that share one text, of which a cell has changed: all of them get their own. */
function brokenGroups(
  file: ReadonlyMap<number, FileRow>,
  { rows, columns }: Pick<MovedSheet, "rows" | "columns">,
  wasAt: (row: number, column: number) => BookCell | null,
  nowAt: (row: number, column: number) => BookCell | null,
): Set<string> {
  const broken = new Set<string>();
  for (const [row, { cells }] of file)
    for (const [column, cell] of cells) {
      const formula = formulaOf(cell);
      if (formula?.kind !== "shared" || formula.group === null) continue;
      const still = rows.still && columns.still;
      if (!still || !sameFormula(wasAt(row, column), nowAt(row, column))) broken.add(formula.group);
    }
  return broken;
}

/** A row's opening tag without its end. */
function rowTag(old: string | undefined, row: number, line: Line | undefined, prefix: string): string {
  let tag = withAttribute(withAttribute(old ?? `<${prefix}row>`, "r", row + 1), "spans", null);
  if (line) {
    tag = withAttribute(tag, "ht", line.size === undefined ? null : line.size / POINT_PIXELS);
    tag = withAttribute(tag, "customHeight", line.size === undefined ? null : 1);
    tag = withAttribute(tag, "hidden", line.hidden ? 1 : null);
  }
  return tag.replace(/\s*\/?>$/, "");
}
