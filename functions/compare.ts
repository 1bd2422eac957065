import { roofCells } from "./arguments/roofCells.ts";
import { Failure } from "../src/measure/result.ts";
import type { Unit } from "../src/measure/unit.ts";
import { choice } from "../src/registry/parameters.ts";
import { readLengthCell } from "../src/registry/readLengthCell.ts";
import { readPitchCell } from "../src/registry/readPitchCell.ts";
import { column, tableOf, type Cell, type ColumnKind } from "../src/registry/columns.ts";
import { worksheetFunction } from "../src/registry/worksheetFunction.ts";
import { comparedFigure } from "../src/roof/tables/comparison.ts";
import { frame as framed } from "../src/roof/frame/frame.ts";
import { pieces as piecesOf } from "../src/roof/frame/pieces.ts";
import type { RoofSpec } from "../src/roof/frame/roofSpec.ts";
import { listParameter, type Listed } from "./arguments/listParameter.ts";
import { roof } from "./arguments/roofModel.ts";
import { frameText } from "./words/frameText.ts";
import { pricedArea, withWaste } from "./takeOff.ts";

const MOST = 40;

/** What can be compared: the kind of figure, and what it is in where the block is in inches or in millimeters. */
export const FIGURES = {
  "longest jack": { kind: "length", in: "in", mm: "mm" },
  step: { kind: "length", in: "in", mm: "mm" },
  jacks: { kind: "count", in: "pieces", mm: "pieces" },
  "hip length": { kind: "length", in: "in", mm: "mm" },
  "board feet": { kind: "amount", in: "nominal", mm: "nominal" },
  "roof area": { kind: "area", in: "sq ft", mm: "m2" },
  "ridge height": { kind: "length", in: "in", mm: "mm" },
  squares: { kind: "area", in: "100 sq ft", mm: "m2" },
} as const satisfies Readonly<Record<string, { kind: ColumnKind } & Record<Unit, string>>>;
export type What = keyof typeof FIGURES;
const WHAT = Object.keys(FIGURES) as What[];

const small = roofCells({ Span: 144, Length: 192, Pitch: 6 });

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
      [6, [4, 6, 8]],
      readPitchCell,
    ),
    listParameter(
      "spacings",
      "Spacings to compare, center to center: a range, or one length.",
      MOST,
      [24, [16, 24]],
      (cell, reading) => readLengthCell(cell, reading, { example: "24" }),
    ),
    choice("what", `What to compare: ${WHAT.join(", ")}.`, WHAT, "longest jack"),
  ],
  result: "table",
  returns:
    "a grid that spills: a pitch in each row, a spacing in each column; lengths in the unit of the block, areas in square feet or square meters, squares with the block's waste, board feet without waste and spares. Where no roof can be framed, the cell says why.",
  examples: [
    {
      cells: [small, [[6, 12]], [[16, 24]], "step"],
      result: [
        ["step, in", 16, 24],
        [6, 17.89, 26.83],
        [12, 22.63, 33.94],
      ],
      tolerance: 0.005,
      source: "the framing-square table: difference in jacks at 16 and 24 in on centers, rise 6 and 12",
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
      // prettier-ignore
      result: [
        ["jacks, pieces", 24, 80],
        ["6/12", 16, `no roof: Spacing: 6' 8" is not less than the run of 6' 0", so no jack stands beside the king common`],
      ],
    },
  ],
  compute({ roof, pitches, spacings, what }) {
    const { spec } = roof.frame;
    return tableOf(
      [
        column(`${what}, ${FIGURES[what][spec.unit]}`, "text", ({ cell }: Listed<number>) => cell),
        ...spacings.map(({ cell, value: spacing }) =>
          column(cell, FIGURES[what].kind, ({ value: pitch }: Listed<number>, spec: RoofSpec) =>
            figure(what, {
              ...spec,
              pitch,
              spacing,
              // A wing of the main roof's pitch follows it.
              wings: spec.wings.map((wing) => (wing.pitch === spec.pitch ? { ...wing, pitch } : wing)),
            }),
          ),
        ),
      ],
      pitches,
      spec,
    );
  },
});

function figure(what: What, spec: RoofSpec): Cell {
  const frame = framed(spec);
  // What to type instead is another cell's matter.
  if (frame instanceof Failure) return `no roof: ${frameText(frame.problem, spec.unit)}`;
  const value = comparedFigure(what === "squares" ? "roof area" : what, frame, piecesOf(frame));
  if (what === "roof area") return pricedArea(value, spec.unit);
  return what === "squares" ? withWaste(pricedArea(value, spec.unit, "roofing"), spec.waste) : value;
}
