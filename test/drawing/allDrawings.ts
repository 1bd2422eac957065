import { drawApex } from "../../src/drawing/views/drawApex.ts";
import { drawCorner } from "../../src/drawing/views/drawCorner.ts";
import { drawCourses } from "../../src/drawing/views/drawCourses.ts";
import { drawFrame3d } from "../../src/drawing/views/drawFrame3d.ts";
import { drawHip } from "../../src/drawing/views/drawHip.ts";
import { drawHipTops } from "../../src/drawing/views/drawHipTops.ts";
import { drawJack } from "../../src/drawing/views/drawJack.ts";
import { drawPair } from "../../src/drawing/views/drawPair.ts";
import { drawPlan } from "../../src/drawing/views/drawPlan.ts";
import { drawRidge } from "../../src/drawing/views/drawRidge.ts";
import { drawSetOut } from "../../src/drawing/views/drawSetOut.ts";
import type { DrawingOptions } from "../../src/drawing/canvas/canvas.ts";
import { lengthText } from "../../src/measure/lengthText.ts";
import type { RoofSpec } from "../../src/roof/frame/roofSpec.ts";
import { takeOff } from "../../src/roof/tables/takeOff.ts";
import { framed, HALL, handsOf, SHAPES } from "../roof/outlineSpecs.ts";

export const inches = (value: number) => lengthText(value, "in");

const section = (name: string, thickness: number, depth: number) => ({ name, thickness, depth });

/** Roofs whose drawings are hard to lay out: many members on little paper, millimeters, hardly any jack. */
export const ROOFS: Readonly<Record<string, RoofSpec>> = {
  ...SHAPES,
  "large and dense": {
    ...HALL,
    span: 480,
    length: 720,
    spacing: 16,
    rafter: section("2x8", 1.5, 7.25),
    hip: section("2x10", 1.5, 9.25),
    ridge: section("2x10", 1.5, 9.25),
  },
  metric: {
    ...HALL,
    unit: "mm",
    span: 7200,
    length: 10300,
    spacing: 600,
    overhang: 400,
    rafter: section("38 x 140 mm", 38, 140),
    hip: section("38 x 184 mm", 38, 184),
    ridge: section("38 x 184 mm", 38, 184),
    seat: 89,
    boards: [3000, 4200, 5400],
  },
  "metric, odd bays": {
    ...HALL,
    unit: "mm",
    span: 7320,
    length: 11000,
    spacing: 600,
    overhang: 450,
    rafter: section("45 x 195 mm", 45, 195),
    hip: section("45 x 245 mm", 45, 245),
    ridge: section("45 x 245 mm", 45, 245),
    seat: 89,
    boards: [3000, 4200, 5400],
  },
  "odd bays, no ridge": { ...HALL, span: 216, length: 336, pitch: 5 / 12, endPitch: 5 / 12, overhang: 0, ridge: null },
  "two tilts and every note": {
    ...HALL,
    length: 408,
    pitch: 5 / 12,
    endPitch: 1,
    overhang: 18,
    endOverhang: 18,
    rafter: section("2x8", 1.5, 7.25),
    hip: section("2x10", 1.5, 9.25),
    ridge: section("2x10", 1.5, 9.25),
  },
  small: { ...HALL, span: 12 * 8, length: 12 * 11, spacing: 24, overhang: 6 },
  "steep with a long hip": { ...HALL, pitch: 1.25, endPitch: 1, overhang: 24, spacing: 12 },
};

/** Every drawing of a roof, by name. */
export function allDrawings(spec: RoofSpec, given: Partial<DrawingOptions> & { width: number }): [string, string][] {
  const { frame, pieces } = framed(spec);
  const options: DrawingOptions = {
    length: spec.unit === "mm" ? (value) => lengthText(value, "mm") : inches,
    ...given,
  };
  return [
    ["plan", drawPlan(frame, pieces, options)],
    ["plan in small room", drawPlan(frame, pieces, { ...options, brief: true })],
    ["corner", drawCorner(frame, pieces, options)],
    ["frame", drawFrame3d(frame, pieces, options)],
    ["courses", drawCourses(takeOff(frame, pieces), options)],
    [
      "set out",
      drawSetOut(
        [
          { title: "One corner", frame, pieces },
          { title: "The same", frame, pieces },
        ],
        options,
      ),
    ],
    ["hip top", drawHipTops([{ title: "The top", frame, pieces }], options)],
    [
      "apex",
      drawApex(
        [
          { title: "A hip end", frame, pieces, end: "hip" },
          ...(spec.ends !== "hip and hip" ? [{ title: "The gable", frame, pieces, end: "gable" } as const] : []),
        ],
        options,
      ),
    ],
    ...(["all", "marks", "cuts"] as const).map((part): [string, string] => [
      `hip ${part}`,
      drawHip(frame, pieces, { ...options, part }),
    ]),
    ...pieces.flatMap((piece): [string, string][] => {
      if (piece.member === "ridge") return [["ridge", drawRidge(frame, piece, options)]];
      if (piece.member === "hip")
        return handsOf(piece).map((hand) => [`hip ${hand}`, drawHip(frame, pieces, { ...options, hand })]);
      return [
        ...handsOf(piece).map((hand): [string, string] => [`${piece.mark} ${hand}`, drawJack(piece, hand, options)]),
        ...(piece.member === "jack" ? [[`pair ${piece.mark}`, drawPair(piece, options)] as [string, string]] : []),
      ];
    }),
  ];
}
