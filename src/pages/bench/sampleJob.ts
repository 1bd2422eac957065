import type { Book, BookCell, BookSheet, Look } from "../../xlsx/book.ts";
import { lookOfStyle } from "../../hosts/embedded/cellStyle.ts";

const PITCH = 'General "in 12"';
const INCHES = 'General "in"';
const LENGTH = '0.000 "in"';
const DEGREES = '0.00"°"';
const MONEY = "$#,##0.00";

function cell(content: string | number, look: Look, format?: string): BookCell {
  const formula = typeof content === "string" && content.startsWith("=");
  return {
    value: formula || content === "" ? null : content,
    ...(formula && { formula: content }),
    look: { ...look, ...(format && { format }) },
  };
}

const title = (content: string) => cell(content, lookOfStyle("title"));
const heading = (content: string) => cell(content, lookOfStyle("heading"));
const label = (content: string) => cell(content, lookOfStyle("label"));
const note = (content: string) => cell(content, lookOfStyle("note"));
const input = (content: string | number, format?: string) => cell(content, lookOfStyle("input"), format);
const result = (content: string, format?: string) => cell(content, {}, format);
// A length, and the same as it is read on a tape.
const inches = (name: string, formula: string, row: number): Row => [
  null,
  null,
  null,
  label(name),
  result(formula, LENGTH),
  result(`=RAFTER.TAPE(E${row})`),
];
const figure = (name: string, formula: string, format: string, says = ""): Row => [
  null,
  null,
  null,
  label(name),
  result(formula, format),
  ...(says ? [note(says)] : []),
];

type Row = BookSheet["rows"][number];

/** The waiting hall of an invented ferry landing: a roof block (A5:B15) and the bid that hangs on it. All its figures and prices are made up. */
const BID: readonly Row[] = [
  [title("Ferry landing, waiting hall: hip roof")],
  [note("An invented job with invented prices. Change a shaded cell: every length, cut and price follows.")],
  [
    note(
      "Geometry only: it proves no strength. Sizes, spans, ties and bracing are for the local code and a licensed designer. Check the first cut.",
    ),
  ],
  [heading("The roof"), heading(""), null, heading("For the bid"), heading("Value"), heading("On the tape")],
  [...pair("Span", "24'"), null, ...inches("Half span", "=RAFTER.INCHES(B5)/2", 5).slice(3)],
  [...pair("Length", "40'"), null, ...figure("Main pitch", "=RAFTER.PITCHDEG(B7)", DEGREES).slice(3)],
  [...pair("Pitch", 6, PITCH), null, ...figure("End pitch", "=RAFTER.PITCHDEG(B8)", DEGREES).slice(3)],
  [
    ...pair("End pitch", 8, PITCH),
    null,
    ...inches("Common, plate line to ridge", "=RAFTER.COMMONLEN(B7,E5,1.5)", 8).slice(3),
  ],
  [...pair("Spacing", 24, INCHES), null, ...inches("Hip, corner to apex", "=RAFTER.HIPLEN(B7,E5,B8)", 9).slice(3)],
  [...pair("Overhang", 18, INCHES), null, ...figure("Slope of the hip", "=RAFTER.HIPDEG(B7,B8)", DEGREES).slice(3)],
  [...pair("Rafter", "2x8"), null, ...inches("Step of the main jacks", "=RAFTER.JACKSTEP(B7,B9,B8)", 11).slice(3)],
  [...pair("Hip", "2x10"), null, ...inches("Step of the end jacks", "=RAFTER.JACKSTEP(B8,B9,B7)", 12).slice(3)],
  [
    ...pair("Ridge", "2x10"),
    null,
    ...inches("A main jack at 48 in, long point", "=RAFTER.JACKLEN(B7,48,1.5,1.5,B8)", 13).slice(3),
  ],
  [
    ...pair("Seat", 3.5, INCHES),
    null,
    ...figure("Saw tilt of the main jacks", "=RAFTER.JACKTILT(B7,B8)", DEGREES).slice(3),
  ],
  [
    ...pair("Set out from", "king common"),
    null,
    ...figure("Saw tilt of the end jacks", "=RAFTER.JACKTILT(B8,B7)", DEGREES).slice(3),
  ],
  [],
  [null, null, null, heading("Jacks"), heading(""), heading("")],
  figure("Jacks in all", "=SUM(Jacks!K2:L60)", "0", "counted on the sheet Jacks"),
  figure("Longest board for a jack", "=MAX(Jacks!I2:I60)", LENGTH),
  figure("Boards for the jacks, foot by foot", "=SUMPRODUCT(Jacks!I2:I60,Jacks!K2:K60+Jacks!L2:L60)/12", '0.0 "ft"'),
  [null, null, null, label("Price of a foot"), input(1.35, MONEY)],
  figure("Lumber for the jacks", "=E20*E21", MONEY),
  [],
  [null, null, null, heading("When a cell is refused"), heading(""), heading("")],
  [
    null,
    null,
    null,
    label("A pitch typed without quotes"),
    result("=RAFTER.PITCHDEG(6/12)"),
    note("Select the cell on the left: the pane says why."),
  ],
  [null, null, null, label("The same with quotes"), result('=RAFTER.PITCHDEG("6/12")', DEGREES)],
];

// Offset to Shortest board are lengths, then comes the saw tilt.
const JACK_ROW: Row = [null, null, ...Array.from({ length: 7 }, () => result("", "0.000")), result("", "0.00")];
const JACKS: readonly Row[] = [
  [heading("=RAFTER.JACKTABLE(Bid!A5:B15)"), ...Array.from({ length: 12 }, () => heading(""))],
  ...Array.from({ length: 60 }, () => JACK_ROW),
];

function pair(name: string, content: string | number, format?: string): [BookCell, BookCell] {
  return [label(name), input(content, format)];
}

const widths = (...sizes: number[]) => sizes.map((size) => ({ size }));

/** The workbook that the bench opens with. */
export const sampleJob: Book = {
  title: "Ferry landing",
  sheets: [
    { name: "Bid", rows: BID, columns: widths(104, 92, 28, 236, 116, 128) },
    {
      name: "Jacks",
      rows: JACKS,
      columns: widths(64, 64, 92, 104, 104, 104, 104, 104, 120, 84, 56, 56, 260),
      frozenRows: 1,
    },
  ],
};
