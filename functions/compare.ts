import { Failure } from "../src/measure/result.ts";
import type { Unit } from "../src/measure/unit.ts";
import { choice } from "../src/registry/parameters.ts";
import { readLengthCell } from "../src/registry/readLengthCell.ts";
import { readPitchCell } from "../src/registry/readPitchCell.ts";
import { worksheetFunction, type Cell } from "../src/registry/worksheetFunction.ts";
import { comparedFigure } from "../src/roof/tables/comparison.ts";
import { frame as framed } from "../src/roof/frame/frame.ts";
import { pieces as piecesOf } from "../src/roof/frame/pieces.ts";
import type { RoofSpec } from "../src/roof/frame/roofSpec.ts";
import { blockWording } from "./words/blockRefusal.ts";
import { listParameter } from "./arguments/listParameter.ts";
import { roof } from "./arguments/roofModel.ts";
import { pricedArea, withWaste } from "./takeOff.ts";

const MOST = 40;
const WHAT = ["longest jack", "step", "jacks", "hip length", "board feet", "roof area", "squares"] as const;
type What = (typeof WHAT)[number];

const small = [
  ["Span", 144],
  ["Length", 192],
  ["Pitch", 6],
] as const;

export const compare = worksheetFunction({
  name: "COMPARE",
  family: "roof",
  summary: "One figure of a hip roof over several pitches and spacings, as a grid.",
  parameters: [
    roof("roof"),
    listParameter(
      "pitches",
      "Pitches to compare: a range, or one pitch. The end pitch follows where the block leaves it blank.",
      MOST,
      "6, or {4,6,8}",
      readPitchCell,
    ),
    listParameter(
      "spacings",
      "Spacings to compare, centre to centre: a range, or one length.",
      MOST,
      "24, or {16,24}",
      (name, cell, reading) => readLengthCell(name, cell, reading, { example: "24" }),
    ),
    choice("what", `What to compare: ${WHAT.join(", ")}.`, WHAT, "longest jack"),
  ],
  result: "table",
  returns:
    "a grid that spills: a pitch in each row, a spacing in each column; lengths in the unit of the block, areas in square feet or square metres, squares with the block's waste, board feet without waste and spares. Where no roof can be framed, the cell says why.",
  examples: [
    {
      cells: [small, [[6, 12]], [[16, 24]], "step"],
      result: [
        ["step, in", 16, 24],
        [6, 17.89, 26.83],
        [12, 22.63, 33.94],
      ],
      tolerance: 0.005,
      source: "the framing-square table: difference in jacks at 16 and 24 in on centres, rise 6 and 12",
    },
    {
      cells: [small, [[6], [9]], 24],
      result: [
        ["longest jack, in", 24],
        [6, 53.3183],
        [9, 59.6117],
      ],
      tolerance: 0.0001,
    },
    {
      cells: [small, "6/12", [[24, 80]], "jacks"],
      result: [
        ["jacks, pieces", 24, 80],
        [
          "6/12",
          16,
          `no roof: Spacing: 6' 8" is not less than the run of 6' 0", so no jack stands beside the king common`,
        ],
      ],
    },
  ],
  compute({ roof, pitches, spacings, what }) {
    const { spec } = roof.frame;
    const rows = pitches.map(({ cell, value: pitch }) => [
      cell,
      ...spacings.map(({ value: spacing }) => figure(what, { ...spec, pitch, spacing })),
    ]);
    return [[`${what}, ${unitOf(what, spec.unit)}`, ...spacings.map(({ cell }) => cell)], ...rows];
  },
});

function unitOf(what: What, unit: Unit): string {
  if (what === "jacks") return "pieces";
  if (what === "board feet") return "nominal";
  if (what === "roof area") return unit === "mm" ? "m2" : "sq ft";
  return what === "squares" && unit === "mm" ? "m2" : what === "squares" ? "100 sq ft" : unit;
}

function figure(what: What, spec: RoofSpec): Cell {
  const frame = framed(spec);
  // What to type instead is another cell's matter.
  if (frame instanceof Failure) return `no roof: ${blockWording(frame.problem, spec.unit)[0]}`;
  const value = comparedFigure(what === "squares" ? "roof area" : what, frame, piecesOf(frame));
  if (what === "roof area") return pricedArea(value, spec.unit);
  return what === "squares" ? withWaste(pricedArea(value, spec.unit, "roofing"), spec.waste) : value;
}
