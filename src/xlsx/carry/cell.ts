import type { BookCell, Look } from "../book.ts";
import { lettersOf } from "../../registry/columnLetters.ts";
import { storedFormula } from "../storedFormula.ts";
import type { Styles } from "./styles.ts";
import { attribute, elements, escaped, tagOf, withAttribute, type Xml } from "./xml.ts";

/** What cells are written with. */
export interface CellTools {
  /** The prefix of the sheet's elements, with its colon. */
  readonly prefix: string;
  readonly styles: Styles;
  /** What marks a formula that spills, where the file can say so. */
  dynamic(): string | null;
  /** Whether the file's shared text of a number has formats of single words. */
  rich(text: number): boolean;
  /** Takes what could not be kept, in words. */
  readonly lost: Set<string>;
}

/** A cell as the file has it. */
export interface FileCell {
  readonly xml: string;
  readonly at: Xml;
}

// What a file may say of an error (ECMA-376, 18.18.11); newer ones are a wrong value to older programs.
const ERRORS = new Set(["#NULL!", "#DIV/0!", "#VALUE!", "#REF!", "#NAME?", "#NUM!", "#N/A"]);
const NEWER = new Set(["#SPILL!", "#CALC!", "#CONNECT!", "#FIELD!", "#BLOCKED!", "#UNKNOWN!"]);

/** Whether two cells are the same to their reader: formula, value and look. */
export function sameCell(was: BookCell | null, now: BookCell | null): boolean {
  return sameContent(was, now) && sameLook(was?.look, now?.look);
}

function sameContent(was: BookCell | null, now: BookCell | null): boolean {
  return (was?.value ?? null) === (now?.value ?? null) && sameFormula(was, now) && was?.spilled === now?.spilled;
}

/** Whether two cells have the same formula, over the same area. */
export function sameFormula(was: BookCell | null, now: BookCell | null): boolean {
  return (
    was?.formula === now?.formula &&
    was?.spill?.rows === now?.spill?.rows &&
    was?.spill?.columns === now?.spill?.columns
  );
}

function sameLook(was: Look | undefined, now: Look | undefined): boolean {
  return was === now || JSON.stringify(was) === JSON.stringify(now);
}

/** The formula of a file's cell: its element, and what kind it is. */
export function formulaOf({
  xml,
  at,
}: FileCell): { readonly xml: string; readonly kind: string; readonly group: string | null } | null {
  const its = elements(xml, at).find(({ name }) => name === "f");
  if (!its) return null;
  const tag = tagOf(xml, its);
  return { xml: xml.slice(its.start, its.end), kind: attribute(tag, "t") ?? "normal", group: attribute(tag, "si") };
}

/** A cell's element in its place now, or "" where there is nothing left of it. `whole`: its formula must be written anew in any case. */
export function cellXml(
  file: FileCell | undefined,
  was: BookCell | null,
  now: BookCell | null,
  [row, column]: readonly [number, number],
  whole: boolean,
  tools: CellTools,
): string {
  const place = lettersOf(column) + String(row + 1);
  if (sameCell(was, now) && !(whole && now)) return file ? placed(file, place) : "";
  if (!now && was?.look) return "";
  const style = sameLook(was?.look, now?.look)
    ? file && attribute(tagOf(file.xml, file.at), "s")
    : String(
        tools.styles.changed(
          Number((file && attribute(tagOf(file.xml, file.at), "s")) ?? 0),
          was?.look ?? null,
          now?.look ?? null,
        ),
      );
  if (!sameContent(was, now) && file && isRich(file, tools))
    tools.lost.add("formats of single words in cells that were changed");
  if (sameContent(was, now) && file && !whole)
    return placed(file, place).replace(/^<[^>]*>/, (tag) => withAttribute(tag, "s", style ?? null));
  const start = `<${tools.prefix}c r="${place}"${style ? ` s="${style}"` : ""}`;
  const { attributes, inside } = contentXml(file, was, now, [row, column], whole, tools);
  return inside === "" ? (style ? `${start}/>` : "") : `${start}${attributes}>${inside}</${tools.prefix}c>`;
}

/** A file's cell as it is, in its place now. */
function placed({ xml, at }: FileCell, place: string): string {
  const tag = tagOf(xml, at);
  return attribute(tag, "r") === place
    ? xml.slice(at.start, at.end)
    : withAttribute(tag, "r", place) + xml.slice(at.open, at.end);
}

function contentXml(
  file: FileCell | undefined,
  was: BookCell | null,
  now: BookCell | null,
  [row, column]: readonly [number, number],
  whole: boolean,
  { prefix, dynamic }: CellTools,
): { readonly attributes: string; readonly inside: string } {
  if (!now || (now.value === null && now.formula === undefined)) return { attributes: "", inside: "" };
  const { value, formula, spill } = now;
  const old = file && !whole && sameFormula(was, now) ? formulaOf(file) : null;
  const result = resultOf(value);
  const shown = value === null ? "" : `<${prefix}v>${result.text}</${prefix}v>`;
  if (formula === undefined) {
    if (typeof value !== "string" || (now.spilled && result.type === "e"))
      return { attributes: typeOf(result.type), inside: shown };
    return {
      attributes: ' t="inlineStr"',
      inside: `<${prefix}is><${prefix}t xml:space="preserve">${text(value)}</${prefix}t></${prefix}is>`,
    };
  }
  if (old) {
    const mark = attribute(tagOf(file!.xml, file!.at), "cm");
    return { attributes: (mark ? ` cm="${mark}"` : "") + typeOf(result.type), inside: old.xml + shown };
  }
  const stored = text(storedFormula(formula));
  if (!spill || spill.rows * spill.columns <= 1)
    return { attributes: typeOf(result.type), inside: `<${prefix}f>${stored}</${prefix}f>${shown}` };
  const area = `${lettersOf(column)}${row + 1}:${lettersOf(column + spill.columns - 1)}${row + spill.rows}`;
  const mark = dynamic();
  return {
    attributes: (mark ? ` cm="${mark}"` : "") + typeOf(result.type),
    inside: `<${prefix}f t="array" ref="${area}">${stored}</${prefix}f>${shown}`,
  };
}

function resultOf(value: BookCell["value"]): { readonly type: string; readonly text: string } {
  if (typeof value === "number") return { type: "n", text: String(value) };
  if (typeof value === "boolean") return { type: "b", text: value ? "1" : "0" };
  if (value !== null && ERRORS.has(value)) return { type: "e", text: value };
  if (value !== null && NEWER.has(value)) return { type: "e", text: "#VALUE!" };
  return { type: "str", text: text(value ?? "") };
}

const typeOf = (type: string) => (type === "n" ? "" : ` t="${type}"`);

/** A text as a cell holds it: what XML has no place for is written as its number (ECMA-376, 22.9.2.19). */
function text(value: string): string {
  return escaped(
    value
      .replace(/_(?=x[\da-f]{4}_)/gi, "_x005F_")
      .replace(
        /[\u0000-\u0008\u000b-\u001f\ufffe\uffff]/g,
        (sign) => `_x${sign.charCodeAt(0).toString(16).toUpperCase().padStart(4, "0")}_`,
      ),
  );
}

function isRich({ xml, at }: FileCell, { rich }: CellTools): boolean {
  const type = attribute(tagOf(xml, at), "t");
  const inside = elements(xml, at);
  if (type === "s") return rich(Number(/\d+/.exec(xml.slice(at.open, at.close).replace(/<[^>]*>/g, ""))?.[0] ?? -1));
  const own = inside.find(({ name }) => name === "is");
  return own !== undefined && elements(xml, own).some(({ name }) => name === "r");
}
