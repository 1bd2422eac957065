import { FORMATS, kindOf, widthOf } from "../src/pane/tables.ts";
import type { BookCell, BookSheet } from "../src/xlsx/book.ts";
import { cell, heading, numbers } from "./cells.ts";

// Rows that are made ready below the headings: a longer roof has more pieces.
const READY = 100;

/**
 * A sheet that holds one spilling call: its headings are the call's first row, and its columns are formatted by them.
 *
 * `onTape` names columns that stand once more at the end, as a tape reads them.
 */
export function tableSheet(name: string, formula: string, headings: readonly string[], onTape: readonly string[] = []): BookSheet {
  const tapes = onTape.map((one) => headings.indexOf(one));
  const top: BookCell[] = [heading(formula), ...headings.slice(1).map((one) => (kindOf(one) === "text" ? heading("") : numbers(""))), ...onTape.map((one) => heading(`${one} on tape`))];
  const line = (row: number): (BookCell | null)[] => [
    ...headings.map((one): BookCell | null => {
      const format = FORMATS[kindOf(one)];
      return format === null ? null : cell("", { format });
    }),
    ...tapes.map((column) => cell(`=IF(${letter(column)}${row}="","",RAFTER.TAPE(${letter(column)}${row}))`)),
  ];
  return {
    name,
    rows: [top, ...Array.from({ length: READY }, (_, i) => line(i + 2))],
    columns: [...headings.map((one) => ({ size: widthOf(one) })), ...onTape.map(() => ({ size: 150 }))],
    frozenRows: 1,
    print: { landscape: true, fit: { across: 1, down: 0 }, titleRows: "$1:$1", footer: "&L&A&RPage &P of &N" },
  };
}

function letter(column: number): string {
  return column < 26 ? String.fromCharCode(65 + column) : letter(Math.floor(column / 26) - 1) + letter(column % 26);
}
