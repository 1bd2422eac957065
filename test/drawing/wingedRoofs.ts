import type { RoofSpec, WingSpec } from "../../src/roof/frame/roofSpec.ts";
import { HALL } from "../roof/outlineSpecs.ts";

const wing = (letter: string, given: Partial<WingSpec> & Pick<WingSpec, "from" | "out" | "span">): WingSpec => ({
  letter,
  wall: "front",
  end: "gable",
  pitch: 0.5,
  endPitch: null,
  overhang: null,
  endOverhang: null,
  ridge: HALL.ridge!,
  longValley: null,
  framing: "framed in",
  sheathing: null,
  ...given,
});

const LONG: RoofSpec = { ...HALL, length: 480 };

/** Roofs with wings whose drawings are looked at: an L, a T of either kind, a cross at two pitches, two wings on a wall, and a metric one. */
export const WINGED_ROOFS: Readonly<Record<string, RoofSpec>> = {
  L: { ...LONG, wings: [wing("A", { from: "flush left", out: 144, span: 192, end: "hip" })] },
  T: { ...LONG, wings: [wing("A", { from: 150, out: 120, span: 192 })] },
  "T with level ridges": { ...LONG, wings: [wing("A", { from: 96, out: 120, span: 288 })] },
  cross: {
    ...LONG,
    length: 560,
    wings: [
      wing("A", { from: 190, out: 108, span: 168, pitch: 0.6, end: "hip" }),
      wing("B", { from: 120, out: 96, span: 200, wall: "back" }),
    ],
  },
  "laid over": {
    ...LONG,
    length: 560,
    wings: [
      wing("A", { from: 190, out: 108, span: 168, pitch: 0.6, end: "hip", framing: "laid over", sheathing: 0.5 }),
      wing("B", { from: 120, out: 96, span: 200, wall: "back", framing: "laid over", sheathing: 0.75 }),
    ],
  },
  "two on one wall": {
    ...LONG,
    wings: [wing("A", { from: 48, out: 72, span: 144 }), wing("B", { from: 288, out: 72, span: 144 })],
  },
  metric: {
    ...HALL,
    unit: "mm",
    span: 7200,
    length: 12300,
    spacing: 600,
    overhang: 400,
    rafter: { name: "38 x 140 mm", thickness: 38, depth: 140 },
    hip: { name: "38 x 184 mm", thickness: 38, depth: 184 },
    valley: { name: "38 x 184 mm", thickness: 38, depth: 184 },
    ridge: { name: "38 x 184 mm", thickness: 38, depth: 184 },
    seat: 89,
    boards: [3000, 4200, 5400],
    wings: [
      {
        ...wing("A", { from: 3600, out: 3000, span: 4800, end: "hip" }),
        ridge: { name: "38 x 184 mm", thickness: 38, depth: 184 },
      },
    ],
  },
};
