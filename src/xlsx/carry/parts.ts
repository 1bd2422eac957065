import { strToU8, unzipSync, zipSync, type Zippable } from "fflate";
import { attribute, elements, escaped, replaced, rootOf, tagOf, type Xml } from "./xml.ts";

const TYPES = "[Content_Types].xml";
const RELATIONS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
// Packed already: trying again takes time and gains nothing.
const PACKED = /\.(?:png|jpe?g|gif|bin|mp4|wmf|emf)$/i;

/** A relation of a part to another, or to something outside the file. */
export interface Relation {
  readonly id: string;
  /** The last word of its type: "worksheet", "drawing". */
  readonly kind: string;
  /** The part's path; null for something outside. */
  readonly to: string | null;
  /** As the file says it. */
  readonly target: string;
}

/** The parts of a workbook's file (ECMA-376, part 2), each as it is until it is set. */
export class Parts {
  readonly #parts: Map<string, Uint8Array>;
  #changed = false;

  constructor(bytes: Uint8Array) {
    this.#parts = new Map(Object.entries(unzipSync(bytes)).filter(([path]) => !path.endsWith("/")));
  }

  /** Whether any part has come, gone or changed. */
  get changed(): boolean {
    return this.#changed;
  }

  get paths(): readonly string[] {
    return [...this.#parts.keys()];
  }

  has(path: string): boolean {
    return this.#parts.has(path);
  }

  /** A part's text; one that is not there is an error, for its file is broken. */
  text(path: string): string {
    const bytes = this.#parts.get(path);
    if (!bytes) throw new Error(`The file has no part ${path}.`);
    const wide = bytes[0] === 0xff && bytes[1] === 0xfe ? "utf-16le" : bytes[0] === 0xfe && bytes[1] === 0xff;
    if (!wide) return new TextDecoder().decode(bytes);
    return new TextDecoder(wide === true ? "utf-16be" : wide)
      .decode(bytes)
      .replace(/^(<\?xml[^>]*encoding=["'])[^"']*/, "$1UTF-8");
  }

  bytesOf(path: string): Uint8Array {
    return this.#parts.get(path) ?? new Uint8Array();
  }

  set(path: string, text: string): void {
    this.#changed = true;
    this.#parts.set(path, strToU8(text));
  }

  /** Takes a part out, with its own relations and its line among the content types. */
  remove(path: string): void {
    this.#changed = true;
    this.#parts.delete(path);
    this.#parts.delete(relationsPath(path));
    const types = this.text(TYPES);
    const its = elements(types, rootOf(types)).filter(
      (one) => attribute(tagOf(types, one), "PartName")?.toLowerCase() === `/${path}`.toLowerCase(),
    );
    if (its.length > 0) this.set(TYPES, without(types, its));
  }

  /** Puts in a new part that another relates to, and gives the relation's id. */
  add(from: string, path: string, text: string, kind: string, contentType: string): string {
    this.set(path, text);
    this.setContentType(path, contentType);
    return this.relate(from, path, kind);
  }

  contentType(path: string): string | null {
    const types = this.text(TYPES);
    const all = elements(types, rootOf(types)).map((one) => tagOf(types, one));
    const own = all.find((tag) => attribute(tag, "PartName")?.toLowerCase() === `/${path}`.toLowerCase());
    const ending = path.slice(path.lastIndexOf(".") + 1).toLowerCase();
    const usual = all.find((tag) => attribute(tag, "Extension")?.toLowerCase() === ending);
    return attribute(own ?? usual ?? "", "ContentType");
  }

  setContentType(path: string, contentType: string): void {
    const types = this.text(TYPES);
    const root = rootOf(types);
    const line = `<Override PartName="${escaped(`/${path}`)}" ContentType="${escaped(contentType)}"/>`;
    const old = elements(types, root).find((one) => attribute(tagOf(types, one), "PartName") === `/${path}`);
    this.set(TYPES, replaced(types, [{ start: old?.start ?? root.close, end: old?.end ?? root.close, by: line }]));
  }

  /** Relations of a part; of the whole file where the path is "". */
  relations(from: string): readonly Relation[] {
    const path = relationsPath(from);
    if (!this.has(path)) return [];
    const xml = this.text(path);
    return elements(xml, rootOf(xml)).map((one) => {
      const tag = tagOf(xml, one);
      const outside = attribute(tag, "TargetMode") === "External";
      return {
        id: attribute(tag, "Id") ?? "",
        kind: (attribute(tag, "Type") ?? "").split("/").at(-1)!,
        to: outside ? null : this.#known(resolved(from, attribute(tag, "Target") ?? "")),
        target: attribute(tag, "Target") ?? "",
      };
    });
  }

  relate(from: string, to: string, kind: string): string {
    return this.#relate(from, kind, `Target="/${escaped(to)}"`);
  }

  /** Relates a part to an address outside the file. */
  relateOutside(from: string, address: string, kind: string): string {
    return this.#relate(from, kind, `Target="${escaped(address)}" TargetMode="External"`);
  }

  #relate(from: string, kind: string, target: string): string {
    const path = relationsPath(from);
    if (!this.has(path))
      this.set(
        path,
        '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n' +
          '<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"></Relationships>',
      );
    const taken = new Set(this.relations(from).map(({ id }) => id));
    let id = "rId1";
    for (let n = 2; taken.has(id); n++) id = `rId${n}`;
    const xml = this.text(path);
    const { close } = rootOf(xml);
    const line = `<Relationship Id="${id}" Type="${RELATIONS}/${kind}" ${target}/>`;
    this.set(path, replaced(xml, [{ start: close, end: close, by: line }]));
    return id;
  }

  unrelate(from: string, ids: ReadonlySet<string>): void {
    const path = relationsPath(from);
    if (!this.has(path)) return;
    const xml = this.text(path);
    const gone = elements(xml, rootOf(xml)).filter((one) => ids.has(attribute(tagOf(xml, one), "Id") ?? ""));
    if (gone.length > 0) this.set(path, without(xml, gone));
  }

  /** Every part that one comes to from the file itself. */
  reached(): Set<string> {
    const seen = new Set<string>([""]);
    for (const from of seen) for (const { to } of this.relations(from)) if (to !== null && this.has(to)) seen.add(to);
    return seen;
  }

  /** Takes out what was reached before and is not any more; what never was reached stays. */
  removeUnreached(before: ReadonlySet<string>): void {
    const now = this.reached();
    for (const path of before) if (!now.has(path)) this.remove(path);
  }

  bytes(): Uint8Array {
    // The same parts give the same bytes, on any day.
    const mtime = new Date(2000, 0, 1);
    const all: Zippable = {};
    for (const [path, bytes] of this.#parts) all[path] = [bytes, { level: PACKED.test(path) ? 0 : 6, mtime }];
    return zipSync(all);
  }

  /** Names of parts are the same in capitals or not. */
  #known(path: string): string {
    if (this.has(path)) return path;
    return this.paths.find((one) => one.toLowerCase() === path.toLowerCase()) ?? path;
  }
}

/** The relation by which an element stands for a part: its r:id, whatever its prefix; "" where there is none. */
export function relationId(tag: string): string {
  return /\s[\w.-]+:id\s*=\s*["']([^"']*)/.exec(tag)?.[1] ?? "";
}

function without(xml: string, gone: readonly Xml[]): string {
  return replaced(
    xml,
    gone.map(({ start, end }) => ({ start, end, by: "" })),
  );
}

function relationsPath(path: string): string {
  const cut = path.lastIndexOf("/") + 1;
  return `${path.slice(0, cut)}_rels/${path.slice(cut)}.rels`;
}

function resolved(from: string, target: string): string {
  if (target.startsWith("/")) return target.slice(1);
  const steps = from.split("/").slice(0, -1);
  for (const step of target.split("/")) {
    if (step === "..") steps.pop();
    else if (step !== ".") steps.push(step);
  }
  return steps.join("/");
}
