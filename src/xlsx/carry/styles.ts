import type { Edge, Look } from "../book.ts";
import { attribute, elements, escaped, prefixOf, replaced, rootOf, tagOf, withAttribute, type Xml } from "./xml.ts";

// The order of a stylesheet's parts and of a font's (ECMA-376, 18.8.39 and 18.8.22, as Excel writes them).
const PARTS = ["numFmts", "fonts", "fills", "borders", "cellStyleXfs", "cellXfs"] as const;
const LETTERS = "b i strike condense extend outline shadow u vertAlign sz color name family charset scheme".split(" ");
const EDGES = "start end left right top bottom diagonal vertical horizontal".split(" ");
// Numbers below are taken by formats that every program knows.
const FIRST_FORMAT = 164;

const EMPTY =
  '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n<styleSheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main">' +
  '<fonts count="1"><font><sz val="11"/><name val="Calibri"/></font></fonts>' +
  '<fills count="2"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill></fills>' +
  "<borders><border><left/><right/><top/><bottom/><diagonal/></border></borders>" +
  '<cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs>' +
  '<cellXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/></cellXfs></styleSheet>';

type Part = (typeof PARTS)[number];

/** The styles of a file, to which those of changed cells are added at the end: none that is there changes its number. */
export class Styles {
  readonly #xml: string;
  readonly #prefix: string;
  readonly #there = new Map<Part, { readonly at: Xml; readonly items: readonly string[] }>();
  readonly #added = new Map<Part, string[]>(PARTS.map((part) => [part, []]));
  readonly #known = new Map<string, number>();

  constructor(xml: string | null) {
    this.#xml = xml ?? EMPTY;
    const root = rootOf(this.#xml);
    this.#prefix = prefixOf(this.#xml, root);
    for (const at of elements(this.#xml, root)) {
      const part = PARTS.find((name) => name === at.name);
      const items = part ? elements(this.#xml, at).map(({ start, end }) => this.#xml.slice(start, end)) : [];
      if (part) this.#there.set(part, { at, items });
    }
  }

  /** The number of the style that a cell has once its look has changed: what the look does not say stays as it was. */
  changed(from: number, was: Look | null, now: Look | null): number {
    const key = JSON.stringify([from, was, now]);
    const known = this.#known.get(key);
    if (known !== undefined) return known;
    const made = this.#make(from, was ?? {}, now ?? {});
    this.#known.set(key, made);
    return made;
  }

  /** The stylesheet as it is now; null where nothing was added. */
  xml(): string | null {
    const changes = PARTS.flatMap((part) => {
      const added = this.#added.get(part)!;
      if (added.length === 0) return [];
      const there = this.#there.get(part);
      const name = this.#prefix + part;
      const all = [...(there?.items ?? []), ...added];
      const by = `<${name} count="${all.length}">${all.join("")}</${name}>`;
      const start = there?.at.start ?? this.#placeOf(part);
      return [{ start, end: there?.at.end ?? start, by }];
    });
    return changes.length > 0 ? replaced(this.#xml, changes) : null;
  }

  #placeOf(part: Part): number {
    const before = PARTS.slice(0, PARTS.indexOf(part)).findLast((name) => this.#there.has(name));
    return before ? this.#there.get(before)!.at.end : rootOf(this.#xml).open;
  }

  #make(from: number, was: Look, now: Look): number {
    const old =
      this.#item("cellXfs", from) ?? `<${this.#prefix}xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/>`;
    const [at] = elements(old);
    let tag = tagOf(old, at!);
    const numberOf = (name: string) => Number(attribute(tag, name) ?? 0);
    const use = (name: string, apply: string, number: number) => {
      tag = withAttribute(withAttribute(tag, name, number), apply, 1);
    };
    const differ = (...of: (keyof Look)[]) => of.some((one) => JSON.stringify(was[one]) !== JSON.stringify(now[one]));
    if (differ("font", "size", "bold", "italic", "underline", "strike", "color"))
      use("fontId", "applyFont", this.#add("fonts", this.#font(numberOf("fontId"), was, now)));
    if (differ("fill")) use("fillId", "applyFill", now.fill ? this.#add("fills", this.#fill(now.fill)) : 0);
    if (differ("borders"))
      use("borderId", "applyBorder", this.#add("borders", this.#border(numberOf("borderId"), was, now)));
    if (differ("format")) use("numFmtId", "applyNumberFormat", this.#format(now.format));
    let inside = old.slice(at!.open, at!.close);
    if (differ("across", "upright", "wrap")) {
      tag = withAttribute(tag, "applyAlignment", 1);
      inside = this.#aligned(inside, now);
    }
    const start = tag.replace(/\s*\/?>$/, "");
    return this.#add("cellXfs", inside === "" ? `${start}/>` : `${start}>${inside}</${this.#prefix}xf>`);
  }

  #item(part: Part, index: number): string | undefined {
    const there = this.#there.get(part)?.items ?? [];
    return there[index] ?? this.#added.get(part)![index - there.length];
  }

  #add(part: Part, item: string): number {
    const there = this.#there.get(part)?.items ?? [];
    const added = this.#added.get(part)!;
    const known = [...there, ...added].indexOf(item);
    return known >= 0 ? known : there.length + added.push(item) - 1;
  }

  #tag(name: string, attributes = "", inside = ""): string {
    const start = `<${this.#prefix}${name}${attributes}`;
    return inside === "" ? `${start}/>` : `${start}>${inside}</${this.#prefix}${name}>`;
  }

  /** What an item holds by name, changed, and in the order of the format. */
  #changed(item: string, order: readonly string[], changes: Readonly<Record<string, string | null>>): string {
    const [at] = elements(item);
    const inside = new Map(elements(item, at).map((one) => [one.name, item.slice(one.start, one.end)]));
    for (const [name, by] of Object.entries(changes)) {
      if (by === null) inside.delete(name);
      else inside.set(name, by);
    }
    const place = (name: string) => (order.includes(name) ? order.indexOf(name) : order.length);
    const parts = [...inside].sort(([a], [b]) => place(a) - place(b)).map(([, part]) => part);
    return `${tagOf(item, at!).replace(/\s*\/?>$/, ">")}${parts.join("")}</${this.#prefix}${at!.name}>`;
  }

  #font(from: number, was: Look, now: Look): string {
    const value = (name: string, text: string | number) => this.#tag(name, ` val="${escaped(String(text))}"`);
    const flag = (name: string, on: boolean | undefined) => (on ? this.#tag(name) : null);
    return this.#changed(
      this.#item("fonts", from) ?? this.#tag("font", "", value("sz", 11) + value("name", "Calibri")),
      LETTERS,
      {
        ...(was.bold !== now.bold && { b: flag("b", now.bold) }),
        ...(was.italic !== now.italic && { i: flag("i", now.italic) }),
        ...(was.strike !== now.strike && { strike: flag("strike", now.strike) }),
        ...(was.underline !== now.underline && { u: flag("u", now.underline) }),
        ...(was.size !== now.size && { sz: value("sz", now.size ?? 11) }),
        ...(was.color !== now.color && { color: now.color ? this.#color("color", now.color) : null }),
        ...(was.font !== now.font && { name: value("name", now.font ?? "Calibri"), scheme: null, family: null }),
      },
    );
  }

  #color(name: string, color: string): string {
    return this.#tag(name, ` rgb="FF${color.slice(1).toUpperCase()}"`);
  }

  #fill(color: string): string {
    const inks = this.#color("fgColor", color) + this.#tag("bgColor", ' indexed="64"');
    return this.#tag("fill", "", this.#tag("patternFill", ' patternType="solid"', inks));
  }

  #border(from: number, was: Look, now: Look): string {
    const changes: Record<string, string> = {};
    for (const edge of ["left", "right", "top", "bottom"] satisfies Edge[]) {
      const its = now.borders?.[edge];
      if (JSON.stringify(its) === JSON.stringify(was.borders?.[edge])) continue;
      changes[edge] = its ? this.#tag(edge, ` style="${its.line}"`, this.#color("color", its.color)) : this.#tag(edge);
    }
    const plain = ["left", "right", "top", "bottom", "diagonal"].map((edge) => this.#tag(edge)).join("");
    return this.#changed(this.#item("borders", from) ?? this.#tag("border", "", plain), EDGES, changes);
  }

  #format(code = "General"): number {
    if (code === "General") return 0;
    const all = [...(this.#there.get("numFmts")?.items ?? []), ...this.#added.get("numFmts")!];
    const same = all.find((item) => attribute(item, "formatCode") === code);
    if (same) return Number(attribute(same, "numFmtId"));
    const free = all.reduce((most, item) => Math.max(most, Number(attribute(item, "numFmtId")) + 1), FIRST_FORMAT);
    this.#add("numFmts", this.#tag("numFmt", ` numFmtId="${free}" formatCode="${escaped(code)}"`));
    return free;
  }

  /** What an xf holds, with other sides: its turn and indent stay. */
  #aligned(inside: string, { across, upright, wrap }: Look): string {
    const all = elements(inside);
    const old = all.find(({ name }) => name === "alignment");
    let tag = old ? tagOf(inside, old).replace(/\s*\/?>$/, "/>") : this.#tag("alignment");
    tag = withAttribute(tag, "horizontal", across ?? null);
    tag = withAttribute(tag, "vertical", upright ?? null);
    tag = withAttribute(tag, "wrapText", wrap ? 1 : null);
    return replaced(inside, [{ start: old?.start ?? 0, end: old?.end ?? 0, by: tag }]);
  }
}
