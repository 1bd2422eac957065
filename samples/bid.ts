import { CAUTION_HEADINGS } from "../functions/cautions.ts";
import { ORDER_HEADINGS, STICK_HEADINGS } from "../functions/lumberOrder.ts";
import { PLATE_HEADINGS } from "../functions/plateMarks.ts";
import { JACK_HEADINGS, MEMBER_HEADINGS } from "../functions/roof.ts";
import { TAKEOFF_HEADINGS } from "../functions/takeOff.ts";
import type { BookCell } from "../src/xlsx/book.ts";
import type { Priced } from "./boards.ts";
import { boardsRange, boardsSheet } from "./boards.ts";
import { between, CAUTION, cell, centred, DEGREES, heading, INCHES, input, label, LENGTH, MONEY, note, numbers, PITCH, PLAIN_NOTE, result, title, total } from "./cells.ts";
import type { Sample } from "./sample.ts";
import { tableSheet } from "./table.ts";

const BLOCK = "Bid!$A$7:$B$19";

/** Boards that can be bought, with what one costs: all invented. */
const PRICES: readonly Priced[] = [
  ["2x8", "8'", 9.6], ["2x8", "10'", 12.4], ["2x8", "12'", 15.2], ["2x8", "14'", 18.1], ["2x8", "16'", 21.2], ["2x8", "18'", 24.9], ["2x8", "20'", 28.4],
  ["2x10", "12'", 21], ["2x10", "16'", 28.9], ["2x10", "20'", 38.6], ["2x10", "24'", 49.5],
];
const BOARDS = boardsRange(PRICES);

/** The tables of the roof, each on a sheet of its own. Another one is one more entry. */
const TABLES = [
  tableSheet("Jacks", `=RAFTER.JACKTABLE(${BLOCK})`, JACK_HEADINGS, ["Long point", "Tape"]),
  tableSheet("Members", `=RAFTER.MEMBERS(${BLOCK})`, MEMBER_HEADINGS),
  tableSheet("Plate marks", `=RAFTER.PLATEMARKS(${BLOCK})`, PLATE_HEADINGS, ["Mark"]),
  tableSheet("Take-off", `=RAFTER.TAKEOFF(${BLOCK})`, TAKEOFF_HEADINGS),
  tableSheet("Lumber order", `=RAFTER.LUMBERORDER(${BLOCK},${BOARDS})`, ORDER_HEADINGS),
  tableSheet("Cutting plan", `=RAFTER.STICKPLAN(${BLOCK},${BOARDS})`, STICK_HEADINGS),
  tableSheet("Cautions", `=RAFTER.CAUTIONS(${BLOCK})`, CAUTION_HEADINGS),
];

/** An amount of the sheet Take-off, by its item. */
const amount = (item: string): string => `=SUMIFS('Take-off'!$B$2:$B$101,'Take-off'!$A$2:$A$101,"${item}")`;

/** A priced line: quantity times price. */
const priced = (name: string, quantity: string, format: string, unit: string, price: number, row: number, how: string): (BookCell | null)[] => [
  label(name), result(quantity, format), between(unit), input(price, MONEY), result(`=E${row}*G${row}`, MONEY), null, note(how),
];
/** A length of the roof, and the same as a tape reads it. */
const measured = (name: string, formula: string, row: number): BookCell[] => [label(name), result(formula, LENGTH), cell(`=RAFTER.TAPE(E${row})`, { across: "right" })];
const angle = (name: string, formula: string): BookCell[] => [label(name), result(formula, DEGREES)];

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
  [label("Waste"), input(10, 'General" per cent"')],
  [label("Spares"), input(1, 'General" piece"')],
];

const right: (BookCell | null)[][] = [
  [heading("Priced"), numbers("Quantity"), centred("Unit"), numbers("Price"), numbers("Amount"), heading(""), heading("How")],
  [
    label("Lumber"), result("=SUM('Lumber order'!C2:C101)", "0"), between("boards"), null,
    result(`=SUMIFS('Lumber order'!D2:D101,'Lumber order'!A2:A101,"<>Least possible")`, MONEY), null, note("sheet Lumber order, waste and spares included"),
  ],
  priced("Roof sheets, 4 by 8 feet", amount("Sheathing, sheets by courses"), "0", "sheets", 34, 8, "sheet Take-off, laid in courses"),
  priced("Roofing", amount("Roofing"), "0.00", "squares", 118, 9, "sheet Take-off, waste included"),
  priced("Fascia", amount("Fascia"), "0.0", "ft", 2.4, 10, "sheet Take-off"),
  priced("Cutting and setting jacks", "=SUM(Jacks!K2:L101)*0.75", "0.0", "hours", 52, 11, "pieces on the sheet Jacks, three quarters of an hour each"),
  priced("Setting hips, ridge and commons", "=SUM(Members!D2:F101)-SUM(Jacks!K2:L101)", "0", "pieces", 38, 12, "all other pieces"),
  [label("Sum"), null, null, null, total("=SUM(H7:H12)", MONEY)],
  [label("Overhead"), input(12, 'General" per cent"'), null, null, result("=H13*E14/100", MONEY)],
  [label("Bid"), null, null, null, total("=H13+H14", MONEY)],
  [],
  [heading("For the saw"), numbers("Value"), numbers("On the tape")],
  measured("Common, plate line to ridge", "=RAFTER.COMMONLEN(B9,RAFTER.INCHES(B7)/2,1.5)", 18),
  measured("Step of the jacks", "=RAFTER.JACKSTEP(B9,B11,B10)", 19),
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
          [note("An invented building with invented prices. Change a shaded cell, and every length, count and amount follows.")],
          [CAUTION],
          [PLAIN_NOTE],
          [],
          ...right.map((cells, i): (BookCell | null)[] => [...(left[i] ?? [null, null]), null, ...cells]),
        ],
        columns: [104, 104, 24, 220, 104, 108, 80, 104, 16, 340].map((size) => ({ size })),
        frozenRows: 1,
        print: { landscape: true, fit: { across: 1, down: 1 }, footer: "&LInvented figures&RPage &P of &N" },
      },
      boardsSheet(PRICES, MONEY),
      ...TABLES,
    ],
  },
};
