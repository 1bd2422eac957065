import type { BookCell } from "../src/xlsx/book.ts";
import {
  CAUTION,
  cell,
  centered,
  heading,
  INCHES,
  input,
  label,
  LENGTH,
  note,
  numbers,
  PITCH,
  PLAIN_NOTE,
  result,
  title,
} from "./cells.ts";
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

/** What a framer measured, where, and what is computed for it from the shaded cells above. All invented. */
const MEASURED: readonly (readonly [
  what: string,
  at: number,
  measured: string,
  formula: (at: string) => string,
  how: string,
])[] = [
  [
    "First jack from the king common, long point",
    48,
    `4' 5 1/4"`,
    (at) => `=RAFTER.JACKLEN($B$7,${at},$B$8,$B$9)`,
    "offset of its center from the corner",
  ],
  [
    "Its neighbor towards the corner",
    24,
    `2' 2 1/2"`,
    (at) => `=RAFTER.JACKLEN($B$7,${at},$B$8,$B$9)`,
    "offset, a spacing less",
  ],
  [
    "The longest, read a foot mark wrong",
    72,
    `7' 8 3/4"`,
    (at) => `=RAFTER.JACKLEN($B$7,${at},$B$8,$B$9)`,
    "offset: the cell says how far off",
  ],
  [
    "Common, plate line to ridge",
    144,
    `13' 4 3/8"`,
    (at) => `=RAFTER.COMMONLEN($B$7,${at},$B$10)`,
    "run, half the span",
  ],
  ["Hip, corner to apex along the line", 144, "18'", (at) => `=RAFTER.HIPLEN($B$7,${at})`, "run of the common"],
];

const FIRST = 7;
const SECOND = 14;

/** As many decimals as the source has. */
const places = (within: number): string => (within >= 0.5 ? "0" : within > 0.01 ? "0.000" : "0.00");

const printedRow = ([what, printed, within, formula, source]: Printed, row: number): BookCell[] => [
  label(what),
  input(printed, places(within)),
  result(formula, "0.0000"),
  result(`=C${row}-B${row}`, "0.0000"),
  result(within, "0.0000"),
  cell(`=RAFTER.AGREE(B${row},C${row},E${row})`, { across: "center" }),
  note(source),
];
const measuredRow = ([what, at, measured, formula, how]: (typeof MEASURED)[number], row: number): BookCell[] => [
  label(what),
  input(at, INCHES),
  input(measured),
  result(formula(`B${row}`), LENGTH),
  result(`=RAFTER.INCHES(C${row})-D${row}`, LENGTH),
  cell(`=RAFTER.AGREE(C${row},D${row},$B$11)`, { across: "center" }),
  note(how),
];

const print = { landscape: true, fit: { across: 1, down: 1 }, footer: "&L&A&RPage &P of &N" } as const;

/** Hand calculations, printed figures and measured lengths beside what the functions give. */
export const check: Sample = {
  name: "check",
  says: "Printed figures and measured lengths beside the computed ones",
  book: {
    title: "Ranger hut: check of hand calculations",
    sheets: [
      {
        name: "Measured",
        rows: [
          [title("Ranger hut: lengths measured on site")],
          [
            note(
              "An invented building. Type what you measured into a shaded cell: the cell beside says whether it agrees, or how far it is long or short. For one more length, copy a row.",
            ),
          ],
          [CAUTION],
          [PLAIN_NOTE],
          [],
          [heading("The roof"), heading("")],
          [label("Pitch"), input(6, PITCH)],
          [label("Thickness of the hip"), input(1.5, INCHES)],
          [label("Thickness of a jack"), input(1.5, INCHES)],
          [label("Thickness of the ridge board"), input(1.5, INCHES)],
          [label("Still agrees within"), input(0.25, INCHES), null, note("common practice, no source")],
          [],
          [
            heading("What"),
            numbers("Offset or run"),
            numbers("Measured"),
            numbers("Computed"),
            numbers("Difference"),
            centered("Says"),
            heading("Where it is measured"),
          ],
          ...MEASURED.map((row, i) => measuredRow(row, SECOND + i)),
        ],
        columns: [300, 104, 104, 104, 104, 132, 260].map((size) => ({ size })),
        print,
      },
      {
        name: "Printed",
        rows: [
          [title("Figures as printed, and as computed")],
          [
            note(
              "They agree when they are off by half of the last printed digit at most. A comparison, no proof of any one roof. Lengths in inches.",
            ),
          ],
          [note("Type your own figure into a shaded cell. For one more, copy a row and change its formula.")],
          [CAUTION],
          [],
          [
            heading("What"),
            numbers("Printed"),
            numbers("Computed"),
            numbers("Difference"),
            numbers("Tolerance"),
            centered("Says"),
            heading("Printed in"),
          ],
          ...PRINTED.map((row, i) => printedRow(row, FIRST + i)),
        ],
        columns: [320, 96, 96, 96, 96, 132, 400].map((size) => ({ size })),
        print,
      },
    ],
  },
};
