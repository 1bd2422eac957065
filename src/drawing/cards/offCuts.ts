import type { Stick } from "./drawSticks.ts";

/** What is left of boards of one size, as long as each other to the sixteenth, and the boards that it comes off. */
export interface OffCut {
  readonly size: string;
  readonly length: number;
  readonly count: number;
  /** First and last number of each run of boards. */
  readonly boards: readonly (readonly [number, number])[];
}

/**
 * The off-cuts of a plan that are long enough to keep, longest first within a size.
 *
 * The cut that parts an off-cut takes its kerf off it. Lengths are rounded down to `step`: what is written down is there.
 */
export function offCuts(
  sticks: readonly Pick<Stick, "number" | "times" | "size" | "leftOver">[],
  { kerf, least, step }: { readonly kerf: number; readonly least: number; readonly step: number },
): OffCut[] {
  const found = new Map<string, { size: string; length: number; count: number; boards: [number, number][] }>();
  for (const { number, times, size, leftOver } of sticks) {
    const length = Math.floor((leftOver - kerf) / step + 1e-9) * step;
    if (length < least) continue;
    const own = found.get(`${size} ${length}`) ?? { size, length, count: 0, boards: [] };
    found.set(`${size} ${length}`, own);
    own.count += times;
    const last = own.boards.at(-1);
    if (last && last[1] === number - 1) last[1] = number + times - 1;
    else own.boards.push([number, number + times - 1]);
  }
  const sizes = [...new Set([...found.values()].map(({ size }) => size))];
  return sizes.flatMap((size) =>
    [...found.values()].filter((one) => one.size === size).sort((a, b) => b.length - a.length),
  );
}
