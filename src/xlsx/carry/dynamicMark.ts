import type { Parts } from "./parts.ts";
import { attribute, elements, rootOf, tagOf } from "./xml.ts";

const TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheetMetadata+xml";
const METADATA =
  '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n' +
  '<metadata xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" xmlns:xda="http://schemas.microsoft.com/office/spreadsheetml/2017/dynamicarray">' +
  '<metadataTypes count="1"><metadataType name="XLDAPR" minSupportedVersion="120000" copy="1" pasteAll="1" pasteValues="1" merge="1" splitFirst="1" rowColShift="1" clearFormats="1" clearComments="1" assign="1" coerce="1" cellMeta="1"/></metadataTypes>' +
  '<futureMetadata name="XLDAPR" count="1"><bk><extLst><ext uri="{bdbb8cdc-fa1e-496e-a857-3c3f30c029c3}"><xda:dynamicArrayProperties fDynamic="1" fCollapsed="0"/></ext></extLst></bk></futureMetadata>' +
  '<cellMetadata count="1"><bk><rc t="1" v="0"/></bk></cellMetadata></metadata>';

/**
 * Gives what marks a cell's formula as one that spills ([MS-XLSX] 2.2.4.6), and puts it into the file at the first call.
 *
 * Null in a file that has other marks but not this one: its formulas keep the size they have.
 */
export function dynamicMark(parts: Parts, workbook: string): () => string | null {
  let known: string | null | undefined;
  return () => (known ??= markIn(parts, workbook));
}

function markIn(parts: Parts, workbook: string): string | null {
  const path = parts.relations(workbook).find(({ kind }) => kind === "sheetMetadata")?.to;
  if (!path) {
    parts.add(workbook, "xl/metadata.xml", METADATA, "sheetMetadata", TYPE);
    return "1";
  }
  const xml = parts.text(path);
  const all = elements(xml, rootOf(xml));
  const of = (name: string) => all.filter((one) => one.name === name).flatMap((one) => elements(xml, one));
  const type = of("metadataTypes").findIndex((one) => attribute(tagOf(xml, one), "name") === "XLDAPR") + 1;
  if (type === 0) return null;
  const mark = of("cellMetadata").findIndex((block) =>
    elements(xml, block).some((one) => attribute(tagOf(xml, one), "t") === String(type)),
  );
  return mark < 0 ? null : String(mark + 1);
}
