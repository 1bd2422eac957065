import { chance, PartPlan } from "./partPlan.ts";
import { worthOfCopies } from "./worthOfCopies.ts";
import type { BoardSearch } from "./boardSearch.ts";
import type { Cut, Pattern, Problem } from "../model/problem.ts";
import type { Relaxed } from "./columnGeneration.ts";

/**
 * A whole plan from a fractional one: whole boards are kept, and what is still wanted is cut from one best board after another.
 *
 * The best board is the one that is worth most for its cost, pieces being worth their duals. Later attempts keep fewer boards and shift the worths a little, each in its own, always the same way.
 */
export function* roundedPlan(
  problem: Problem,
  search: BoardSearch,
  relaxed: Relaxed,
  attempt: number,
): Generator<void, Cut[] | null> {
  const { items, types } = problem;
  const plan = new PartPlan(problem);
  plan.takeWhole(relaxed, attempt % 3, 1e-6);
  const room = types[types.length - 1]!.room;
  const worths = items.map(
    (item, i) =>
      Math.max(relaxed.duals[i]!, 0) * (1 + (attempt === 0 ? 0 : (chance(attempt, i) - 0.5) * 0.04)) +
      (1e-9 * item.weight) / room,
  );
  const worth = (pattern: Pattern): number =>
    pattern.items.reduce((sum, i, k) => sum + worths[i]! * pattern.copies[k]!, 0);
  while (!plan.done) {
    const values = worthOfCopies(problem, worths, plan.wanted);
    let best: Pattern | null = null;
    for (const ease of [0.9, 0]) {
      const thresholds = Float64Array.from(types, (type, j) => (plan.left[j]! < 1 ? Infinity : type.cost * ease));
      const answer = yield* search.ask({ values, thresholds, limit: 200_000 });
      let rate = 0;
      for (const pattern of answer.patterns) {
        const { cost } = types[pattern.type]!;
        if (worth(pattern) <= rate * cost) continue;
        rate = worth(pattern) / cost;
        best = pattern;
      }
      if (best !== null) break;
    }
    if (best === null) return null;
    plan.takeMost(best);
  }
  return plan.cuts;
}
