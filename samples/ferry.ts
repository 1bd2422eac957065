import type { BookCell } from "../src/xlsx/book.ts";
import {
  angle,
  CAUTION,
  DEGREES,
  heading,
  INCHES,
  input,
  label,
  LENGTH,
  measured,
  MONEY,
  note,
  PITCH,
  result,
  title,
} from "./cells.ts";
import type { Sample } from "./sample.ts";

const left: BookCell[][] = [
  [heading("The roof"), heading("")],
  [label("Span"), input("24'")],
  [label("Length"), input("40'")],
  [label("Pitch"), input(6, PITCH)],
  [label("End pitch"), input(8, PITCH)],
  [label("Spacing"), input(24, INCHES)],
  [label("Overhang"), input(18, INCHES)],
  [label("Rafter"), input("2x8")],
  [label("Hip"), input("2x10")],
  [label("Ridge"), input("2x10")],
  [label("Seat"), input(3.5, INCHES)],
  [label("Set out from"), input("king common")],
];

const right: BookCell[][] = [
  [heading("For the bid"), heading("Value"), heading("On the tape")],
  measured("Half span", "=RAFTER.INCHES(B5)/2", 5),
  angle("Main pitch", "=RAFTER.PITCHDEG(B7)"),
  angle("End pitch", "=RAFTER.PITCHDEG(B8)"),
  measured("Common, plate line to ridge", "=RAFTER.COMMONLEN(B7,E5,1.5)", 8),
  measured("Hip, corner to apex", "=RAFTER.HIPLEN(B7,E5,B8)", 9),
  angle("Slope of the hip", "=RAFTER.HIPDEG(B7,B8)"),
  measured("Step of the main jacks", "=RAFTER.JACKSTEP(B7,B9,B8)", 11),
  measured("Step of the end jacks", "=RAFTER.JACKSTEP(B8,B9,B7)", 12),
  measured("A main jack at 48 in, long point", "=RAFTER.JACKLEN(B7,48,1.5,1.5,B8)", 13),
  angle("Saw tilt of the main jacks", "=RAFTER.JACKTILT(B7,B8)"),
  angle("Saw tilt of the end jacks", "=RAFTER.JACKTILT(B8,B7)"),
  [],
  [heading("Jacks"), heading(""), heading("")],
  [label("Jacks in all"), result("=SUM(Jacks!K2:L60)", "0"), note("counted on the sheet Jacks")],
  [label("Longest board for a jack"), result("=MAX(Jacks!I2:I60)", LENGTH)],
  [
    label("Boards for the jacks, foot by foot"),
    result("=SUMPRODUCT(Jacks!I2:I60,Jacks!K2:K60+Jacks!L2:L60)/12", '0.0 "ft"'),
  ],
  [label("Price of a foot"), input(1.35, MONEY)],
  [label("Lumber for the jacks"), result("=E20*E21", MONEY)],
  [],
  [heading("When a cell is refused"), heading(""), heading("")],
  [
    label("A pitch typed without quotes"),
    result("=RAFTER.PITCHDEG(6/12)"),
    note("Select the cell on the left: the pane says why."),
  ],
  [label("The same with quotes"), result('=RAFTER.PITCHDEG("6/12")', DEGREES)],
];

// Offset to Shortest board are lengths, then comes the saw tilt.
const jack = [null, null, ...Array.from({ length: 7 }, () => result("", "0.000")), result("", "0.00")];

/** What the bench opens with; it has no file. The building and its price are invented. */
export const ferry: Sample = {
  name: "ferry",
  says: "A roof, its jacks, and a cell that is refused",
  book: {
    title: "Ferry landing",
    sheets: [
      {
        name: "Bid",
        rows: [
          [title("Ferry landing, waiting hall: hip roof")],
          [note("An invented job with invented prices. Change a shaded cell: every length, cut and price follows.")],
          [CAUTION],
          ...right.map((cells, i): (BookCell | null)[] => [...(left[i] ?? [null, null]), null, ...cells]),
        ],
        columns: [104, 112, 20, 264, 104, 112].map((size) => ({ size })),
      },
      {
        name: "Jacks",
        rows: [
          [heading("=RAFTER.JACKTABLE(Bid!A5:B15)"), ...Array.from({ length: 12 }, () => heading(""))],
          ...Array.from({ length: 60 }, () => jack),
        ],
        columns: [64, 64, 92, 104, 104, 104, 104, 104, 120, 84, 56, 56, 260].map((size) => ({ size })),
        frozenRows: 1,
      },
    ],
  },
};
