import type { Filter, FilterColumn } from "../book.ts";
import { areasOf, placeOf } from "./inputRules.ts";
import type { MovedSheet } from "./moved.ts";
import { attribute, elements, escaped, rootOf, tagOf, withAttribute, type Xml } from "./xml.ts";

/** Attributes of a column that one here has too. */
const PLAIN = /^<(?:[\w.-]+:)?filterColumn\s+colId\s*=\s*(?:"\d+"|'\d+')\s*\/?>$/;

/** The filter of a sheet's XML; null where there is none, or one that cannot live here: by color, date, average or rank. */
export function filterIn(xml: string): Filter | null {
  const at = elements(xml, rootOf(xml)).find(({ name }) => name === "autoFilter");
  return at ? filterAt(xml, at) : null;
}

function filterAt(xml: string, at: Xml): Filter | null {
  const [area, more] = areasOf(attribute(tagOf(xml, at), "ref") ?? "");
  if (!area || more) return null;
  const columns = elements(xml, at)
    .filter(({ name }) => name === "filterColumn")
    .map((one) => columnAt(xml, one, area.column));
  return columns.every((one) => one !== null) ? { area, columns } : null;
}

function columnAt(xml: string, at: Xml, first: number): FilterColumn | null {
  const tag = tagOf(xml, at);
  const [by, more] = elements(xml, at);
  if (!by || more || !PLAIN.test(tag)) return null;
  const column = first + Number(attribute(tag, "colId"));
  const [its, all] = [tagOf(xml, by), elements(xml, by)];
  const on = (name: string) => ["1", "true"].includes(attribute(its, name) ?? "");
  const value = (one: Xml) => attribute(tagOf(xml, one), "val") ?? "";
  if (by.name === "filters" && all.every(({ name }) => name === "filter") && attribute(its, "calendarType") === null)
    return { column, values: all.map(value), ...(on("blank") && { blank: true }) };
  if (by.name !== "customFilters" || all.length < 1 || all.length > 2) return null;
  const conditions = all.map((one) => {
    const operator = attribute(tagOf(xml, one), "operator");
    return { ...(operator && operator !== "equal" && { operator }), value: value(one) };
  });
  return { column, conditions, ...(on("and") && { and: true }) };
}

/** Whether a sheet has another filter than the file's where that is now, gone along with its cells. */
export function isOtherFilter(
  was: Filter | undefined,
  now: Filter | undefined,
  { rows, columns }: Pick<MovedSheet, "rows" | "columns">,
): boolean {
  const down = was && rows.stretch(was.area.row, was.area.row + was.area.rows - 1);
  const across = was && columns.stretch(was.area.column, was.area.column + was.area.columns - 1);
  const there = down &&
    across && {
      area: { row: down[0], column: across[0], rows: down[1] - down[0] + 1, columns: across[1] - across[0] + 1 },
      columns: was.columns.flatMap((one) => {
        const column = columns.to(one.column);
        return column === null ? [] : [{ ...one, column }];
      }),
    };
  return JSON.stringify(there ?? null) !== JSON.stringify(now ?? null);
}

/** A sheet's filter as it is now; what else the file says of it stays. */
export function filterXml(xml: string, at: Xml | undefined, filter: Filter | undefined, prefix: string): string {
  if (!filter) return "";
  const { area, columns } = filter;
  const tag = withAttribute(at ? tagOf(xml, at) : `<${prefix}autoFilter/>`, "ref", placeOf(area));
  const others = (at ? elements(xml, at) : []).filter(({ name }) => name !== "filterColumn");
  const all = [
    ...columns.map((column) => columnXml(column, area.column, prefix)),
    ...others.map(({ start, end }) => xml.slice(start, end)),
  ];
  return all.length === 0
    ? tag.replace(/\s*\/?>$/, "/>")
    : `${tag.replace(/\s*\/?>$/, ">")}${all.join("")}</${prefix}autoFilter>`;
}

function columnXml({ column, values, blank, conditions, and }: FilterColumn, first: number, prefix: string): string {
  const inside = conditions
    ? `<${prefix}customFilters${and ? ' and="1"' : ""}>${conditions.map(({ operator, value }) => `<${prefix}customFilter${operator ? ` operator="${operator}"` : ""} val="${escaped(value)}"/>`).join("")}</${prefix}customFilters>`
    : `<${prefix}filters${blank ? ' blank="1"' : ""}>${(values ?? []).map((one) => `<${prefix}filter val="${escaped(one)}"/>`).join("")}</${prefix}filters>`;
  return `<${prefix}filterColumn colId="${column - first}">${inside}</${prefix}filterColumn>`;
}
