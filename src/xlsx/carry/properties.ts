import { keptTexts, propertiesOf } from "../keptTexts.ts";
import type { Parts } from "./parts.ts";
import { attribute, elements, escaped, replaced, rootOf, tagOf, textOf } from "./xml.ts";

const PATH = "docProps/custom.xml";
const TYPE = "application/vnd.openxmlformats-officedocument.custom-properties+xml";
const EMPTY =
  '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n' +
  '<Properties xmlns="http://schemas.openxmlformats.org/officeDocument/2006/custom-properties" xmlns:vt="http://schemas.openxmlformats.org/officeDocument/2006/docPropsVTypes"></Properties>';
// The one set of custom properties that programs read (ECMA-376, 22.3.2.1).
const SET = "{D5CDD505-2E9C-101B-9397-08002B2CF9AE}";

/** Puts the texts that the pane keeps among a file's properties; those of others stay. */
export function propertiesInto(
  parts: Parts,
  kept: Readonly<Record<string, string>>,
  was: Readonly<Record<string, string>>,
): void {
  if (JSON.stringify(kept) === JSON.stringify(was)) return;
  const path = parts.relations("").find(({ kind }) => kind === "custom-properties")?.to ?? null;
  if (path === null) parts.add("", PATH, EMPTY, "custom-properties", TYPE);
  const xml = parts.text(path ?? PATH);
  const root = rootOf(xml);
  const all = elements(xml, root).map((at) => ({ at, tag: tagOf(xml, at) }));
  const ours = all.filter(
    ({ at, tag }) => Object.keys(keptTexts({ [attribute(tag, "name") ?? ""]: textOf(xml, at) || "x" })).length > 0,
  );
  let number = all.reduce((most, { tag }) => Math.max(most, Number(attribute(tag, "pid"))), 1);
  const added = Object.entries(propertiesOf(kept)).map(
    ([name, text]) =>
      `<property xmlns="http://schemas.openxmlformats.org/officeDocument/2006/custom-properties" xmlns:vt="http://schemas.openxmlformats.org/officeDocument/2006/docPropsVTypes" fmtid="${SET}" pid="${++number}" name="${escaped(name)}"><vt:lpwstr>${escaped(text)}</vt:lpwstr></property>`,
  );
  parts.set(
    path ?? PATH,
    replaced(xml, [
      ...ours.map(({ at }) => ({ start: at.start, end: at.end, by: "" })),
      { start: root.close, end: root.close, by: added.join("") },
    ]),
  );
}
