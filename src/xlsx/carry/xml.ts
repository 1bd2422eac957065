/** One element of an XML text, by its places in it. Prefixes of names do not count: files differ in them. */
export interface Xml {
  /** Without its prefix. */
  readonly name: string;
  /** Where its opening tag begins, and where what is in it begins. */
  readonly start: number;
  readonly open: number;
  /** Where what is in it ends, and the element itself. */
  readonly close: number;
  readonly end: number;
}

// Comments, CDATA, declarations, then tags: the slash that closes, the name, the attributes with a slash at the end where nothing is in it.
const TAG =
  /<(?:!--[\s\S]*?-->|!\[CDATA\[[\s\S]*?\]\]>|\?[\s\S]*?\?>|![^>]*>|(\/?)([\w.:-]+)([^>"']*(?:"[^"]*"[^>"']*|'[^']*'[^>"']*)*)>)/g;

/** The elements that stand directly in a stretch of XML text. */
export function elements(
  xml: string,
  { open, close }: Pick<Xml, "open" | "close"> = { open: 0, close: xml.length },
): Xml[] {
  const found: Xml[] = [];
  let depth = 0;
  let top = { name: "", start: 0, open: 0 };
  TAG.lastIndex = open;
  for (let tag = TAG.exec(xml); tag && tag.index < close; tag = TAG.exec(xml)) {
    const [all, closes, name, attributes] = tag;
    if (name === undefined) continue;
    const end = tag.index + all.length;
    if (closes) {
      if (--depth === 0) found.push({ ...top, close: tag.index, end });
      continue;
    }
    const empty = attributes!.endsWith("/");
    if (depth === 0) {
      top = { name: name.slice(name.indexOf(":") + 1), start: tag.index, open: end };
      if (empty) found.push({ ...top, close: end, end });
    }
    if (!empty) depth++;
  }
  return found;
}

/** The outermost element of a document. */
export function rootOf(xml: string): Xml {
  const [root] = elements(xml);
  if (!root) throw new Error("There is no element in a part of the file.");
  return root;
}

/** The prefix that an element's own name has, with its colon. */
export function prefixOf(xml: string, { start }: Xml): string {
  return /^<([\w.-]+:)?/.exec(xml.slice(start, start + 60))?.[1] ?? "";
}

/** An element's opening tag. */
export function tagOf(xml: string, { start, open }: Xml): string {
  return xml.slice(start, open);
}

/** What an attribute of a tag says, or null. A name without a prefix stands for any: "id" finds r:id too. */
export function attribute(tag: string, name: string): string | null {
  const found = new RegExp(`\\s(?:[\\w.-]+:)?${name}\\s*=\\s*(?:"([^"]*)"|'([^']*)')`).exec(tag);
  return found ? unescaped(found[1] ?? found[2] ?? "") : null;
}

/** A tag with an attribute set, or taken out where the value is null. */
export function withAttribute(tag: string, name: string, value: string | number | null): string {
  const pattern = new RegExp(`\\s${name}\\s*=\\s*(?:"[^"]*"|'[^']*')`);
  const set = value === null ? "" : ` ${name}="${escaped(String(value))}"`;
  if (pattern.test(tag)) return tag.replace(pattern, () => set);
  return tag.replace(/\s*\/?>$/, (end) => set + end);
}

/** The text of an element that holds nothing else. */
export function textOf(xml: string, { open, close }: Xml): string {
  return unescaped(xml.slice(open, close).replace(/<!\[CDATA\[([\s\S]*?)\]\]>/g, (_, text: string) => escaped(text)));
}

/** An XML text with other stretches in the place of some. */
export function replaced(
  xml: string,
  changes: readonly { readonly start: number; readonly end: number; readonly by: string }[],
): string {
  let at = 0;
  const parts: string[] = [];
  for (const { start, end, by } of [...changes].sort((a, b) => a.start - b.start || a.end - b.end)) {
    parts.push(xml.slice(at, start), by);
    at = end;
  }
  return parts.join("") + xml.slice(at);
}

/** A text as XML holds it. */
export function escaped(text: string): string {
  return text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;").replaceAll('"', "&quot;");
}

const NAMED: Readonly<Record<string, string>> = { amp: "&", lt: "<", gt: ">", quot: '"', apos: "'" };

function unescaped(text: string): string {
  return text.replace(/&(?:#(\d+)|#x([\da-f]+)|(\w+));/gi, (whole, decimal?: string, hex?: string, name?: string) =>
    name === undefined
      ? String.fromCodePoint(decimal === undefined ? Number.parseInt(hex!, 16) : Number(decimal))
      : (NAMED[name] ?? whole),
  );
}
