import { dressedSizes } from "./dressedSizes.ts";
import { isNominal } from "./isNominal.ts";
import { nominalOf } from "./nominalOf.ts";
import { readSize } from "./readSize.ts";
import { Failure } from "./result.ts";
import { sizeName } from "./sizeName.ts";
import { MM_PER_INCH } from "./unit.ts";

/** What a hip is deeper than its rafters where no dressed size says it: 50 mm (2 in), as the Canadian housing guide asks. */
const DEEPER = { in: 2, mm: 50 } as const;

/**
 * The next deeper size of the same thickness, written the same way: what a hip or a ridge is made of when its rafters are this size.
 *
 * Nominal and dressed sizes go to the next dressed depth (5 in nominal is passed over: it is hardly stocked; common practice, no source),
 * in whole millimeters for metric ones. Every other size grows by 2 in or 50 mm. A text that is no size comes back unchanged.
 *
 * @example
 * deeperSize("2x6") // => "2x8"
 * deeperSize("38x140") // => "38 x 184 mm"
 * deeperSize("1.75 x 9.5") // => "1.75 x 11.5 in"
 */
export function deeperSize(name: string): string {
  const size = readSize(name);
  if (size instanceof Failure) return name;
  const dressed = nominalOf(size);
  const next =
    dressed &&
    dressedSizes.find(
      (other) =>
        other.thickness === dressed.thickness && other.nominalDepth > dressed.nominalDepth && other.nominalDepth !== 5,
    );
  if (!next) return sizeName(size.thickness, size.depth + DEEPER[size.unit], size.unit);
  if (isNominal(size)) return sizeName(next.nominalThickness, next.nominalDepth, "nominal");
  return sizeName(size.thickness, size.unit === "mm" ? Math.round(next.depth * MM_PER_INCH) : next.depth, size.unit);
}
