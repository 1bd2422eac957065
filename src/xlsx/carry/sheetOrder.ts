import { elements, rootOf } from "./xml.ts";

/** A worksheet's parts in the order of the format (ECMA-376, 18.3.1.99). */
const ORDER =
  "sheetPr dimension sheetViews sheetFormatPr cols sheetData sheetCalcPr sheetProtection protectedRanges scenarios autoFilter sortState dataConsolidate customSheetViews mergeCells phoneticPr conditionalFormatting dataValidations hyperlinks printOptions pageMargins pageSetup headerFooter rowBreaks colBreaks customProperties cellWatches ignoredErrors smartTags drawing legacyDrawing legacyDrawingHF drawingHF picture oleObjects controls webPublishItems tableParts extLst".split(
    " ",
  );

/** Where a part that a sheet does not have yet belongs in its XML. */
export function afterParts(xml: string, name: string): number {
  const root = rootOf(xml);
  const before = elements(xml, root).findLast(
    (one) => ORDER.indexOf(one.name) >= 0 && ORDER.indexOf(one.name) < ORDER.indexOf(name),
  );
  return before?.end ?? root.open;
}
