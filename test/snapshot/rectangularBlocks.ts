import { chance } from "../solids/chance.ts";
import type { Row } from "../../functions/arguments/roofBlock.ts";

/** The rows of a block without wings. */
export type Pairs = readonly (readonly [Row, string | number])[];

/** The same blocks on every machine: rectangles of every kind, and about one in six that is refused. */
export function rectangularBlocks(count: number): Pairs[] {
  return Array.from({ length: count }, (_, i) => block(chance(9000 + i)));
}

function block(next: () => number): Pairs {
  const one = <T>(...of: readonly T[]): T => of[Math.floor(next() * of.length)]!;
  const metric = next() < 0.2;
  const scale = metric ? 25 : 1;
  const round = (value: number) => Math.round(value * scale * (metric ? 1 : 4)) / (metric ? 1 : 4);
  const between = (least: number, most: number) => round(least + next() * (most - least));
  const pitch = one(4, 5, 6, 6, 8, 9.5, 12);
  const endPitch = next() < 0.4 ? one(4, 6, 7, 10) : pitch;
  const span = between(150, 480);
  const ends = one("hip and hip", "hip and hip", "hip and gable");
  const endRuns = (span * pitch) / endPitch;
  // An odd one is a pyramid, and one in ten is too short for its ends.
  const length = next() < 0.1 ? endRuns : next() < 0.1 ? endRuns * 0.9 : endRuns + between(60, 400);
  const [rafter, hip] = one(["2x6", "2x8"], ["2x8", "2x10"], ["2x10", "2x12"], ["2x12", "3 x 16"]) as [string, string];
  const maybe = (row: Row, often: number, ...of: readonly (string | number)[]): Pairs =>
    next() < often ? [[row, one(...of)]] : [];
  return [
    ["Span", span],
    ["Length", Math.round(length * 1e4) / 1e4],
    ["Pitch", pitch],
    ...(endPitch === pitch ? [] : ([["End pitch", endPitch]] as Pairs)),
    ["Ends", ends],
    ...maybe("Spacing", 0.6, ...[12, 16, 19.2, 24].map((inches) => Math.round(inches * scale * 10) / 10)),
    ...maybe("Overhang", 0.7, between(8, 24), 0),
    ...maybe("End overhang", 0.2, between(8, 24)),
    ["Rafter", rafter],
    ["Hip", hip],
    ...maybe("Ridge", 0.5, hip, hip, "none"),
    ...(next() < 0.2 ? ([["Heel", between(3, 7)]] as Pairs) : maybe("Seat", 0.5, between(1.5, 3.5), between(2, 5))),
    ...maybe("Set out from", 0.4, "corner", "king common"),
    ...maybe("Hip top", 0.5, "dropped", "backed", "shifted"),
    ...maybe("Hip head", 0.3, "ridge"),
    ...maybe("Correction", 0.15, round(0.25), round(-0.5)),
    ...maybe("End correction", 0.1, round(0.25)),
    ...maybe("Boards", 0.3, metric ? "3 m, 4.2 m, 6 m" : "10' to 24' by 2'"),
    ...maybe("Waste", 0.2, 7),
    ...maybe("Spares", 0.2, 1),
    ...(metric ? ([["Unit", "mm"]] as Pairs) : []),
  ];
}
