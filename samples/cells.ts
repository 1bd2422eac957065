import { CELL_STYLES } from "../src/hosts/cellStyles.ts";
import type { BookCell, Look } from "../src/xlsx/book.ts";

export const PITCH = 'General "in 12"';
export const INCHES = 'General "in"';
export const LENGTH = '0.000 "in"';
export const DEGREES = '0.00"°"';
export const MONEY = "$#,##0.00";

const LINE = { line: "thin", color: "#7d8b99" } as const;
const LOOKS = {
  ...CELL_STYLES,
  heading: { ...CELL_STYLES.heading, borders: { bottom: LINE } },
  total: { bold: true, borders: { top: LINE } },
} satisfies Record<string, Look>;

/** Text that begins with "=" is a formula; its result comes when the sample is calculated. */
export function cell(content: string | number, look: Look = {}): BookCell {
  const looks = Object.keys(look).length > 0 ? { look } : {};
  return typeof content === "string" && content.startsWith("=")
    ? { value: null, formula: content, ...looks }
    : { value: content === "" ? null : content, ...looks };
}

const styled =
  (base: Look) =>
  (content: string | number, format?: string): BookCell =>
    cell(content, { ...base, ...(format && { format }) });

export const title = styled(LOOKS.title);
export const heading = styled(LOOKS.heading);
/** Over a column of numbers. */
export const numbers = styled({ ...LOOKS.heading, across: "right" });
export const centered = styled({ ...LOOKS.heading, across: "center" });
/** A word between two columns of numbers. */
export const between = styled({ ...LOOKS.label, across: "center" });
export const label = styled(LOOKS.label);
/** A shaded cell, for the user to type in; numbers and texts end at one line. */
export const input = styled({ ...LOOKS.input, across: "right" });
export const note = styled(LOOKS.note);
export const total = styled(LOOKS.total);
export const strong = styled({ bold: true });
export const result = styled({});

/** A length in a row and column of a sheet, named, and the same as a tape reads it. */
export const measured = (name: string, formula: string, row: number, column = "E"): BookCell[] => [
  label(name),
  result(formula, LENGTH),
  cell(`=RAFTER.TAPE(${column}${row})`, { across: "right" }),
];
export const angle = (name: string, formula: string): BookCell[] => [label(name), result(formula, DEGREES)];

/** Stands on the first sheet of every sample: the numbers go wherever the file goes, and so does this. */
export const CAUTION = note(
  "Geometry only: it proves no strength. Sizes, spans, ties, bracing and uplift are for the local code and a licensed designer. Check the first cut against the building.",
);

/** For a reader without the add-in. */
export const PLAIN_NOTE = note(
  "The formulas need the Longpoint add-in or its bench. Each sheet stands once more as plain values, behind the others: print or send those where it is missing.",
);
