import type { InputRule, Rectangle } from "../book.ts";
import { INPUT_KINDS } from "../book.ts";
import { columnOf, lettersOf } from "../../registry/columnLetters.ts";
import { storedFormula, typedFormula } from "../storedFormula.ts";
import { MOST } from "./moved.ts";
import { attribute, elements, escaped, rootOf, tagOf, textOf, withAttribute, type Xml } from "./xml.ts";

/** The rules of a sheet's XML that live here. */
export function inputRulesIn(xml: string): InputRule[] {
  const list = elements(xml, rootOf(xml)).find(({ name }) => name === "dataValidations");
  return list ? elements(xml, list).flatMap((one) => ruleOf(xml, one) ?? []) : [];
}

function ruleOf(xml: string, at: Xml): InputRule | null {
  const tag = tagOf(xml, at);
  const kind = INPUT_KINDS.find((name) => name === attribute(tag, "type"));
  const areas = areasOf(attribute(tag, "sqref") ?? "");
  if (!kind || areas.length === 0) return null;
  const said = (name: string) => attribute(tag, name) ?? undefined;
  const on = (name: string) => ["1", "true"].includes(attribute(tag, name) ?? "");
  const formula = (name: string) => {
    const its = elements(xml, at).find((one) => one.name === name);
    return its && formulaIn(textOf(xml, its));
  };
  const [first, second] = [formula("formula1"), formula("formula2")];
  const style = said("errorStyle") ?? "stop";
  return {
    areas,
    kind,
    ...(kind !== "list" && kind !== "custom" && { operator: said("operator") ?? "between" }),
    ...(first !== undefined && { first }),
    ...(second !== undefined && { second }),
    ...(on("allowBlank") && { blank: true }),
    // The format says it the other way round.
    ...(kind === "list" && on("showDropDown") && { noArrow: true }),
    ...(on("showErrorMessage") && { error: { style: style as "stop", ...words(said("errorTitle"), said("error")) } }),
    ...(on("showInputMessage") &&
      (said("prompt") ?? said("promptTitle")) !== undefined && { hint: words(said("promptTitle"), said("prompt")) }),
  };
}

const words = (title: string | undefined, text: string | undefined) => ({
  ...(title && { title }),
  ...(text && { text }),
});

/** A number or a list in quotes as it is, all else with "=". */
function formulaIn(text: string): string {
  const list = /^"((?:[^"]|"")*)"$/.exec(text);
  if (list) return list[1]!.replaceAll('""', '"');
  return Number.isNaN(Number(text)) ? typedFormula(text) : text;
}

/** A rule's formula as a file holds it. */
export function storedIn(kind: InputRule["kind"], text: string): string {
  if (text.startsWith("=")) return storedFormula(text);
  return kind === "list" ? `"${text.replaceAll('"', '""')}"` : text;
}

/** A sheet's list of rules with those that live here as they are now; the others stay, before them. */
export function inputRulesXml(xml: string, list: Xml | undefined, rules: readonly InputRule[], prefix: string): string {
  const others = (list ? elements(xml, list) : []).filter((one) => ruleOf(xml, one) === null);
  const all = [...others.map(({ start, end }) => xml.slice(start, end)), ...rules.map((rule) => ruleXml(rule, prefix))];
  if (all.length === 0) return "";
  const tag = list ? tagOf(xml, list).replace(/\s*\/?>$/, ">") : `<${prefix}dataValidations>`;
  return `${withAttribute(tag, "count", all.length)}${all.join("")}</${prefix}dataValidations>`;
}

function ruleXml(
  { areas, kind, operator, first, second, blank, noArrow, error, hint }: InputRule,
  prefix: string,
): string {
  const says = [
    ["type", kind],
    ["errorStyle", error && error.style !== "stop" ? error.style : undefined],
    ["operator", operator === "between" ? undefined : operator],
    ["allowBlank", blank && "1"],
    ["showDropDown", noArrow && "1"],
    ["showInputMessage", hint && "1"],
    ["showErrorMessage", error && "1"],
    ["errorTitle", error?.title],
    ["error", error?.text],
    ["promptTitle", hint?.title],
    ["prompt", hint?.text],
    ["sqref", areas.map(placeOf).join(" ")],
  ] as const;
  const attributes = says.map(([name, text]) => (text ? ` ${name}="${escaped(text)}"` : "")).join("");
  const formula = (name: string, text: string | undefined) =>
    text === undefined ? "" : `<${prefix}${name}>${escaped(storedIn(kind, text))}</${prefix}${name}>`;
  return `<${prefix}dataValidation${attributes}>${formula("formula1", first)}${formula("formula2", second)}</${prefix}dataValidation>`;
}

/** The areas that a file names with blanks between. */
export function areasOf(places: string): Rectangle[] {
  return places
    .trim()
    .split(/\s+/)
    .flatMap((place) => {
      const [, first, from, last = first, until = from] =
        /^\$?([A-Z]+)\$?(\d*)(?::\$?([A-Z]+)\$?(\d*))?$/i.exec(place) ?? [];
      if (first === undefined) return [];
      // Without numbers it is whole columns.
      const [row, end] = from ? [Number(from) - 1, Number(until)] : [0, MOST.rows];
      const column = columnOf(first);
      return [{ row, column, rows: end - row, columns: columnOf(last!) - column + 1 }];
    });
}

/** An area as a file names it: A1:B2. */
export function placeOf({ row, column, rows, columns }: Rectangle): string {
  const first = lettersOf(column) + String(row + 1);
  const last = lettersOf(column + columns - 1) + String(Math.min(row + rows, MOST.rows));
  return first === last ? first : `${first}:${last}`;
}
