import { nominalOf } from "./nominalOf.ts";
import type { ReadSize } from "./readSize.ts";
import { MM_PER_INCH } from "./unit.ts";

/**
 * Board feet in one foot of length of a lumber size: nominal thickness times nominal depth in inches, over 12.
 *
 * A board foot is 144 cubic inches, nominal. An actual size that is a dressed one counts as its nominal size; any other counts as
 * what it is cut from, each side rounded up to the next whole inch (common practice, no source).
 *
 * @example
 * boardFeetPerFoot(readSize("2x6")) // => 1
 * boardFeetPerFoot(readSize("38 x 184")) // => 2 * 8 / 12
 * boardFeetPerFoot(readSize("1.75 x 9.5")) // => 2 * 10 / 12
 */
export function boardFeetPerFoot(size: ReadSize): number {
  const dressed = nominalOf(size);
  if (dressed) return (dressed.nominalThickness * dressed.nominalDepth) / 12;
  const perInch = size.unit === "mm" ? MM_PER_INCH : 1;
  return (wholeInches(size.thickness / perInch) * wholeInches(size.depth / perInch)) / 12;
}

// 50.8 mm are 2 in, whatever the division's last bit says.
function wholeInches(inches: number): number {
  return Math.ceil(inches - 1e-9);
}
