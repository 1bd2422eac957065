import { jackTable } from "../functions/jackTable.ts";
import { lumberOrder } from "../functions/lumberOrder.ts";
import { members } from "../functions/members.ts";
import { stickPlan } from "../functions/stickPlan.ts";
import { takeOff } from "../functions/takeOff.ts";
import type { BookCell } from "../src/xlsx/book.ts";
import type { Priced } from "./boards.ts";
import { boardsRange, boardsSheet } from "./boards.ts";
import {
  CAUTION,
  DEGREES,
  heading,
  input,
  label,
  note,
  numbers,
  PLAIN_NOTE,
  result,
  strong,
  title,
  total,
} from "./cells.ts";
import type { Sample } from "./sample.ts";
import { FIRST, LAST, SLIM, tableSheet } from "./table.ts";

const MM = '0 "mm"';
const TENTH = '0.0 "mm"';
const PRICE = "#,##0.00";
const BLOCK = "Job!$A$7:$B$18";

/** Boards that can be bought, with what one costs: all invented. */
const PRICES: readonly Priced[] = [
  ["45 x 195 mm", "3.0 m", 19],
  ["45 x 195 mm", "3.6 m", 22.9],
  ["45 x 195 mm", "4.2 m", 26.8],
  ["45 x 195 mm", "4.8 m", 30.9],
  ["45 x 195 mm", "5.4 m", 35.2],
  ["45 x 195 mm", "6.0 m", 39.8],
  ["45 x 245 mm", "4.8 m", 40.5],
  ["45 x 245 mm", "5.4 m", 46.1],
  ["45 x 245 mm", "6.0 m", 52.2],
  ["45 x 245 mm", "7.2 m", 66.4],
];
const BOARDS = boardsRange(PRICES);

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
  [label("Waste"), input(8, 'General" percent"')],
];

const JOB = "Visitor shelter";
const FOLLOWS = "Nothing is typed here: this sheet follows the roof on the sheet Job.";
const MM_TABLE = [JOB, `Lengths in millimeters, angles in degrees. ${FOLLOWS}`] as const;
const BOUGHT = [
  JOB,
  "Lengths in millimeters. Nothing is typed here: this sheet follows the roof on the sheet Job and the boards on the sheet Boards.",
] as const;
const METRIC = { ...SLIM, Size: 96, Offset: 64, Tape: 64 } as const;

/** The tables of the roof, each on a sheet of its own. Another one is one more entry. */
const TABLES = [
  tableSheet("Jacks", MM_TABLE, `=RAFTER.JACKTABLE(${BLOCK})`, jackTable.columns, {
    lengths: "0.0",
    widths: { ...METRIC, "Saw tilt": 72, Note: 220 },
  }),
  tableSheet("Members", MM_TABLE, `=RAFTER.MEMBERS(${BLOCK})`, members.columns, {
    lengths: "0.0",
    widths: { ...METRIC, Note: 240, "Line length": 84, "Edge angle": 80, "Head cut": 72 },
  }),
  tableSheet("Take-off", [JOB, FOLLOWS], `=RAFTER.TAKEOFF(${BLOCK})`, takeOff.columns, {
    widths: { Unit: 190, How: 660 },
  }),
  tableSheet("Lumber order", BOUGHT, `=RAFTER.LUMBERORDER(${BLOCK},${BOARDS})`, lumberOrder.columns, {
    lengths: "0.0",
    widths: { Size: 100 },
  }),
  tableSheet("Cutting plan", BOUGHT, `=RAFTER.STICKPLAN(${BLOCK},${BOARDS})`, stickPlan.columns, {
    lengths: "0.0",
    widths: { Size: 100 },
  }),
];

const ordered = (column: string): string => `'Lumber order'!${column}${FIRST}:${column}${LAST}`;
const figure = (name: string, formula: string, format: string): BookCell[] => [label(name), result(formula, format)];

const right: (BookCell | null)[][] = [
  [heading("Figures"), numbers("Value"), heading(""), heading("")],
  figure("Half span", "=RAFTER.TOMM(B8)/2", TENTH),
  figure("Pitch", "=RAFTER.PITCHDEG(B10)", DEGREES),
  figure("Common, plate line to ridge", "=RAFTER.COMMONLEN(B10,E7,E21)", TENTH),
  figure("Hip, corner to apex", "=RAFTER.HIPLEN(B10,E7)", TENTH),
  figure("Slope of the hip", "=RAFTER.HIPDEG(B10)", DEGREES),
  figure("Step of the jacks", "=RAFTER.JACKSTEP(B10,B11)", TENTH),
  figure("Edge angle of the jacks", "=RAFTER.JACKEDGE(B10)", DEGREES),
  figure("Drop of the hip", "=RAFTER.HIPDROP(B10,E21)", TENTH),
  [],
  [heading("Timber"), numbers("Value"), heading(""), heading("")],
  [...figure("Boards, waste included", `=SUM(${ordered("C")})`, "0"), null, note("sheet Lumber order")],
  [
    strong("Sum"),
    total(`=SUMIFS(${ordered("D")},${ordered("A")},"<>Least possible")`, PRICE),
    null,
    note("invented prices, sheet Boards"),
  ],
  [],
  [heading("Assumed"), numbers("Value"), heading(""), heading("")],
  [label("Thickness of ridge and hip"), input(45, MM)],
];

/** A roof in meters and millimeters. The building and its prices are invented. */
export const metric: Sample = {
  name: "metric",
  says: "A roof in meters and millimeters",
  book: {
    title: "Visitor shelter: hip roof in metric",
    sheets: [
      {
        name: "Job",
        rows: [
          [title("Visitor shelter at a nature reserve: hip roof, metric")],
          [
            note(
              "An invented building with invented prices. Change a shaded cell, here or on the sheet Boards, and every length and amount follows. Lengths may be typed in m, cm or mm; bare numbers are millimeters.",
            ),
          ],
          [CAUTION],
          [PLAIN_NOTE],
          [],
          ...Array.from({ length: Math.max(left.length, right.length) }, (_, i): (BookCell | null)[] => [
            ...(left[i] ?? [null, null]),
            null,
            ...(right[i] ?? []),
          ]),
        ],
        columns: [104, 112, 24, 220, 112, 16, 220].map((size) => ({ size })),
        frozenRows: 1,
        print: {
          landscape: true,
          paper: "a4",
          fit: { across: 1, down: 1 },
          footer: "&LInvented figures&RPage &P of &N",
        },
      },
      boardsSheet(PRICES, PRICE),
      ...TABLES,
    ],
  },
};
