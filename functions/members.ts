import { roofCells } from "./arguments/roofCells.ts";
import type { Unit } from "../src/measure/unit.ts";
import { column, headings, tableOf, type Column } from "../src/registry/columns.ts";
import { worksheetFunction } from "../src/registry/worksheetFunction.ts";
import { sideName, type Piece } from "../src/roof/frame/piece.ts";
import { pieceBoardFeet } from "../src/roof/tables/pieceBoardFeet.ts";
import { roof } from "./arguments/roofModel.ts";
import { notesText } from "./words/notes.ts";
import { tiltCell } from "./words/tiltCell.ts";

/** A length or an angle that a piece may not have is blank then, never 0. */
const columns: readonly Column<Piece, Unit>[] = [
  column("Piece", "text", ({ mark }) => mark),
  column("Member", "text", ({ member }) => member, 110),
  column("Side", "text", ({ planes }) => (planes.length === 0 ? "" : sideName(planes))),
  column("Left", "count", ({ left }) => left),
  column("Right", "count", ({ right }) => right),
  column("Plain", "count", ({ plain }) => plain),
  column("Long point", "length", ({ longPoint }) => longPoint),
  column("Shortest board", "length", ({ shortestBoard }) => shortestBoard),
  column("Size", "text", ({ section }) => section.name, 100),
  column("Head cut", "angle", ({ headCut }) => headCut),
  column("Saw tilt", "angle", tiltCell, 110),
  column("Board feet", "amount", pieceBoardFeet),
  column("Note", "text", ({ notes }, unit) => notesText(notes, unit), 420),
  column("Line length", "length", ({ lineLength }) => lineLength),
  column("Short point", "length", ({ shortPoint }) => shortPoint),
  column("Tape", "length", ({ tape }) => tape ?? ""),
  column("Edge angle", "angle", ({ head }) => head.edge ?? ""),
  column("Tail", "length", ({ tail }) => tail),
  column("Heel", "length", ({ heel }) => heel),
  column("Seat", "length", ({ seat }) => seat),
  column("Notch", "length", ({ notch }) => notch),
];

/** The examples' roofs. */
const SMALL = roofCells({ Span: 144, Length: 144, Pitch: 6, Spacing: 24 });
const GABLE = roofCells({ Span: `12'`, Length: `20'`, Pitch: 6, Seat: 3.5, Ends: "hip and gable" });

export const members = worksheetFunction({
  name: "MEMBERS",
  family: "roof",
  summary: "Every distinct piece of a hip roof: ridge, commons, king commons, hips and jacks, with counts by hand.",
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
        ["K", "king common", "Main", 0, 0, 2, 80.4984, 82.4658, "2x6", 26.5651, "", 13.7443,
         `top stands 3/8" above the end slope: plane it off; meets its opposite: no ridge deduction`, 80.4984, 80.4984, 82.5596, "", 0,
         4.3992, 3.5, 1.5652],
        ["KE", "king common", "End", 0, 0, 2, 79.6599, 81.6273, "2x6", 26.5651, "", 13.6045,
         `butts the ridge end; 3/4" (level) already deducted`, 80.4984, 79.6599, 81.7221, "", 0, 4.3992, 3.5, 1.5652],
        ["H", "hip", "", 0, 0, 4, 106.875, 108.253, "2x8", 19.4712, "45.00 / 45.00", 48.1124, `dropped 17/64", plumb`, 108, 106.875, "", "",
         0, 4.134, 10.0572, 3.3524],
        ["J1", "jack", "Both", 4, 4, 0, 53.3183, 55.2857, "2x6", 26.5651, 45, 36.8571, "", 53.6656, 51.6413, 55.4255, 48.1897, 0, 4.3992,
         3.5, 1.5652],
        ["J2", "jack", "Both", 4, 4, 0, 26.4855, 28.4529, "2x6", 26.5651, 45, 18.9686, `2' 0" left at the corner: block it`, 26.8328, 24.8084,
         28.7236, 48.1897, 0, 4.3992, 3.5, 1.5652],
      ],
      tolerance: 0.0001,
      source:
        "NAVEDTRA 14044, ch. 2: hips shortened half the 45-degree thickness of the commons; Radford, vol. 3: hip 18 in per foot of run at rise 6; counted by hand",
    },
    {
      cells: [GABLE],
      // prettier-ignore
      result: [
        headings(columns),
        ["R", "ridge", "", 0, 0, 1, 168.75, 168.75, "2x8", 0, "", 18.75,
         `runs 3/4" past each apex; ends on the gable's plate line; frame a gable overhang outside it`, 168, 168.75, "", "", 0, 0, 0, 0],
        ["C", "common", "Main", 0, 0, 14, 79.6599, 81.6273, "2x6", 26.5651, "", 95.2318,
         `last pair stands at the gable, outer face on its plate line; last bay 1' 11 1/4"`, 80.4984, 79.6599, 81.7221, "", 0, 4.3992, 3.5,
         1.5652],
        ["K", "king common", "Main", 0, 0, 2, 79.6599, 81.6273, "2x6", 26.5651, "", 13.6045, "", 80.4984, 79.6599, 81.7221, "", 0, 4.3992,
         3.5, 1.5652],
        ["KE", "king common", "End", 0, 0, 1, 79.6599, 81.6273, "2x6", 26.5651, "", 6.8023,
         `butts the ridge end; 3/4" (level) already deducted`, 80.4984, 79.6599, 81.7221, "", 0, 4.3992, 3.5, 1.5652],
        ["H", "hip", "", 0, 0, 2, 106.875, 108.253, "2x8", 19.4712, "45.00 / 45.00", 24.0562, `dropped 17/64", plumb`, 108, 106.875, "", "",
         0, 4.134, 10.0572, 3.3524],
        ["J1", "jack", "Both", 2, 2, 0, 53.3183, 55.2857, "2x6", 26.5651, 45, 18.4286, "", 53.6656, 51.6413, 55.4255, 48.1897, 0, 4.3992,
         3.5, 1.5652],
        ["J2", "jack", "Both", 2, 2, 0, 26.4855, 28.4529, "2x6", 26.5651, 45, 9.4843, `2' 0" left at the corner: block it`, 26.8328, 24.8084,
         28.7236, 48.1897, 0, 4.3992, 3.5, 1.5652],
      ],
      tolerance: 0.0001,
    },
  ],
  compute: ({ roof: { frame, pieces, eaves } }) => tableOf(columns, [...pieces, ...eaves], frame.spec.unit),
});
