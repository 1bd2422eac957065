import { columnAt, type Column } from "../src/registry/columns.ts";
import type { BookCell, BookSheet } from "../src/xlsx/book.ts";
import { lettersOf } from "../src/registry/columnLetters.ts";
import { cell, heading, note, numbers, title } from "./cells.ts";

/** The row of a table's headings, and the first and last of the rows made ready below: a longer roof has more pieces. */
export const HEAD = 4;
export const FIRST = HEAD + 1;
export const LAST = HEAD + 100;

/** Widths of columns that are narrower here than the pane makes them, so that a printed page is read without a glass. */
export const SLIM = {
  Piece: 56,
  Side: 56,
  Member: 96,
  Size: 64,
  Offset: 72,
  "Plate mark": 80,
  "Hip mark": 76,
  "Long point": 84,
  "Short point": 84,
  Tape: 76,
  Tail: 64,
  Heel: 64,
  Seat: 64,
  Notch: 64,
  "From hip head": 112,
  "Saw tilt": 96,
} as const;

interface Looks {
  /** Columns that stand once more at the end, as a tape reads them. */
  readonly onTape?: readonly string[];
  /** How lengths are shown. */
  readonly lengths?: string;
  /** Rows made ready below the headings: a roof with wings has more marks. */
  readonly rows?: number;
  /** Columns of another width than usual, so that the page is read without a glass. */
  readonly widths?: Readonly<Record<string, number>>;
}

/** A sheet that holds one spilling call below a title and a line that says what it follows: its headings are the call's first row, and its columns are formatted by them. */
export function tableSheet(
  name: string,
  about: readonly [job: string, says: string],
  formula: string,
  columns: readonly Column[],
  { onTape = [], lengths, rows = LAST - HEAD, widths = {} }: Looks = {},
): BookSheet {
  const formats = columns.map(({ kind, format }) => (kind === "length" && lengths ? lengths : format));
  // Numbers end at the right and words begin at the left: where the one meets the other, both need room.
  const spaced = formats.map(
    (format, i) => format !== null && (i + 1 === columns.length ? onTape.length > 0 : formats[i + 1] === null),
  );
  const shown = formats.map((format, i) => (format !== null && spaced[i] ? `${format}_m` : format));
  const top: BookCell[] = [
    heading(formula),
    ...columns
      .slice(1)
      .map((_, i) =>
        formats[i + 1] === null
          ? heading("")
          : numbers("", spaced[i + 1] ? "General_m;General_m;General_m;@_m" : undefined),
      ),
    ...onTape.map((one) => heading(`${one} on tape`)),
  ];
  const line = (row: number): (BookCell | null)[] => [
    ...shown.map((format): BookCell | null => (format === null ? null : cell("", { format }))),
    ...onTape
      .map((one) => `${lettersOf(columnAt(columns, one))}${row}`)
      .map((at) => cell(`=IF(${at}="","",RAFTER.TAPE(${at}))`)),
  ];
  return {
    name,
    rows: [
      [title(`${about[0]}: ${name.toLowerCase()}`)],
      [note(about[1])],
      [],
      top,
      ...Array.from({ length: rows }, (_, i) => line(FIRST + i)),
    ],
    columns: [
      ...columns.map(({ heading, width }) => ({ size: widths[String(heading)] ?? width })),
      ...onTape.map((one) => ({ size: 24 + 8 * `${one} on tape`.length })),
    ],
    frozenRows: HEAD,
    print: {
      landscape: true,
      fit: { across: 1, down: 0 },
      titleRows: `$${HEAD}:$${HEAD}`,
      footer: "&L&A&CGeometry only: the local code governs&RPage &P of &N",
    },
  };
}
