import { costOf, dearestOf } from "../model/costOf.ts";
import { restOf } from "../model/restOf.ts";
import { columnGeneration, type Relaxed } from "./columnGeneration.ts";
import { chance, PartPlan } from "./partPlan.ts";
import type { BoardSearch } from "./boardSearch.ts";
import type { Cut, Pattern, Problem } from "../model/problem.ts";

/**
 * A whole plan from a fractional one, by diving: whole boards are kept, or where there is none one board of the pattern that is nearest to whole, and the fractional plan of what is
 * still wanted is found anew, until nothing is.
 *
 * @param attempt each dives another way, always the same. @param target given up as soon as the plan cannot cost less.
 */
export function* divedPlan(
  problem: Problem,
  search: BoardSearch,
  relaxed: Relaxed,
  attempt: number,
  target: number,
  out: () => boolean,
): Generator<void, Cut[] | null> {
  const plan = new PartPlan(problem);
  const dearest = dearestOf(problem);
  for (let now = relaxed, depth = 0; !out(); depth++) {
    // Later dives keep fewer at first.
    if (!plan.takeWhole(now, depth === 0 ? attempt % 4 : 0, 1e-4)) {
      const nearest = nearestToWhole(now, plan.left, attempt, depth);
      if (nearest === null) return null;
      plan.take(nearest, 1);
    }
    if (plan.done) return plan.cuts;
    const rest = restOf(problem, plan.wanted, plan.left);
    const proper = now.patterns.filter(({ items, copies }) => items.every((i, k) => copies[k]! <= plan.wanted[i]!));
    now = yield* columnGeneration(rest, search, proper, 10 * dearest, out, () => false);
    const least = costOf(problem, [...plan.cuts, ...now.cuts]);
    // The little more of every piece that the linear program asks for is worth less than this.
    if (now.short || least - 2e-4 * dearest >= target) return null;
  }
  return null;
}

/** The pattern that is nearest to a whole board, of those whose boards are left; on later dives by chance another. */
function nearestToWhole({ cuts }: Relaxed, left: readonly number[], attempt: number, depth: number): Pattern | null {
  let [nearest, most]: [Pattern | null, number] = [null, -1];
  cuts.forEach(({ pattern, times }, n) => {
    const part = Math.min(1, times) + (attempt === 0 ? 0 : chance(attempt, depth * 97 + n) * 0.5);
    if (left[pattern.type]! > 0 && part > most) [nearest, most] = [pattern, part];
  });
  return nearest;
}
