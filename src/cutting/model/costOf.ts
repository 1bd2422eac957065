import type { Cut, Problem } from "./problem.ts";

/** What boards cost. */
export function costOf({ types }: Problem, cuts: readonly Cut[]): number {
  return cuts.reduce((sum, { pattern, times }) => sum + types[pattern.type]!.cost * times, 0);
}

/** The dearest board's cost; 1 where all are free. */
export function dearestOf({ types }: Problem): number {
  return Math.max(...types.map((type) => type.cost)) || 1;
}
