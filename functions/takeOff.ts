import { roofCells } from "./arguments/roofCells.ts";
import { slopeAngle } from "../src/geometry/angle.ts";
import { lengthText } from "../src/measure/lengthText.ts";
import type { Unit } from "../src/measure/unit.ts";
import { column, headings, tableOf, type Column } from "../src/registry/columns.ts";
import { worksheetFunction } from "../src/registry/worksheetFunction.ts";
import { ridgeIn } from "../src/roof/frame/frame.ts";
import { isLaid } from "../src/roof/frame/laidOver.ts";
import type { PlaneGroup } from "../src/roof/tables/planeGroups.ts";
import type { Course } from "../src/roof/tables/sheathingCourses.ts";
import { spareRafter, takeOff as totalsOf, type SizeTotal, type TakeOff } from "../src/roof/tables/takeOff.ts";
import { eavesOf, hipsHow, valleysHow } from "./words/takeOffHow.ts";
import { roof, type RoofModel } from "./arguments/roofModel.ts";

interface Item {
  readonly item: string;
  readonly amount: number;
  readonly unit: string;
  readonly how: string;
}

const columns: readonly Column<Item, void>[] = [
  column("Item", "text", ({ item }) => item, 225),
  column("Amount", "amount", ({ amount }) => amount),
  column("Unit", "text", ({ unit }) => unit, 200),
  column("How", "text", ({ how }) => how, 480),
];

/** How lengths and areas are priced in either unit of a block: the names, and how much of the block's unit makes one. */
const PRICED = {
  in: {
    length: "ft",
    perLength: 12,
    area: "sq ft",
    perArea: 144,
    roofing: "squares",
    perRoofing: 14400,
    sheets: "sheets of 4 x 8 ft",
  },
  mm: {
    length: "m",
    perLength: 1000,
    area: "m2",
    perArea: 1e6,
    roofing: "m2",
    perRoofing: 1e6,
    sheets: "sheets of 1200 x 2400 mm",
  },
} as const;

/** Square units of a block as they are priced, in squares (m2 in metric) for roofing. */
export function pricedArea(area: number, unit: Unit, as: "area" | "roofing" = "area"): number {
  return area / (as === "area" ? PRICED[unit].perArea : PRICED[unit].perRoofing);
}

/** What waste does to an amount. */
export const withWaste = (amount: number, waste: number): number => amount * (1 + waste / 100);

export const takeOff = worksheetFunction({
  name: "TAKEOFF",
  family: "roof",
  summary:
    "Everything an estimator prices of a hip roof: lineal lengths, areas by plane, sheathing, roofing and lumber by size.",
  parameters: [roof("roof")],
  result: "table",
  columns,
  returns:
    "a table that spills, with headings; feet, square feet and squares, or meters and square meters for a metric block.",
  examples: [
    {
      cells: [roofCells({ Span: 192, Length: 288, Pitch: 9, Overhang: 16 })],
      // prettier-ignore
      result: [
        headings(columns),
        ["Ridge", 8, "ft", "apex to apex"],
        ["Hips", 59.7625, "ft", `4 from apex to fascia, each 14' 11 5/16"`],
        ["Eaves", 90.6667, "ft", `along the tail cuts: main 2 x 26' 8", end 2 x 18' 8"`],
        ["Fascia", 90.6667, "ft", "as the eaves; its outer face is longer by twice its thickness at a corner"],
        ["Sub-fascia", 90.6667, "ft", "eaves with an overhang"],
        ["Gable rake", 0, "ft", "no gable"],
        ["Corner rake", 0, "ft", "none: the fascias meet level"],
        ["Main planes, plan", 323.5556, "sq ft", "2 planes, overhangs included"],
        ["Main planes, sloped", 404.4444, "sq ft", "plan over the cosine of 36.87°"],
        ["End planes, plan", 174.2222, "sq ft", "2 planes, overhangs included"],
        ["End planes, sloped", 217.7778, "sq ft", "plan over the cosine of 36.87°"],
        ["Roof, plan", 497.7778, "sq ft", "all planes, level"],
        ["Roof, sloped", 622.2222, "sq ft", "all planes, along the slope"],
        ["Ridge and hip cap", 67.7625, "ft", "ridge and hips, no waste added"],
        ["Underlayment", 622.2222, "sq ft", "sloped area, no waste added; laps are extra"],
        ["Roofing", 6.2222, "squares", "sloped area, no waste added"],
        ["Sheathing, net area", 622.2222, "sq ft", "sloped area"],
        ["Sheathing with waste", 622.2222, "sq ft", "sloped area, no waste added"],
        ["Sheathing, net sheets", 20, "sheets of 4 x 8 ft", "net area over a sheet's, rounded up"],
        ["Sheathing, sheets by courses", 22, "sheets of 4 x 8 ft",
         `main 8 + 7, end 4 + 3; off-cuts of 4' 0" or more are turned and used again, as SHEATHING lists`],
        ["2x6, pieces", 36, "pieces", "as MEMBERS counts them"],
        ["2x6, lineal", 310.6608, "ft", "each piece on its shortest board"],
        ["2x6, board feet", 310.6608, "board feet", "nominal, each piece on its shortest board, no waste added"],
        ["2x8, pieces", 5, "pieces", "as MEMBERS counts them"],
        ["2x8, lineal", 68.7689, "ft", "each piece on its shortest board"],
        ["2x8, board feet", 91.6919, "board feet", "nominal, each piece on its shortest board, no waste added"],
      ],
      tolerance: 0.0001,
      source:
        "by hand: plan 320 x 224 in, sloped 5/4 of it (3-4-5); a hip is the root of 112² + 112² + 84² = 179.287 in; courses 320, 243.2, 166.4 in on a main side and 224, 147.2, 70.4 on an end",
    },
    {
      cells: [
        roofCells({
          Span: "5000 mm",
          Length: "8000 mm",
          Pitch: 9,
          Ends: "hip and gable",
          Overhang: "400 mm",
          Waste: 10,
          Spares: 2,
        }),
      ],
      // prettier-ignore
      result: [
        headings(columns),
        ["Ridge", 5.9, "m", "apex to the gable's fascia"],
        ["Hips", 9.2845, "m", "2 from apex to fascia, each 4642 mm"],
        ["Eaves", 23.4, "m", "along the tail cuts: main 2 x 8800 mm, end 1 x 5800 mm"],
        ["Fascia", 23.4, "m", "as the eaves; its outer face is longer by twice its thickness at a corner"],
        ["Sub-fascia", 23.4, "m", "eaves with an overhang"],
        ["Gable rake", 7.25, "m", "2 edges along the slope, ridge to fascia"],
        ["Corner rake", 0, "m", "none: the fascias meet level"],
        ["Main planes, plan", 42.63, "m2", "2 planes, overhangs included"],
        ["Main planes, sloped", 53.2875, "m2", "plan over the cosine of 36.87°"],
        ["End planes, plan", 8.41, "m2", "1 plane, overhangs included"],
        ["End planes, sloped", 10.5125, "m2", "plan over the cosine of 36.87°"],
        ["Roof, plan", 51.04, "m2", "all planes, level"],
        ["Roof, sloped", 63.8, "m2", "all planes, along the slope"],
        ["Ridge and hip cap", 15.1845, "m", "ridge and hips, no waste added"],
        ["Underlayment", 70.18, "m2", "sloped area, plus 10 percent waste; laps are extra"],
        ["Roofing", 70.18, "m2", "sloped area, plus 10 percent waste"],
        ["Sheathing, net area", 63.8, "m2", "sloped area"],
        ["Sheathing with waste", 70.18, "m2", "sloped area, plus 10 percent waste"],
        ["Sheathing, net sheets", 23, "sheets of 1200 x 2400 mm", "net area over a sheet's, rounded up"],
        ["Sheathing, sheets by courses", 26, "sheets of 1200 x 2400 mm",
         "main 11 + 10, end 5; off-cuts of 1200 mm or more are turned and used again, as SHEATHING lists"],
        ["38 x 140 mm, pieces", 37, "pieces", "as MEMBERS counts them; 2 spare, cut like C, from which any jack can be cut"],
        ["38 x 140 mm, lineal", 119.2982, "m", "each piece on its shortest board"],
        ["38 x 140 mm, board feet", 430.5381, "board feet", "nominal, each piece on its shortest board, plus 10 percent waste"],
        ["38 x 184 mm, pieces", 3, "pieces", "as MEMBERS counts them"],
        ["38 x 184 mm, lineal", 14.9379, "m", "each piece on its shortest board"],
        ["38 x 184 mm, board feet", 71.8795, "board feet", "nominal, each piece on its shortest board, plus 10 percent waste"],
      ],
      tolerance: 0.0001,
    },
  ],
  compute: ({ roof }) => tableOf(columns, itemsOf(roof), undefined),
});

function itemsOf(model: RoofModel): Item[] {
  const { frame, pieces } = model;
  const { unit, waste } = frame.spec;
  const total = totalsOf(frame, [...pieces, ...model.eaves]);
  const [hips, valleys] = [total.hips, total.valleys].map((own) => own.reduce((sum, one) => sum + one, 0)) as [
    number,
    number,
  ];
  const winged = frame.spec.wings.length > 0;
  const { length: ft, perLength, area: sqft, perArea, roofing, perRoofing, sheets } = PRICED[unit];
  const lineal = (item: string, amount: number, how: string): Item => ({
    item,
    amount: amount / perLength,
    unit: ft,
    how,
  });
  const area = (item: string, amount: number, how: string): Item => ({
    item,
    amount: amount / perArea,
    unit: sqft,
    how,
  });
  const sheathed = frame.blocks.some(isLaid)
    ? "sloped area; the main roof's runs on under wings laid over it"
    : "sloped area";
  const plus = waste === 0 ? "no waste added" : `plus ${waste} percent waste`;
  return [
    lineal("Ridge", total.ridge, ridgeHow(model)),
    lineal("Hips", hips, hipsHow(total, unit)),
    ...(winged ? [lineal("Valleys", valleys, valleysHow(total, unit))] : []),
    lineal(
      "Eaves",
      total.eaves,
      `along the tail cuts: ${total.planes.map((group) => eavesOf(group, unit)).join(", ")}`,
    ),
    lineal(
      "Fascia",
      total.eaves,
      winged
        ? "as the eaves; its outer face: add two thicknesses at each outside corner, take two off at each inside corner"
        : "as the eaves; its outer face is longer by twice its thickness at a corner",
    ),
    lineal(
      "Sub-fascia",
      total.subFascia,
      total.subFascia === 0 ? "no overhang, no tails to nail it to" : "eaves with an overhang",
    ),
    lineal(
      "Gable rake",
      total.gableRake,
      total.gableRake === 0
        ? "no gable"
        : winged
          ? "edges along the slope at the gables, ridge to fascia"
          : "2 edges along the slope, ridge to fascia",
    ),
    lineal(
      "Corner rake",
      total.cornerRake,
      total.cornerRake === 0
        ? "none: the fascias meet level"
        : "sloping edges at the corners, where the fascias do not meet level",
    ),
    ...total.planes.flatMap(({ side, faces, plan, sloped }) => [
      area(
        `${side} planes, plan`,
        plan,
        `${faces.length} ${faces.length === 1 ? "plane" : "planes"}, overhangs included`,
      ),
      area(
        `${side} planes, sloped`,
        sloped,
        `plan over the cosine of ${slopeAngle(faces[0]!.plane.pitch).toFixed(2)}°`,
      ),
    ]),
    area("Roof, plan", total.plan, "all planes, level"),
    area("Roof, sloped", total.sloped, "all planes, along the slope"),
    lineal("Ridge and hip cap", total.ridge + hips, "ridge and hips, no waste added"),
    area("Underlayment", withWaste(total.sloped, waste), `sloped area, ${plus}; laps are extra`),
    {
      item: "Roofing",
      amount: withWaste(total.sloped, waste) / perRoofing,
      unit: roofing,
      how: `sloped area, ${plus}`,
    },
    area("Sheathing, net area", total.sheathing, sheathed),
    area("Sheathing with waste", withWaste(total.sheathing, waste), `${sheathed}, ${plus}`),
    {
      item: "Sheathing, net sheets",
      amount: Math.ceil(total.sheathing / (total.sheet.long * total.sheet.wide) - 1e-9),
      unit: sheets,
      how: "net area over a sheet's, rounded up",
    },
    {
      item: "Sheathing, sheets by courses",
      amount: sheetsOf(total.courses),
      unit: sheets,
      how: coursesHow(total, lengthText(2 * frame.spec.spacing, unit)),
    },
    ...total.sizes.flatMap((size) => sizeRows(size, model, plus)),
  ];
}

const sheetsOf = (courses: readonly Course[]) => courses.reduce((sum, { sheets }) => sum + sheets, 0);

function ridgeHow({ frame }: RoofModel): string {
  if (!ridgeIn(frame)) return "none: the hips meet in a point";
  if (frame.spec.wings.length > 0) return "between apexes, gables' fascias and crossings";
  return frame.spec.ends === "hip and hip" ? "apex to apex" : "apex to the gable's fascia";
}

function coursesHow({ planes, courses }: TakeOff, twoBays: string): string {
  const of = ({ side, faces }: PlaneGroup) =>
    faces
      .map((_, i) => sheetsOf(courses.filter((course) => course.side === side && course.plane === i + 1)))
      .join(" + ");
  const name = ({ side }: PlaneGroup) => (side.startsWith("Wing") ? side : side.toLowerCase());
  const counts = planes.map((plane) => `${name(plane)} ${of(plane)}`).join(", ");
  return `${counts}; off-cuts of ${twoBays} or more are turned and used again, as SHEATHING lists`;
}

function sizeRows(
  { size, pieces, spares, lineal, boardFeet }: SizeTotal,
  { frame, pieces: all }: RoofModel,
  plus: string,
): Item[] {
  const { unit, waste } = frame.spec;
  const each = "each piece on its shortest board";
  const spare =
    spares === 0 ? "" : `; ${spares} spare, cut like ${spareRafter(all).mark}, from which any jack can be cut`;
  return [
    { item: `${size}, pieces`, amount: pieces, unit: "pieces", how: `as MEMBERS counts them${spare}` },
    { item: `${size}, lineal`, amount: lineal / PRICED[unit].perLength, unit: PRICED[unit].length, how: each },
    {
      item: `${size}, board feet`,
      amount: withWaste(boardFeet, waste),
      unit: "board feet",
      how: `nominal, ${each}, ${plus}`,
    },
  ];
}
