import { cautions } from "../functions/cautions.ts";
import { jackTable } from "../functions/jackTable.ts";
import { members } from "../functions/members.ts";
import { plateMarks } from "../functions/plateMarks.ts";
import { takeOff } from "../functions/takeOff.ts";
import type { BookCell } from "../src/xlsx/book.ts";
import { CAUTION, heading, INCHES, input, label, measured, note, numbers, PITCH, PLAIN_NOTE, title } from "./cells.ts";
import type { Sample } from "./sample.ts";
import { SLIM, tableSheet } from "./table.ts";

/** The row of the sheet in which the block's headings stand. */
const TOP = 7;

/** An invented building with one wing: its block, and what its valleys come to in single cells. */
export interface Winged {
  readonly name: string;
  readonly says: string;
  readonly job: string;
  readonly about: string;
  /** Label, main roof, wing. */
  readonly block: readonly (readonly [label: string, main: BookCell | null, wing: BookCell | null])[];
  /** Figures for the saw, each a formula on the block's cells: `cell("Span", "main")`. */
  readonly figures: (cell: (row: string, column: "main" | "wing") => string) => readonly (readonly [string, string])[];
}

/** The rows that both buildings share. */
export const LUMBER: Winged["block"] = [
  ["Spacing", input(24, INCHES), null],
  ["Overhang", input(16, INCHES), null],
  ["Rafter", input("2x8"), null],
  ["Hip", input("2x10"), null],
  ["Ridge", input("2x10"), input("2x10")],
  ["Valley", input("2x10"), null],
  ["Seat", input(3.5, INCHES), null],
  ["Waste", input(10, 'General" percent"'), null],
];

export const pitch = input(6, PITCH);

/** A workbook of a roof with a wing: the block, figures for the saw beside it, and a sheet for each table. */
export function winged({ name, says, job, about, block, figures }: Winged): Sample {
  const range = `Roof!$A$${TOP}:$C$${TOP + block.length}`;
  const line = (row: string) => TOP + 1 + block.findIndex(([one]) => one === row);
  const follows = "Nothing is typed here: this sheet follows the roof on the sheet Roof.";
  const inches = [job, `Lengths in inches, angles in degrees. ${follows}`] as const;
  const left: (BookCell | null)[][] = [
    [heading(""), heading("Main roof"), heading("Wing A")],
    ...block.map(([row, main, wing]) => [label(row), main, wing]),
  ];
  const saw = figures((row, column) => `${column === "main" ? "B" : "C"}${line(row)}`);
  const right: (BookCell | null)[][] = [
    [heading("For the saw"), numbers("Value"), numbers("On the tape")],
    ...saw.map(([what, formula], i) => measured(what, formula, TOP + 1 + i, "F")),
  ];
  return {
    name,
    says,
    book: {
      title: job,
      sheets: [
        {
          name: "Roof",
          rows: [
            [title(job)],
            [note(`${about} Change a shaded cell, and every length and count follows.`)],
            [CAUTION],
            [PLAIN_NOTE],
            [],
            [],
            ...Array.from({ length: Math.max(left.length, right.length) }, (_, i): (BookCell | null)[] => [
              ...(left[i] ?? [null, null, null]),
              null,
              ...(right[i] ?? []),
            ]),
          ],
          columns: [120, 104, 104, 24, 260, 104, 108].map((size) => ({ size })),
          frozenRows: 1,
          print: { landscape: true, fit: { across: 1, down: 1 }, footer: "&LInvented figures&RPage &P of &N" },
        },
        tableSheet("Jacks", inches, `=RAFTER.JACKTABLE(${range})`, jackTable.columns, {
          widths: { ...SLIM, "Saw tilt": 72, Note: 200 },
        }),
        tableSheet("Members", inches, `=RAFTER.MEMBERS(${range})`, members.columns, {
          onTape: ["Long point"],
          widths: { ...SLIM, Note: 400, "Line length": 84, "Edge angle": 80, "Head cut": 72 },
        }),
        tableSheet("Plate marks", inches, `=RAFTER.PLATEMARKS(${range})`, plateMarks.columns, {
          onTape: ["Mark"],
          rows: 200,
          widths: { Note: 400 },
        }),
        tableSheet("Take-off", [job, follows], `=RAFTER.TAKEOFF(${range})`, takeOff.columns, { widths: { How: 660 } }),
        tableSheet("Cautions", [job, follows], `=RAFTER.CAUTIONS(${range})`, cautions.columns, {
          widths: { Published: 480, Remark: 400 },
        }),
      ],
    },
  };
}
