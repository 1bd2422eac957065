import { roofCells } from "./arguments/roofCells.ts";
import type { Unit } from "../src/measure/unit.ts";
import { column, headings, tableOf, type Column } from "../src/registry/columns.ts";
import { worksheetFunction } from "../src/registry/worksheetFunction.ts";
import { sawReaches } from "../src/roof/members/sawReach.ts";
import { sawSettings as settingsOf, type CutAt, type SawSetting } from "../src/roof/tables/sawSettings.ts";
import { roof } from "./arguments/roofModel.ts";

const marksAt =
  (at: CutAt) =>
  ({ pieces }: SawSetting) =>
    pieces[at]?.join(", ") ?? "";

const columns: readonly Column<SawSetting, Unit>[] = [
  column("Plumb cut", "angle", ({ plumb }) => plumb),
  column("Saw tilt", "angle", ({ tilt }) => tilt),
  column("Heads of", "text", marksAt("head"), 200),
  column("Feet of", "text", marksAt("foot"), 120),
  column("Tails of", "text", marksAt("tail"), 200),
  column("Side cut", "angle", ({ side }) => side),
  column("Note", "text", noteOf, 420),
];

export const sawSettings = worksheetFunction({
  name: "SAWSETTINGS",
  family: "roof",
  summary: "Lists every setting of the saw for a roof, by plumb cut and tilt, with the pieces that take it.",
  parameters: [roof("roof")],
  result: "table",
  columns,
  returns:
    "a table that spills, with headings; degrees. The plumb cut is from square across the board, the tilt from square; the side cut is measured across a square top, to check. A note names a cut that a saw with a 7 1/4 in blade does not reach through in one pass.",
  examples: [
    {
      cells: [roofCells({ Span: 192, Length: 288, Pitch: 6, Overhang: 16 })],
      // prettier-ignore
      result: [
        headings(columns),
        [0, 0, "R", "", "", 0, ""],
        [19.4712, 45, "H", "", "H", 46.6861, ""],
        [26.5651, 0, "C, K, KE", "", "C, K, KE, J1, J2, J3", 0, ""],
        [26.5651, 45, "J1, J2, J3", "", "", 48.1897, ""],
      ],
      tolerance: 0.0001,
      source:
        "Radford's Cyclopedia of Construction, vol. 3: common on 12 and 6, hip on 17 and 6; trade practice: a regular jack's head is cut with the saw tilted 45 degrees",
    },
    {
      cells: [roofCells({ Span: 192, Length: 288, Pitch: 9, "End pitch": 12 })],
      // prettier-ignore
      result: [
        headings(columns),
        [0, 0, "R", "", "", 0, ""],
        [30.9638, 36.8699, "H", "", "", 41.1743, ""],
        [30.9638, 53.1301, "H", "", "", 57.2541,
         `NOT IN ONE PASS, past a 7 1/4" (184 mm) blade: mark both faces and the side cut, cut from both and finish by hand`],
        [36.8699, 0, "C, K", "", "", 0, ""],
        [36.8699, 53.1301, "JM1, JM2", "", "", 59.0362,
         `NOT IN ONE PASS, past a 7 1/4" (184 mm) blade: mark both faces and the side cut, cut from both and finish by hand`],
        [45, 0, "KE", "", "", 0, ""],
        [45, 36.8699, "JE1, JE2, JE3", "", "", 46.6861, ""],
      ],
      tolerance: 0.0001,
    },
  ],
  // What is cut in place has no setting.
  compute: ({ roof: { frame, pieces, eaves } }) =>
    tableOf(
      columns,
      settingsOf([
        ...pieces,
        ...eaves.filter(({ notes }) => !notes.some(({ kind }) => kind === "eave corners in place")),
      ]),
      frame.spec.unit,
    ),
});

function noteOf({ tilt, thickness }: SawSetting, unit: Unit): string {
  return sawReaches(tilt, thickness, unit)
    ? ""
    : `NOT IN ONE PASS, past a 7 1/4" (184 mm) blade: mark both faces and the side cut, cut from both and finish by hand`;
}
