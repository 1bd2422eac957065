import { pieceBoardFeet } from "../src/roof/pieceBoardFeet.ts";
import type { Piece } from "../src/roof/piece.ts";
import { worksheetFunction, type Cell } from "../src/registry/worksheetFunction.ts";
import { cautions } from "./cautions.ts";
import { compare } from "./compare.ts";
import { notesText } from "./notes.ts";
import { plateMarks } from "./plateMarks.ts";
import { roof } from "./roofModel.ts";
import { salvage } from "./salvage.ts";
import { takeOffFunction } from "./takeOff.ts";

const family = "roof";
const small = [["Span", 144], ["Length", 144], ["Pitch", 6], ["Spacing", 24]] as const;
const gable = [["Span", `12'`], ["Length", `20'`], ["Pitch", 6], ["Seat", 3.5], ["Ends", "hip and gable"]] as const;

export const JACK_HEADINGS = ["Piece", "Side", "Offset", "Plate mark", "Hip mark", "Long point", "Short point", "Tape", "Shortest board", "Saw tilt", "Left", "Right", "Note", "Plumb cut", "Edge angle", "From hip head"] as const;
export const MEMBER_HEADINGS = ["Piece", "Member", "Side", "Left", "Right", "Plain", "Long point", "Shortest board", "Size", "Head cut", "Saw tilt", "Board feet", "Note", "Line length", "Short point", "Tape", "Edge angle", "Tail", "Heel", "Seat", "Notch"] as const;

/** A length or angle that a piece may not have: blank then, never 0. */
const orBlank = (value: number | null): Cell => value ?? "";

/** Two tilts stand in one cell as text, 36.87 / 53.13; one is a number; a square cut is blank. */
function tiltCell({ tilts }: Piece): Cell {
  if (tilts.length === 2) return tilts.map((tilt) => tilt.toFixed(2)).join(" / ");
  return tilts[0] ?? "";
}

export const jackTable = worksheetFunction({
  name: "JACKTABLE", family,
  summary: "Jack schedule of a hip roof: a row for each distinct jack, longest first.",
  parameters: [roof()],
  returns: "a table that spills, with headings; lengths in the unit of the block, angles in degrees.",
  examples: [
    {
      cells: [small],
      result: [
        [...JACK_HEADINGS],
        ["J1", "Both", 48, 47.25, 71.2045, 53.3183, 51.6413, 55.4255, 55.2857, 45, 4, 4, "", 26.5651, 48.1897, 35.6705],
        ["J2", "Both", 24, 23.25, 35.2045, 26.4855, 24.8084, 28.7236, 28.4529, 45, 4, 4, `corner bay 2' 0", blocked`, 26.5651, 48.1897, 71.6705],
      ],
      tolerance: 0.0001,
      source: "NAVEDTRA 14044, ch. 2: half the 45-degree thickness of the hip off each jack; the framing-square table: common difference 26.83 in and hip 18 in per foot at rise 6",
    },
    {
      cells: [gable],
      result: [
        [...JACK_HEADINGS],
        ["J1", "Both", 48, 47.25, 71.2045, 53.3183, 51.6413, 55.4255, 55.2857, 45, 2, 2, "", 26.5651, 48.1897, 35.6705],
        ["J2", "Both", 24, 23.25, 35.2045, 26.4855, 24.8084, 28.7236, 28.4529, 45, 2, 2, `corner bay 2' 0", blocked`, 26.5651, 48.1897, 71.6705],
      ],
      tolerance: 0.0001,
    },
  ],
  compute({ frame, pieces }) {
    const rows = pieces.filter(({ member }) => member === "jack").map((p): Cell[] => [
      p.mark, p.side ?? "", p.offset!, p.plateMark!, p.hipMark!, p.longPoint, p.shortPoint, p.tape!, p.shortestBoard, tiltCell(p), p.left, p.right,
      notesText(p.notes, frame.spec.unit), p.headCut, p.edge!, p.hipMarkFromHead!,
    ]);
    return [[...JACK_HEADINGS], ...rows];
  },
});

export const members = worksheetFunction({
  name: "MEMBERS", family,
  summary: "Every distinct piece of a hip roof: ridge, commons, king commons, hips and jacks, with counts by hand.",
  parameters: [roof()],
  returns: "a table that spills, with headings; lengths in the unit of the block, angles in degrees.",
  examples: [
    {
      cells: [small],
      result: [
        [...MEMBER_HEADINGS],
        ["K", "king common", "Main", 0, 0, 2, 80.4984, 82.4658, "2x6", 26.5651, "", 13.7443, `stands 3/8" above the end plane at the apex: bevel; meets its opposite, nothing taken off`, 80.4984, 80.4984, 82.5596, "", 0, 4.3992, 3.5, 1.5652],
        ["KE", "king common", "End", 0, 0, 2, 79.6599, 81.6273, "2x6", 26.5651, "", 13.6045, `butts the apex: 3/4", level, is off its lengths`, 80.4984, 79.6599, 81.7221, "", 0, 4.3992, 3.5, 1.5652],
        ["H", "hip", "", 0, 0, 4, 106.875, 108.253, "2x8", 19.4712, "45.00 / 45.00", 48.1124, `dropped 17/64", plumb`, 108, 106.875, "", "", 0, 4.134, 10.0572, 3.3524],
        ["J1", "jack", "Both", 4, 4, 0, 53.3183, 55.2857, "2x6", 26.5651, 45, 36.8571, "", 53.6656, 51.6413, 55.4255, 48.1897, 0, 4.3992, 3.5, 1.5652],
        ["J2", "jack", "Both", 4, 4, 0, 26.4855, 28.4529, "2x6", 26.5651, 45, 18.9686, `corner bay 2' 0", blocked`, 26.8328, 24.8084, 28.7236, 48.1897, 0, 4.3992, 3.5, 1.5652],
      ],
      tolerance: 0.0001,
      source: "NAVEDTRA 14044, ch. 2: hips shortened half the 45-degree thickness of the commons; Radford, vol. 3: hip 18 in per foot of run at rise 6; counted by hand",
    },
    {
      cells: [gable],
      result: [
        [...MEMBER_HEADINGS],
        ["R", "ridge", "", 0, 0, 1, 168.75, 168.75, "2x8", 0, "", 18.75, `runs 3/4" past each apex; ends on the gable's plate line; gable overhang is framed outside it`, 168, 168.75, "", "", 0, 0, 0, 0],
        ["C", "common", "Main", 0, 0, 14, 79.6599, 81.6273, "2x6", 26.5651, "", 95.2318, `last pair at the gable, outer face on its plate line; last bay 1' 11 1/4"`, 80.4984, 79.6599, 81.7221, "", 0, 4.3992, 3.5, 1.5652],
        ["K", "king common", "Main", 0, 0, 2, 79.6599, 81.6273, "2x6", 26.5651, "", 13.6045, "", 80.4984, 79.6599, 81.7221, "", 0, 4.3992, 3.5, 1.5652],
        ["KE", "king common", "End", 0, 0, 1, 79.6599, 81.6273, "2x6", 26.5651, "", 6.8023, `butts the apex: 3/4", level, is off its lengths`, 80.4984, 79.6599, 81.7221, "", 0, 4.3992, 3.5, 1.5652],
        ["H", "hip", "", 0, 0, 2, 106.875, 108.253, "2x8", 19.4712, "45.00 / 45.00", 24.0562, `dropped 17/64", plumb`, 108, 106.875, "", "", 0, 4.134, 10.0572, 3.3524],
        ["J1", "jack", "Both", 2, 2, 0, 53.3183, 55.2857, "2x6", 26.5651, 45, 18.4286, "", 53.6656, 51.6413, 55.4255, 48.1897, 0, 4.3992, 3.5, 1.5652],
        ["J2", "jack", "Both", 2, 2, 0, 26.4855, 28.4529, "2x6", 26.5651, 45, 9.4843, `corner bay 2' 0", blocked`, 26.8328, 24.8084, 28.7236, 48.1897, 0, 4.3992, 3.5, 1.5652],
      ],
      tolerance: 0.0001,
    },
  ],
  compute({ frame, pieces }) {
    const rows = pieces.map((p): Cell[] => [
      p.mark, p.member, p.side ?? "", p.left, p.right, p.plain, p.longPoint, p.shortestBoard, p.section.name, p.headCut, tiltCell(p), pieceBoardFeet(p, frame.spec.unit), notesText(p.notes, frame.spec.unit),
      p.lineLength, p.shortPoint, orBlank(p.tape), orBlank(p.edge), p.tail, p.heel, p.seat, p.notch,
    ]);
    return [[...MEMBER_HEADINGS], ...rows];
  },
});

export const roofs = [jackTable, members, plateMarks, takeOffFunction, cautions, compare, salvage];
