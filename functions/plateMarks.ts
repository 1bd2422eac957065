import { roofCells } from "./arguments/roofCells.ts";
import type { Unit } from "../src/measure/unit.ts";
import { column, headings, tableOf, type Column } from "../src/registry/columns.ts";
import { worksheetFunction } from "../src/registry/worksheetFunction.ts";
import { plateMarks as listsOf } from "../src/roof/tables/plateMarks.ts";
import type { PlateList, PlatePlace } from "../src/roof/tables/plateList.ts";
import { notesText } from "./words/notes.ts";
import { roof } from "./arguments/roofModel.ts";

/** A mark, and the plate that it stands on. */
interface Marked {
  readonly list: PlateList;
  readonly mark: PlateList["marks"][number];
}

const columns: readonly Column<Marked, Unit>[] = [
  column("Plate", "text", ({ list }) => plateName(list), 140),
  column("Mark", "length", ({ mark }) => mark.mark),
  column(
    "Edge",
    "text",
    ({ list: { hook, place } }) =>
      place?.kind === "ridge" || place?.kind === "wing"
        ? "edge nearer the hook, board beyond it"
        : `${hook} edge, board to its ${hook === "left" ? "right" : "left"}`,
    200,
  ),
  column("Member", "text", ({ mark: { piece, hand } }) => (hand === "plain" ? piece : `${piece} ${hand}`), 110),
  column("Bay", "length", ({ mark }) => mark.bay),
  column("Note", "text", noteOf, 420),
  column("Plates", "count", ({ list }) => list.plates),
];

export const plateMarks = worksheetFunction({
  name: "PLATEMARKS",
  family: "roof",
  summary:
    "Running marks along every plate of a hip roof for one hook of the tape: jacks, king commons and commons in one list.",
  parameters: [roof("roof")],
  result: "table",
  columns,
  returns:
    "a table that spills, with headings; marks to the edge nearer the hook, and bays center to center, in the unit of the block.",
  examples: [
    {
      cells: [roofCells({ Span: 144, Length: 192, Pitch: 6, Spacing: 24 })],
      // prettier-ignore
      result: [
        headings(columns),
        ["Main", 23.25, "left edge, board to its right", "J2 right", 24,
         `hook at the left corner, seen from outside; 2' 0" left at the corner: block it`, 2],
        ["Main", 47.25, "left edge, board to its right", "J1 right", 24, "", 2],
        ["Main", 71.25, "left edge, board to its right", "K", 24, "", 2],
        ["Main", 95.25, "left edge, board to its right", "C", 24, "", 2],
        ["Main", 119.25, "left edge, board to its right", "K", 24, "", 2],
        ["Main", 143.25, "left edge, board to its right", "J1 left", 24, "", 2],
        ["Main", 167.25, "left edge, board to its right", "J2 left", 24, `2' 0" left at the corner: block it`, 2],
        ["End", 23.25, "left edge, board to its right", "J2 right", 24,
         `hook at the left corner, seen from outside; 2' 0" left at the corner: block it`, 2],
        ["End", 47.25, "left edge, board to its right", "J1 right", 24, "", 2],
        ["End", 71.25, "left edge, board to its right", "KE", 24, "", 2],
        ["End", 95.25, "left edge, board to its right", "J1 left", 24, "", 2],
        ["End", 119.25, "left edge, board to its right", "J2 left", 24, `2' 0" left at the corner: block it`, 2],
      ],
      tolerance: 0.0001,
      source:
        "set out by hand: king common at the end's run of 72, jacks at 24 and 48 less, marks half a rafter nearer the corner",
    },
    {
      cells: [roofCells({ Span: "3 m", Length: "4.5 m", Pitch: 8, Ends: "hip and gable" })],
      // prettier-ignore
      result: [
        headings(columns),
        ["Main, hooked left", 281, "left edge, board to its right", "J2 right", 300,
         "hook at the left corner, seen from outside; 300 mm left at the corner: block it", 1],
        ["Main, hooked left", 881, "left edge, board to its right", "J1 right", 600, "", 1],
        ["Main, hooked left", 1481, "left edge, board to its right", "K", 600, "", 1],
        ["Main, hooked left", 2081, "left edge, board to its right", "C", 600, "", 1],
        ["Main, hooked left", 2681, "left edge, board to its right", "C", 600, "", 1],
        ["Main, hooked left", 3281, "left edge, board to its right", "C", 600, "", 1],
        ["Main, hooked left", 3881, "left edge, board to its right", "C", 600, "", 1],
        ["Main, hooked left", 4462, "left edge, board to its right", "C", 581,
         "at the gable, outer face on its plate line; last bay 581 mm", 1],
        ["Main, hooked right", 281, "right edge, board to its left", "J2 left", 300,
         "hook at the right corner, seen from outside; 300 mm left at the corner: block it", 1],
        ["Main, hooked right", 881, "right edge, board to its left", "J1 left", 600, "", 1],
        ["Main, hooked right", 1481, "right edge, board to its left", "K", 600, "", 1],
        ["Main, hooked right", 2081, "right edge, board to its left", "C", 600, "", 1],
        ["Main, hooked right", 2681, "right edge, board to its left", "C", 600, "", 1],
        ["Main, hooked right", 3281, "right edge, board to its left", "C", 600, "", 1],
        ["Main, hooked right", 3881, "right edge, board to its left", "C", 600, "", 1],
        ["Main, hooked right", 4462, "right edge, board to its left", "C", 581,
         "at the gable, outer face on its plate line; last bay 581 mm", 1],
        ["End", 281, "left edge, board to its right", "J2 right", 300,
         "hook at the left corner, seen from outside; 300 mm left at the corner: block it", 1],
        ["End", 881, "left edge, board to its right", "J1 right", 600, "", 1],
        ["End", 1481, "left edge, board to its right", "KE", 600, "", 1],
        ["End", 2081, "left edge, board to its right", "J1 left", 600, "", 1],
        ["End", 2681, "left edge, board to its right", "J2 left", 600, "300 mm left at the corner: block it", 1],
      ],
      tolerance: 0.0001,
    },
  ],
  compute: ({ roof: { frame } }) =>
    tableOf(
      columns,
      listsOf(frame).flatMap((list) => list.marks.map((mark) => ({ list, mark }))),
      frame.spec.unit,
    ),
});

/** "Main" where one list does for both; else which end of the plate the tape is hooked at. */
export function plateName({ plate, place, end, hook, plates }: PlateList): string {
  if (place) return placeName(place);
  return end || plates === 2 ? plate : `${plate}, hooked ${hook}`;
}

function placeName(place: PlatePlace): string {
  switch (place.kind) {
    case "wall": {
      const wall = place.wall === "front" ? "Front" : "Back";
      if (place.after && place.before) return `${wall}, ${place.after} to ${place.before}`;
      if (place.before) return `${wall}, left of wing ${place.before}`;
      return place.after ? `${wall}, right of wing ${place.after}` : wall;
    }
    case "end":
      return place.side === null ? "End" : place.side === "left" ? "Left end" : "Right end";
    case "wing":
      return `Wing ${place.wing}, ${place.part}`;
    case "ridge":
      return place.wing === "" ? "Main ridge" : `Wing ${place.wing} ridge`;
  }
}

/** Where the tape is hooked. */
export function hookText({ place, hook }: PlateList): string {
  if (place?.kind === "ridge")
    return place.wing === "" ? "hook at the left end, seen from the front" : "hook at the outer end";
  if (place?.kind === "wing" && place.part !== "end") return "hook at the outer corner";
  if (place?.kind === "wall" && place.after && place.before) return `hook at the inner corner of wing ${place.after}`;
  return `hook at the ${hook} corner, seen from outside`;
}

/** The first mark of a plate also says where the tape is hooked. */
function noteOf({ list, mark }: Marked, unit: Unit): string {
  return [
    ...(mark === list.marks[0] ? [hookText(list)] : []),
    ...(mark.notes.length === 0 ? [] : [notesText(mark.notes, unit)]),
  ].join("; ");
}
