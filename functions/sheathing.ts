import { roofCells } from "./arguments/roofCells.ts";
import { column, headings, tableOf, type Column } from "../src/registry/columns.ts";
import { worksheetFunction } from "../src/registry/worksheetFunction.ts";
import { leanOf, type Course, type CoursePiece, type Sheet } from "../src/roof/tables/sheathingCourses.ts";
import { takeOff } from "../src/roof/tables/takeOff.ts";
import { roof } from "./arguments/roofModel.ts";

/** The last row, null, is the sum. */
type Row = Course | null;

interface Shared {
  readonly sheet: Sheet;
  readonly sheets: number;
}

const first = (course: Course): CoursePiece => course.runs[0]!;
/** The piece at the right end; undefined where one piece is the whole course. */
const last = ({ runs }: Course): CoursePiece | undefined => (runs.length > 1 ? runs.at(-1) : undefined);
const wholeIn = ({ runs }: Course): number => runs.slice(1, -1).reduce((sum, { times }) => sum + times, 0);
const longOf = ({ from, to }: CoursePiece): number => to - from;
const sheetOf = ({ sheet, offCut }: CoursePiece): string => (offCut ? `off-cut of sheet ${sheet}` : `sheet ${sheet}`);

const columns: readonly Column<Row, Shared>[] = [
  column("Plane", "text", (course) => (course ? `${course.side} ${course.plane}` : "All planes"), 100),
  column("Course", "count", (course) => course?.course ?? ""),
  column("Lower edge", "length", (course) => course?.length ?? ""),
  column("First piece", "length", (course) => (course ? longOf(first(course)) : "")),
  column("Cut from", "text", (course) => (course ? sheetOf(first(course)) : ""), 140),
  column("Left angle", "angle", (course, { sheet }) => (course ? leanOf(first(course).left, sheet) : "")),
  column("Whole sheets", "count", (course) => (course ? wholeIn(course) : "")),
  column("Last piece", "length", (course) => (course && last(course) ? longOf(last(course)!) : "")),
  column("Last cut from", "text", (course) => (course && last(course) ? sheetOf(last(course)!) : ""), 140),
  column("Right angle", "angle", (course, { sheet }) => (course ? leanOf(course.runs.at(-1)!.right, sheet) : "")),
  column("New sheets", "count", (course, { sheets }) => course?.sheets ?? sheets),
];

export const sheathing = worksheetFunction({
  name: "SHEATHING",
  family: "roof",
  summary:
    "Lists the sheathing course by course: first and last piece, their angle on the sheet, and the sheet each comes from.",
  parameters: [roof("roof")],
  result: "table",
  columns,
  returns:
    "a table that spills, with headings; lengths along the lower edge in the unit of the block, angles from square across the sheet. Sheets of 4 by 8 feet, or 1200 by 2400 mm, lie along the eave. An off-cut of two bays or more is turned end for end and used again, on any plane. Whole sheets follow the first piece. The last row counts the sheets.",
  examples: [
    {
      cells: [roofCells({ Span: 192, Length: 288, Pitch: 9, Overhang: 16 })],
      // prettier-ignore
      result: [
        headings(columns),
        ["Main 1", 1, 320, 67.2, "sheet 1", 38.6598, 2, 60.8, "sheet 4", 38.6598, 4],
        ["Main 1", 2, 243.2, 73.6, "sheet 5", 38.6598, 1, 73.6, "off-cut of sheet 4", 38.6598, 2],
        ["Main 1", 3, 166.4, 70.4, "sheet 7", 38.6598, 0, 96, "sheet 8", 38.6598, 2],
        ["Main 2", 1, 320, 67.2, "off-cut of sheet 1", 38.6598, 2, 60.8, "sheet 11", 38.6598, 3],
        ["Main 2", 2, 243.2, 73.6, "sheet 12", 38.6598, 1, 73.6, "off-cut of sheet 11", 38.6598, 2],
        ["Main 2", 3, 166.4, 70.4, "sheet 14", 38.6598, 0, 96, "sheet 15", 38.6598, 2],
        ["End 1", 1, 224, 60.8, "off-cut of sheet 5", 38.6598, 1, 67.2, "sheet 17", 38.6598, 2],
        ["End 1", 2, 147.2, 80, "sheet 18", 38.6598, 0, 67.2, "off-cut of sheet 17", 38.6598, 1],
        ["End 1", 3, 70.4, 70.4, "sheet 19", 38.6598, 0, "", "", 38.6598, 1],
        ["End 2", 1, 224, 64, "off-cut of sheet 7", 38.6598, 1, 64, "off-cut of sheet 19", 38.6598, 1],
        ["End 2", 2, 147.2, 60.8, "off-cut of sheet 12", 38.6598, 0, 86.4, "sheet 21", 38.6598, 1],
        ["End 2", 3, 70.4, 70.4, "sheet 22", 38.6598, 0, "", "", 38.6598, 1],
        ["All planes", "", "", "", "", "", "", "", "", "", 22],
      ],
      tolerance: 0.0001,
      source:
        "by hand: courses of 320, 243.2 and 166.4 in on a main side, of 224, 147.2 and 70.4 on an end, each end leaning 48 x 4/5 (3-4-5); a sheet cut on the slant gives two ends whose lengths half way up add up to 96",
    },
    {
      cells: [roofCells({ Span: "5 m", Length: "8 m", Pitch: 6, Ends: "hip and gable" })],
      // prettier-ignore
      result: [
        headings(columns),
        ["Main 1", 1, 8000, 1736.6563, "sheet 1", 41.8103, 2, 1463.3437, "sheet 4", 0, 4],
        ["Main 1", 2, 6926.6874, 2126.6874, "sheet 5", 41.8103, 1, 2400, "sheet 7", 0, 3],
        ["Main 1", 3, 5853.3747, 1376.6874, "sheet 8", 41.8103, 1, 2076.6874, "off-cut of sheet 8", 0, 1],
        ["Main 2", 1, 8000, 2000, "sheet 9", 0, 2, 1200, "sheet 12", 41.8103, 4],
        ["Main 2", 2, 6926.6874, 2400, "sheet 13", 0, 1, 2126.6874, "off-cut of sheet 12", 41.8103, 2],
        ["Main 2", 3, 5853.3747, 2253.3747, "sheet 15", 0, 1, 1200, "off-cut of sheet 15", 41.8103, 1],
        ["End 1", 1, 5000, 1346.6253, "off-cut of sheet 5", 41.8103, 1, 1253.3747, "sheet 17", 41.8103, 2],
        ["End 1", 2, 2853.3747, 1653.3747, "off-cut of sheet 1", 41.8103, 0, 1200, "off-cut of sheet 17", 41.8103, 0],
        ["End 1", 3, 706.7495, 706.7495, "off-cut of sheet 15", 41.8103, 0, "", "", 41.8103, 0],
        ["All planes", "", "", "", "", "", "", "", "", "", 17],
      ],
      tolerance: 0.0001,
    },
  ],
  compute({ roof: { frame, pieces } }) {
    const { courses, sheet } = takeOff(frame, pieces);
    const sheets = courses.reduce((sum, course) => sum + course.sheets, 0);
    return tableOf(columns, [...courses, null], { sheet, sheets });
  },
});
