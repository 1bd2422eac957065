import type { Problem } from "./problem.ts";

/** What is wanted of each item, and left of each type of board. */
export interface Open {
  readonly wanted: readonly number[];
  readonly left: readonly number[];
}

/** What is left of a problem. */
export function restOf(problem: Problem, { wanted, left }: Open): Problem {
  return {
    ...problem,
    items: problem.items.map((item, i) => ({ ...item, demand: wanted[i]! })),
    types: problem.types.map((type, j) => ({ ...type, count: left[j]! })),
  };
}
