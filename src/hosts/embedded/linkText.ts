import type { IDocumentData, IStyleData } from "@univerjs/core";
import { CustomRangeType, generateRandomId } from "@univerjs/core";

/** A cell's text as the sheet has one that leads somewhere, in the cell's own letters. */
export function linkText(text: string, to: string, { ff, fs, bl, it, st, cl }: IStyleData): IDocumentData {
  const letters = {
    ...(ff && { ff }),
    ...(fs && { fs }),
    ...(bl !== undefined && { bl }),
    ...(it !== undefined && { it }),
    ...(st && { st }),
    ...(cl && { cl }),
  };
  return {
    id: "d",
    body: {
      dataStream: `${text}\r\n`,
      textRuns: [{ ts: letters, st: 0, ed: text.length }],
      paragraphs: [{ startIndex: text.length, paragraphId: "p" } as never],
      sectionBreaks: [{ startIndex: text.length + 1 } as never],
      customRanges: [
        {
          startIndex: 0,
          endIndex: text.length - 1,
          rangeId: generateRandomId(),
          rangeType: CustomRangeType.HYPERLINK,
          properties: { url: to },
        },
      ],
    },
    documentStyle: { pageSize: { width: Infinity, height: Infinity } },
  };
}
