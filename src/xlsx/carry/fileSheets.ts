import { relationId, type Parts } from "./parts.ts";
import { attribute, elements, rootOf, tagOf } from "./xml.ts";

/** A file's sheet as its workbook names it. */
export interface FileSheet {
  readonly name: string;
  /** Its element in the workbook's list. */
  readonly tag: string;
  readonly path: string | null;
  /** Of the workbook's relation to it. */
  readonly id: string;
}

/** Where a file's workbook is. */
export function workbookPath(parts: Parts): string {
  const path = parts.relations("").find(({ kind }) => kind === "officeDocument")?.to;
  if (!path) throw new Error("The file has no workbook in it.");
  return path;
}

/** The sheets of a file, in order. */
export function fileSheets(parts: Parts, workbook = workbookPath(parts)): readonly FileSheet[] {
  const xml = parts.text(workbook);
  const relations = parts.relations(workbook);
  const list = elements(xml, rootOf(xml)).find(({ name }) => name === "sheets");
  return (list ? elements(xml, list) : []).map((one) => {
    const tag = tagOf(xml, one);
    const id = relationId(tag);
    return { name: attribute(tag, "name") ?? "", tag, id, path: relations.find((r) => r.id === id)?.to ?? null };
  });
}
