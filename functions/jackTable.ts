import { roofCells } from "./arguments/roofCells.ts";
import type { Unit } from "../src/measure/unit.ts";
import { column, headings, tableOf, type Column } from "../src/registry/columns.ts";
import { worksheetFunction } from "../src/registry/worksheetFunction.ts";
import { sideName } from "../src/roof/frame/piece.ts";
import { jackPlaces, type JackPlace } from "../src/roof/tables/jackPlaces.ts";
import { roof } from "./arguments/roofModel.ts";
import { notesText } from "./words/notes.ts";

const columns: readonly Column<JackPlace, Unit>[] = [
  column("Piece", "text", ({ piece }) => piece.mark),
  column("Side", "text", ({ piece }) => sideName(piece.planes)),
  column("Offset", "length", ({ offset }) => offset!),
  column("Plate mark", "length", ({ foot }) => (foot.bearer === null ? (foot.mark ?? "") : "")),
  column("Hip mark", "length", ({ head }) => head.mark ?? ""),
  column("Long point", "length", ({ piece }) => piece.longPoint),
  column("Short point", "length", ({ piece }) => piece.shortPoint),
  column("Tape", "length", ({ piece }) => piece.tape ?? ""),
  column("Shortest board", "length", ({ piece }) => piece.shortestBoard),
  column("Saw tilt", "angle", ({ head }) => head.tilts[0] ?? "", 110),
  column("Left", "count", ({ left }) => left),
  column("Right", "count", ({ right }) => right),
  column("Note", "text", ({ piece }, unit) => notesText(piece.notes, unit), 420),
  column("Plumb cut", "angle", ({ piece }) => piece.headCut),
  column("Edge angle", "angle", ({ head }) => head.edge ?? ""),
  column("From hip head", "length", ({ head }) => head.markFromHead ?? ""),
];

/** Only where the block has a wing, so that tables of old blocks stay as wide as they were. */
export const footColumns: readonly Column<JackPlace, Unit>[] = [
  column("Foot", "text", ({ foot }) => foot.bearer ?? ""),
  column("Foot tilt", "angle", ({ foot }) => (foot.bearer === null ? "" : (foot.tilts[0] ?? ""))),
  column("Foot mark", "length", ({ foot }) => (foot.bearer === null ? "" : (foot.mark ?? ""))),
];

/** The examples' roofs. */
const SMALL = roofCells({ Span: 144, Length: 144, Pitch: 6, Spacing: 24 });
const GABLE = roofCells({ Span: `12'`, Length: `20'`, Pitch: 6, Seat: 3.5, Ends: "hip and gable" });

export const jackTable = worksheetFunction({
  name: "JACKTABLE",
  family: "roof",
  summary: "Jack schedule of a hip roof: a row for each distinct jack, longest first.",
  parameters: [roof("roof")],
  result: "table",
  columns,
  returns: "a table that spills, with headings; lengths in the unit of the block, angles in degrees.",
  examples: [
    {
      cells: [SMALL],
      // prettier-ignore
      result: [
        headings(columns),
        ["J1", "Both", 48, 47.25, 71.2045, 53.3183, 51.6413, 55.4255, 55.2857, 45, 4, 4, "", 26.5651, 48.1897, 35.6705],
        ["J2", "Both", 24, 23.25, 35.2045, 26.4855, 24.8084, 28.7236, 28.4529, 45, 4, 4, `2' 0" left at the corner: block it`, 26.5651, 48.1897,
         71.6705],
      ],
      tolerance: 0.0001,
      source:
        "NAVEDTRA 14044, ch. 2: half the 45-degree thickness of the hip off each jack; the framing-square table: common difference 26.83 in and hip 18 in per foot at rise 6",
    },
    {
      cells: [GABLE],
      // prettier-ignore
      result: [
        headings(columns),
        ["J1", "Both", 48, 47.25, 71.2045, 53.3183, 51.6413, 55.4255, 55.2857, 45, 2, 2, "", 26.5651, 48.1897, 35.6705],
        ["J2", "Both", 24, 23.25, 35.2045, 26.4855, 24.8084, 28.7236, 28.4529, 45, 2, 2, `2' 0" left at the corner: block it`, 26.5651, 48.1897,
         71.6705],
      ],
      tolerance: 0.0001,
    },
  ],
  compute: ({ roof: { frame, pieces } }) =>
    tableOf(
      frame.spec.wings.length === 0 ? columns : [...columns, ...footColumns],
      jackPlaces(frame, pieces),
      frame.spec.unit,
    ),
});
