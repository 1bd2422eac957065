import { costOf, dearestOf } from "../model/costOf.ts";
import { restOf } from "../model/restOf.ts";
import { chance, PartPlan } from "./partPlan.ts";
import { tailPlan } from "./tailPlan.ts";
import type { Cut, Pattern, Problem } from "../model/problem.ts";
import type { BoardSearch } from "./boardSearch.ts";
import type { ColumnGeneration, Relaxed } from "./columnGeneration.ts";
import type { Spent } from "./spent.ts";

/** On the way down a fractional plan may cost more by this part of what is left to the target: the cheapest takes most of the work. */
const CHEAP = 0.2;
/** When fewer boards are left all plans of them are looked through. */
const TAIL = 4.8;

/**
 * A whole plan from a fractional one, by diving: whole boards are kept, or where there is none one board of the pattern that is nearest to whole, and the fractional plan of what is
 * still wanted is found anew, until that is a few boards, whose cheapest plan is looked for.
 *
 * @param attempt each dives another way, always the same. @param target given up as soon as the plan cannot cost less.
 */
export function* divedPlan(
  problem: Problem,
  search: BoardSearch,
  columns: ColumnGeneration,
  relaxed: Relaxed,
  attempt: number,
  target: number,
  spent: Spent,
): Generator<void, readonly Cut[] | null> {
  const out = (): boolean => spent(search.steps);
  const plan = new PartPlan(problem);
  const dearest = dearestOf(problem);
  let value = costOf(problem, relaxed.cuts);
  for (let now = relaxed, depth = 0; !out(); depth++) {
    // Later dives keep fewer at first.
    if (!plan.takeWhole(now, depth === 0 ? attempt % 4 : 0, 1e-4)) {
      const nearest = nearestToWhole(now, plan.left, attempt, depth);
      if (nearest === null) return null;
      plan.take(nearest, 1);
    }
    if (plan.done) return plan.cuts;
    const kept = costOf(problem, plan.cuts);
    now = yield* columns.solve({ out, cheap: value + CHEAP * (target - value) - kept }, plan);
    value = Math.max(value, kept + costOf(problem, now.cuts));
    // The little more of every piece that the linear program asks for is worth less than this.
    if (now.short || value - 2e-4 * dearest >= target) return null;
    if (now.cuts.reduce((sum, { times }) => sum + times, 0) > TAIL) continue;
    const tail = yield* tailPlan(restOf(problem, plan), search, now, target - kept, spent);
    if (tail !== undefined) return tail && [...plan.cuts, ...tail];
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
