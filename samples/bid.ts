import { cautions } from "../functions/cautions.ts";
import { jackTable } from "../functions/jackTable.ts";
import { lumberOrder } from "../functions/lumberOrder.ts";
import { members } from "../functions/members.ts";
import { plateMarks } from "../functions/plateMarks.ts";
import { stickPlan } from "../functions/stickPlan.ts";
import { takeOff } from "../functions/takeOff.ts";
import type { BookCell } from "../src/xlsx/book.ts";
import type { Priced } from "./boards.ts";
import { boardsRange, boardsSheet } from "./boards.ts";
import {
  angle,
  between,
  CAUTION,
  centered,
  heading,
  INCHES,
  input,
  label,
  measured,
  MONEY,
  note,
  numbers,
  PITCH,
  PLAIN_NOTE,
  result,
  strong,
  title,
  total,
} from "./cells.ts";
import type { Sample } from "./sample.ts";
import { FIRST, LAST, SLIM, tableSheet } from "./table.ts";

const BLOCK = "Bid!$A$7:$B$19";

/** Boards that can be bought, with what one costs: all invented. */
const PRICES: readonly Priced[] = [
  ["2x8", "8'", 9.6],
  ["2x8", "10'", 12.4],
  ["2x8", "12'", 15.2],
  ["2x8", "14'", 18.1],
  ["2x8", "16'", 21.2],
  ["2x8", "18'", 24.9],
  ["2x8", "20'", 28.4],
  ["2x10", "12'", 21],
  ["2x10", "16'", 28.9],
  ["2x10", "20'", 38.6],
  ["2x10", "24'", 49.5],
];
const BOARDS = boardsRange(PRICES);

const JOB = "Reading room";
const FOLLOWS = "Nothing is typed here: this sheet follows the roof on the sheet Bid.";
const INCH_TABLE = [JOB, `Lengths in inches, angles in degrees. ${FOLLOWS}`] as const;
const BOUGHT = [
  JOB,
  "Lengths in inches, cost in dollars. Nothing is typed here: this sheet follows the roof on the sheet Bid and the boards on the sheet Boards.",
] as const;

/** The tables of the roof, each on a sheet of its own. Another one is one more entry. */
const TABLES = [
  tableSheet("Jacks", INCH_TABLE, `=RAFTER.JACKTABLE(${BLOCK})`, jackTable.columns, {
    onTape: ["Long point", "Tape", "Shortest board"],
    widths: { ...SLIM, "Saw tilt": 72, Note: 200 },
  }),
  tableSheet("Members", INCH_TABLE, `=RAFTER.MEMBERS(${BLOCK})`, members.columns, {
    onTape: ["Long point"],
    widths: { ...SLIM, Note: 240, "Line length": 84, "Edge angle": 80, "Head cut": 72 },
  }),
  tableSheet("Plate marks", INCH_TABLE, `=RAFTER.PLATEMARKS(${BLOCK})`, plateMarks.columns, {
    onTape: ["Mark"],
    widths: { Note: 400 },
  }),
  tableSheet("Take-off", [JOB, FOLLOWS], `=RAFTER.TAKEOFF(${BLOCK})`, takeOff.columns, { widths: { How: 660 } }),
  tableSheet("Lumber order", BOUGHT, `=RAFTER.LUMBERORDER(${BLOCK},${BOARDS})`, lumberOrder.columns, {
    onTape: ["Board"],
  }),
  tableSheet("Cutting plan", BOUGHT, `=RAFTER.STICKPLAN(${BLOCK},${BOARDS})`, stickPlan.columns, {
    onTape: ["Board", "Left over"],
  }),
  tableSheet("Cautions", [JOB, FOLLOWS], `=RAFTER.CAUTIONS(${BLOCK})`, cautions.columns, {
    widths: { Published: 480, Remark: 400 },
  }),
];

const rows = (sheet: string, columns: readonly [string, string]): string =>
  `${sheet}!${columns[0]}${FIRST}:${columns[1]}${LAST}`;
const JACKS = `SUM(${rows("Jacks", ["K", "L"])})`;

/** An amount of the sheet Take-off, by its item. */
const amount = (item: string): string =>
  `=SUMIFS('Take-off'!$B$${FIRST}:$B$${LAST},'Take-off'!$A$${FIRST}:$A$${LAST},"${item}")`;

/** A priced line: quantity times price. */
const priced = ({
  name,
  quantity,
  format,
  unit,
  price,
  row,
  how,
}: Record<"name" | "quantity" | "format" | "unit" | "how", string> &
  Record<"price" | "row", number>): (BookCell | null)[] => [
  label(name),
  result(quantity, format),
  between(unit),
  input(price, MONEY),
  result(`=E${row}*G${row}`, MONEY),
  null,
  note(how),
];

const left: BookCell[][] = [
  [heading("The roof"), heading("")],
  [label("Span"), input("26'")],
  [label("Length"), input("44'")],
  [label("Pitch"), input(6, PITCH)],
  [label("End pitch"), input(6, PITCH)],
  [label("Spacing"), input(24, INCHES)],
  [label("Overhang"), input(18, INCHES)],
  [label("Rafter"), input("2x8")],
  [label("Hip"), input("2x10")],
  [label("Ridge"), input("2x10")],
  [label("Seat"), input(3.5, INCHES)],
  [label("Hip top"), input("dropped")],
  [label("Waste"), input(10, 'General" percent"')],
  [label("Spares"), input(1, 'General" piece"')],
];

const right: (BookCell | null)[][] = [
  [
    heading("Priced"),
    numbers("Quantity"),
    centered("Unit"),
    numbers("Price"),
    numbers("Amount"),
    heading(""),
    heading("How"),
  ],
  [
    label("Lumber"),
    result(`=SUM(${rows("'Lumber order'", ["C", "C"])})`, "0"),
    between("boards"),
    null,
    result(
      `=SUMIFS(${rows("'Lumber order'", ["D", "D"])},${rows("'Lumber order'", ["A", "A"])},"<>Least possible")`,
      MONEY,
    ),
    null,
    note("sheet Lumber order at the prices of the sheet Boards, waste and spares included"),
  ],
  priced({
    name: "Roof sheets, 4 by 8 feet",
    quantity: amount("Sheathing, sheets by courses"),
    format: "0",
    unit: "sheets",
    price: 34,
    row: 8,
    how: "sheet Take-off, laid in courses",
  }),
  priced({
    name: "Roofing",
    quantity: amount("Roofing"),
    format: "0.00",
    unit: "squares",
    price: 118,
    row: 9,
    how: "sheet Take-off, waste included",
  }),
  priced({
    name: "Fascia",
    quantity: amount("Fascia"),
    format: "0.0",
    unit: "ft",
    price: 2.4,
    row: 10,
    how: "sheet Take-off",
  }),
  priced({
    name: "Cutting and setting jacks",
    quantity: `=${JACKS}*E18`,
    format: "0.0",
    unit: "hours",
    price: 52,
    row: 11,
    how: "pieces on the sheet Jacks, at the hours assumed below",
  }),
  priced({
    name: "Setting hips, ridge and commons",
    quantity: `=SUM(${rows("Members", ["D", "F"])})-${JACKS}`,
    format: "0",
    unit: "pieces",
    price: 38,
    row: 12,
    how: "all other pieces of the sheet Members",
  }),
  [strong("Sum"), null, null, null, total("=SUM(H7:H12)", MONEY)],
  [label("Overhead"), input(12, 'General" percent"'), null, null, result("=H13*E14/100", MONEY)],
  [strong("Bid"), null, null, null, total("=H13+H14", MONEY)],
  [],
  [heading("Assumed"), numbers("Value")],
  [label("Hours to cut and set a jack"), input(0.25, '0.00 "h"')],
  [label("Thickness of the ridge board"), input(1.5, INCHES)],
  [],
  [heading("For the saw"), numbers("Value"), numbers("On the tape")],
  measured("Common, plate line to ridge", "=RAFTER.COMMONLEN(B9,RAFTER.INCHES(B7)/2,E19)", 22),
  measured("Step of the jacks", "=RAFTER.JACKSTEP(B9,B11,B10)", 23),
  angle("Saw tilt of the jacks", "=RAFTER.JACKTILT(B9,B10)"),
];

/** A bid that the roof's functions extend. The building and every price are invented. */
export const bid: Sample = {
  name: "bid",
  says: "A bid with prices, and the roof's jacks and members behind it",
  book: {
    title: "Reading room: bid for the hip roof",
    sheets: [
      {
        name: "Bid",
        rows: [
          [title("Reading room of a village library: hip roof")],
          [
            note(
              "An invented building with invented prices. Change a shaded cell, here or on the sheet Boards, and every length, count and amount follows.",
            ),
          ],
          [CAUTION],
          [PLAIN_NOTE],
          [],
          ...right.map((cells, i): (BookCell | null)[] => [...(left[i] ?? [null, null]), null, ...cells]),
        ],
        columns: [104, 104, 24, 220, 104, 108, 80, 104, 16, 480].map((size) => ({ size })),
        frozenRows: 1,
        print: { landscape: true, fit: { across: 1, down: 1 }, footer: "&LInvented figures&RPage &P of &N" },
      },
      boardsSheet(PRICES, MONEY),
      ...TABLES,
    ],
  },
};
