import type { BookCell } from "../src/xlsx/book.ts";
import {
  CAUTION,
  DEGREES,
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

const PITCHES = [4, 5, 6, 7, 8, 9, 10, 12];
const SPACINGS = [12, 16, 19.2, 24];
const FIRST = 12;
const SECOND = FIRST + PITCHES.length + 3;

/** What a pitch costs in lengths and angles, each cell a call of its own. */
const byPitch = (pitch: number, row: number): BookCell[] => [
  input(pitch, PITCH),
  result(`=RAFTER.PITCHDEG(A${row})`, DEGREES),
  result(`=RAFTER.COMMONLEN(A${row},$B$6,$B$7)`, LENGTH),
  result(`=RAFTER.HIPLEN(A${row},$B$6)`, LENGTH),
  result(`=RAFTER.HIPDEG(A${row})`, DEGREES),
  result(`=RAFTER.RIDGEHEIGHT(A${row},$B$6,$B$7,RAFTER.HEEL(A${row},$B$8,$B$9))`, LENGTH),
  result(`=RAFTER.JACKEDGE(A${row})`, DEGREES),
  result(`=C${row}-C$${FIRST}`, LENGTH),
];

/** One cell of the grid: a pitch down, a spacing across. */
const step = (row: number, column: number): BookCell =>
  result(`=RAFTER.JACKSTEP($A${row},${"BCDE"[column]}$${SECOND - 1})`, "0.000");

const BLOCK: readonly (readonly [BookCell, BookCell])[] = [
  [label("Span"), input("20'")],
  [label("Length"), input("32'")],
  [label("Pitch"), input(6, PITCH)],
  [label("Overhang"), input(12, INCHES)],
  [label("Rafter"), input("2x8")],
  [label("Hip"), input("2x10")],
  [label("Ridge"), input("2x10")],
  [label("Waste"), input(10, 'General" percent"')],
];

/** Figures of the whole roof to lay side by side, each a call that spills. Another one is one more entry. */
const GRIDS: readonly (readonly [what: string, format: string])[] = [
  ["longest jack", "0.000"],
  ["jacks", "0"],
  ["board feet", "0.0"],
  ["squares", "0.00"],
];

/** A grid under its name: pitches down, spacings across, taken from the sheet Compare. */
function grid(what: string, format: string): (BookCell | null)[][] {
  const call = `=RAFTER.COMPARE($A$7:$B$${6 + BLOCK.length},Compare!$A$${FIRST}:$A$${FIRST + PITCHES.length - 1},Compare!$B$${SECOND - 1}:$E$${SECOND - 1},"${what}")`;
  const line = (): BookCell[] => [result("", PITCH), ...SPACINGS.map(() => result("", format))];
  return [[heading(call), ...SPACINGS.map(() => heading("", INCHES))], ...PITCHES.map(line), []];
}

const grids = GRIDS.flatMap(([what, format]) => grid(what, format));

/** Pitches and spacings side by side, before one is chosen. The building is invented. */
export const compare: Sample = {
  name: "compare",
  says: "Pitches and spacings side by side",
  book: {
    title: "Band pavilion: which pitch",
    sheets: [
      {
        name: "Compare",
        rows: [
          [title("Band pavilion in a park: which pitch, which spacing")],
          [
            note(
              "An invented building. Change a shaded cell, and every length follows. Span and lumber stand on the sheet Whole roof.",
            ),
          ],
          [CAUTION],
          [PLAIN_NOTE],
          [],
          [
            label("Run, half the span"),
            result("=RAFTER.INCHES('Whole roof'!$B$7)/2", INCHES),
            null,
            note("follows the span on the sheet Whole roof"),
          ],
          [label("Ridge thickness"), input(1.5, INCHES)],
          [label("Rafter depth"), input(7.25, INCHES)],
          [label("Seat"), input(3.5, INCHES)],
          [],
          [
            "Pitch",
            "Angle",
            "Common",
            "Hip",
            "Hip slope",
            "Ridge above plate",
            "Edge angle",
            "Common, more than first",
          ].map((name) => numbers(name)),
          ...PITCHES.map((pitch, i) => byPitch(pitch, FIRST + i)),
          [],
          [
            heading("Step of the jacks, by pitch down and spacing across, in inches"),
            heading(""),
            heading(""),
            heading(""),
            heading(""),
          ],
          [label("Pitch"), ...SPACINGS.map((spacing) => input(spacing, INCHES))],
          ...PITCHES.map((pitch, i): BookCell[] => [
            input(pitch, PITCH),
            ...SPACINGS.map((_, column) => step(SECOND + i, column)),
          ]),
        ],
        columns: [140, 96, 112, 112, 96, 132, 96, 176].map((size) => ({ size })),
        frozenRows: 1,
        print: { landscape: true, fit: { across: 1, down: 1 }, footer: "&LInvented figures&RPage &P of &N" },
      },
      {
        name: "Whole roof",
        rows: [
          [title("Band pavilion: the whole roof over the same pitches and spacings")],
          [
            note(
              "Change a shaded cell. Pitches and spacings are those of the sheet Compare; the block's own pitch does not matter here.",
            ),
          ],
          [note("Lengths in inches, areas in squares of 100 square feet, waste included.")],
          [CAUTION],
          [],
          [heading("The roof"), heading("")],
          ...grids.map((cells, i): (BookCell | null)[] => [...(BLOCK[i] ?? [null, null]), null, ...cells]),
        ],
        columns: [104, 104, 24, 132, 88, 88, 88, 88].map((size) => ({ size })),
        frozenRows: 1,
        print: { fit: { across: 1, down: 1 }, footer: "&LInvented figures&RPage &P of &N" },
      },
    ],
  },
};
