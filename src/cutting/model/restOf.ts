import type { Problem } from "./problem.ts";

/** What is left of a problem: so many still wanted of each item, and boards left of each type. */
export function restOf(problem: Problem, wanted: readonly number[], left: readonly number[]): Problem {
  return {
    ...problem,
    items: problem.items.map((item, i) => ({ ...item, demand: wanted[i]! })),
    types: problem.types.map((type, j) => ({ ...type, count: left[j]! })),
  };
}
