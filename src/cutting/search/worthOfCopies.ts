import type { Problem } from "../model/problem.ts";

/** What 0, 1, 2 ... copies of each item are worth, at so much each: as many as are wanted and as the longest board takes, which is one at least. */
export function worthOfCopies(
  { items, types }: Problem,
  worths: ArrayLike<number>,
  wanted: readonly number[],
): Float64Array[] {
  const { room } = types[types.length - 1]!;
  return items.map((item, i) =>
    Float64Array.from(
      { length: Math.min(wanted[i]!, Math.max(1, Math.floor(room / item.weight))) + 1 },
      (_, k) => k * worths[i]!,
    ),
  );
}
