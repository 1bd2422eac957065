import type { Cut, Problem } from "./problem.ts";

/** How many boards of each type a plan leaves over. */
export function boardsLeft(problem: Problem, cuts: readonly Cut[]): number[] {
  return problem.types.map(
    (type, j) => type.count - cuts.reduce((sum, cut) => sum + (cut.pattern.type === j ? cut.times : 0), 0),
  );
}
