import { dressedSizes } from "./dressedSizes.ts";
import type { DressedSize } from "./dressedSizes.ts";
import type { ReadSize } from "./readSize.ts";
import { MM_PER_INCH } from "./unit.ts";

/** How far a dressed size may be written from its exact one: metric sizes are rounded to whole millimeters, inches to 1/64 in. */
const SLACK_MM = 0.5;
const SLACK_IN = 1 / 64;

/**
 * The dressed size that an actual size is, in inches or in millimeters (38 x 184 is a 2x8), or null when it is none.
 *
 * @example
 * nominalOf({ thickness: 38, depth: 184, unit: "mm", name: "38 x 184 mm" }) // => { nominalThickness: 2, nominalDepth: 8, thickness: 1.5, depth: 7.25 }
 * nominalOf({ thickness: 1.75, depth: 9.5, unit: "in", name: "1.75 x 9.5 in" }) // => null
 */
export function nominalOf(size: ReadSize): DressedSize | null {
  const scale = size.unit === "mm" ? MM_PER_INCH : 1;
  // Doubles: 2.5 in is 63.5 mm and written 64, exactly the slack away.
  const slack = (size.unit === "mm" ? SLACK_MM : SLACK_IN) + 1e-9;
  const near = (dressed: number, actual: number) => Math.abs(dressed * scale - actual) <= slack;
  return (
    dressedSizes.find((dressed) => near(dressed.thickness, size.thickness) && near(dressed.depth, size.depth)) ?? null
  );
}
