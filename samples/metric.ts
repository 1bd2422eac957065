import { JACK_HEADINGS, MEMBER_HEADINGS } from "../functions/roof.ts";
import { TAKEOFF_HEADINGS } from "../functions/takeOff.ts";
import type { BookCell } from "../src/xlsx/book.ts";
import { CAUTION, DEGREES, heading, input, label, note, numbers, PLAIN_NOTE, result, title, total } from "./cells.ts";
import type { Sample } from "./sample.ts";
import { tableSheet } from "./table.ts";

const MM = '0 "mm"';
const TENTH = '0.0 "mm"';
const METRES = '0.0 "m"';
const PRICE = "#,##0.00";
const BLOCK = "Job!$A$7:$B$18";

const left: BookCell[][] = [
  [heading("The roof"), heading("")],
  [label("Unit"), input("mm")],
  [label("Span"), input("7.2 m")],
  [label("Length"), input("11.4 m")],
  [label("Pitch"), input("30°")],
  [label("Spacing"), input(600, MM)],
  [label("Overhang"), input(450, MM)],
  [label("Rafter"), input("45 x 195 mm")],
  [label("Hip"), input("45 x 245 mm")],
  [label("Ridge"), input("45 x 245 mm")],
  [label("Seat"), input(70, MM)],
  [label("Set out from"), input("king common")],
  [label("Waste"), input(8, 'General" per cent"')],
];

/** The tables of the roof, each on a sheet of its own. Another one is one more entry. */
const TABLES = [
  tableSheet("Jacks", `=RAFTER.JACKTABLE(${BLOCK})`, JACK_HEADINGS),
  tableSheet("Members", `=RAFTER.MEMBERS(${BLOCK})`, MEMBER_HEADINGS),
  tableSheet("Take-off", `=RAFTER.TAKEOFF(${BLOCK})`, TAKEOFF_HEADINGS),
];

const figure = (name: string, formula: string, format: string): BookCell[] => [label(name), result(formula, format)];

const right: BookCell[][] = [
  [heading("Figures"), numbers("Value"), heading("")],
  figure("Half span", "=RAFTER.TOMM(B8)/2", TENTH),
  figure("Pitch", "=RAFTER.PITCHDEG(B10)", DEGREES),
  figure("Common, plate line to ridge", "=RAFTER.COMMONLEN(B10,E7,45)", TENTH),
  figure("Hip, corner to apex", "=RAFTER.HIPLEN(B10,E7)", TENTH),
  figure("Slope of the hip", "=RAFTER.HIPDEG(B10)", DEGREES),
  figure("Step of the jacks", "=RAFTER.JACKSTEP(B10,B11)", TENTH),
  figure("Edge angle of the jacks", "=RAFTER.JACKEDGE(B10)", DEGREES),
  figure("Drop of the hip", "=RAFTER.HIPDROP(B10,45)", TENTH),
  [],
  [heading("Timber"), numbers("Value"), heading("")],
  figure("Rafter timber, with waste", `=SUMIFS('Take-off'!B2:B101,'Take-off'!A2:A101,B13&", lineal")*(1+B18/100)`, METRES),
  [label("Price of a metre"), input(6.4, PRICE), note("invented")],
  [label("Timber for rafters"), total("=E17*E18", PRICE)],
];

/** A roof in metres and millimetres. The building and its price are invented. */
export const metric: Sample = {
  name: "metric",
  says: "A roof in metres and millimetres",
  book: {
    title: "Visitor shelter: hip roof in metric",
    sheets: [
      {
        name: "Job",
        rows: [
          [title("Visitor shelter at a nature reserve: hip roof, metric")],
          [note("An invented building with an invented price. Lengths with m, cm or mm say the unit; the block is in millimetres.")],
          [CAUTION],
          [PLAIN_NOTE],
          [],
          ...Array.from({ length: Math.max(left.length, right.length) }, (_, i): (BookCell | null)[] => [...(left[i] ?? [null, null]), null, ...(right[i] ?? [])]),
        ],
        columns: [104, 112, 24, 220, 112, 96].map((size) => ({ size })),
        frozenRows: 1,
        print: { landscape: true, paper: "a4", fit: { across: 1, down: 1 }, footer: "&LInvented figures&RPage &P of &N" },
      },
      ...TABLES,
    ],
  },
};
