import type { BookCell } from "../src/xlsx/book.ts";
import { CAUTION, cell, centred, heading, input, label, note, numbers, PLAIN_NOTE, result, title } from "./cells.ts";
import type { Sample } from "./sample.ts";

const NAVY = "NAVEDTRA 14044, Builder 3 & 2, Volume 2, ch. 2";
const ARMY = "US Army Engineer School, Frame Structures (EN0069), lesson 2";
const SQUARE = "framing-square table";
const HODGSON = "Hodgson, ABC of the Steel Square and Its Uses";
const RADFORD = "Radford's Cyclopedia of Construction, vol. 3";
const AUDEL = "Carpenters and Builders Guide (Audel), vol. 3, p. 975";

/** What is given, the figure as printed, half its last digit, the formula, and who printed it. */
type Printed = readonly [what: string, printed: number, within: number, formula: string, source: string];

const PRINTED: readonly Printed[] = [
  ["Common, unit rise 7, per foot of run", 13.89, 0.005, "=RAFTER.SLOPELEN(7,12)", NAVY],
  ["Common, unit rise 7, span 16 ft: 9 ft 3 1/8 in", 111.125, 0.0625, '=RAFTER.SLOPELEN(7,"8\'")', NAVY],
  ["Hip, unit rise 8, per foot of common run", 18.76, 0.005, "=RAFTER.HIPLEN(8,12)", NAVY],
  ["Jack, unit rise 8, per foot of run", 14.42, 0.005, "=RAFTER.JACKLINE(8,12)", NAVY],
  ["Shortest jack, unit rise 8, 16 in o.c.", 19.23, 0.005, "=RAFTER.JACKSTEP(8,16)", NAVY],
  ["Common, unit rise 13, per foot of run", 17.69, 0.005, "=RAFTER.SLOPELEN(13,12)", ARMY],
  ["Step, rise 10, 16 in o.c.", 20.83, 0.005, "=RAFTER.JACKSTEP(10,16)", AUDEL],
  ["Hip, rise 6, per foot of common run", 18, 0.5, "=RAFTER.HIPLEN(6,12)", RADFORD],
  ["Hip, rise 9, per foot of common run", 19.21, 0.005, "=RAFTER.HIPLEN(9,12)", HODGSON],
  ["Step, rise 4, 24 in o.c.", 25.3, 0.005, "=RAFTER.JACKSTEP(4,24)", SQUARE],
  ["Step, rise 12, 16 in o.c.", 22.63, 0.005, "=RAFTER.JACKSTEP(12,16)", SQUARE],
  ["Hip, rise 12, per foot of common run", 20.78, 0.005, "=RAFTER.HIPLEN(12,12)", SQUARE],
];

/** What a framer measured and what is computed for it. All invented. */
const MEASURED: readonly (readonly [what: string, measured: string, formula: string, how: string])[] = [
  ["First jack from the king common, long point", `4' 5 1/4"`, "=RAFTER.JACKLEN(6,48,1.5,1.5)", "6 in 12, offset 48 in, boards 1 1/2 in thick"],
  ["Its neighbour towards the corner", `2' 2 1/2"`, "=RAFTER.JACKLEN(6,24,1.5,1.5)", "offset 24 in"],
  ["The longest, read a foot mark wrong", `7' 8 3/4"`, "=RAFTER.JACKLEN(6,72,1.5,1.5)", "offset 72 in: the cell says how far off"],
  ["Common, plate line to ridge", `13' 4 3/8"`, "=RAFTER.COMMONLEN(6,144,1.5)", "run 12 ft, ridge 1 1/2 in"],
  ["Hip, corner to apex along the line", "18'", "=RAFTER.HIPLEN(6,144)", "run 12 ft"],
];

const FIRST = 8;
const SECOND = FIRST + PRINTED.length + 3;

const printedRow = ([what, printed, within, formula, source]: Printed, row: number): BookCell[] => [
  label(what), input(printed, "0.000"), result(formula, "0.0000"), result(`=C${row}-B${row}`, "0.0000"), result(within, "0.0000"), cell(`=RAFTER.AGREE(B${row},C${row},E${row})`, { across: "center" }), note(source),
];
const measuredRow = ([what, measured, formula, how]: (typeof MEASURED)[number], row: number): BookCell[] => [
  label(what), input(measured), result(formula, "0.000"), result(`=RAFTER.INCHES(B${row})-C${row}`, "0.000"), result(0.25, "0.000"), cell(`=RAFTER.AGREE(B${row},C${row},E${row})`, { across: "center" }), note(how),
];

/** Hand calculations, printed figures and measured lengths beside what the functions give. */
export const check: Sample = {
  name: "check",
  says: "Printed figures and measured lengths beside the computed ones",
  book: {
    title: "Ranger hut: check of hand calculations",
    sheets: [
      {
        name: "Check",
        rows: [
          [title("Ranger hut: hand calculations checked")],
          [note("Type your own figure into a shaded cell: the cell beside says whether it agrees, or how far it is long or short.")],
          [CAUTION],
          [PLAIN_NOTE],
          [],
          [note("Figures as printed. They agree when they are off by half of the last printed digit at most. A comparison, no proof of any one roof.")],
          [heading("What"), numbers("Printed"), numbers("Computed"), numbers("Difference"), numbers("Tolerance"), centred("Says"), heading("Printed in")],
          ...PRINTED.map((row, i) => printedRow(row, FIRST + i)),
          [],
          [note("Lengths measured on site (invented). Within 1/4 in a jack can often still be used: common practice, no source.")],
          [heading("What"), numbers("Measured"), numbers("Computed"), numbers("Difference"), numbers("Tolerance"), centred("Says"), heading("How it is computed")],
          ...MEASURED.map((row, i) => measuredRow(row, SECOND + i)),
        ],
        columns: [320, 96, 96, 96, 96, 132, 380].map((size) => ({ size })),
        frozenRows: 1,
        print: { landscape: true, fit: { across: 1, down: 1 }, footer: "&RPage &P of &N" },
      },
    ],
  },
};
