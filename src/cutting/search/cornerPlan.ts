import { costOf } from "../model/costOf.ts";
import { LinearProgram } from "./linearProgram.ts";
import { chance, PartPlan } from "./partPlan.ts";
import { wholePlan } from "./wholePlan.ts";
import type { Cut, Pattern, Problem } from "../model/problem.ts";

/** By so much, as a part of it, a board's cost may change from attempt to attempt. */
const UNEVEN = 1e-3;
/** Of this part of the patterns one board fewer is kept; none at the first of every four attempts, then once, twice and three times that. */
const FEWER = 0.1;
/** What is left is planned in so many steps, or hardly ever. */
const STEPS = 20_000_000;

/**
 * A whole plan from one of the many corners of the linear program over patterns, all of them nearly as cheap: the whole boards of the corner are kept, and what is still wanted is planned as
 * cheaply as it can be in the patterns that cut nothing else.
 *
 * @param attempt each comes to another corner, always the same, for the costs of boards are a little uneven. @param target what the plan must cost less than.
 */
export function* cornerPlan(
  problem: Problem,
  patterns: readonly Pattern[],
  attempt: number,
  target: number,
  useful: (cost: number) => number,
  spent: (steps: number) => boolean,
): Generator<void, readonly Cut[] | null> {
  const { items, types } = problem;
  const limited = types.flatMap((type, j) => (type.count < Infinity ? [j] : []));
  const program = new LinearProgram([
    ...items.map((item) => ({ lower: item.demand, upper: Infinity, cost: 0 })),
    ...limited.map((type) => ({ lower: 0, upper: types[type]!.count, cost: 0 })),
  ]);
  patterns.forEach(({ type, items: own, copies }, n) => {
    const row = limited.indexOf(type);
    program.add(row < 0 ? own : [...own, items.length + row], row < 0 ? copies : [...copies, 1], {
      lower: 0,
      upper: Infinity,
      cost: types[type]!.cost * (1 + (attempt === 0 ? 0 : UNEVEN * chance(attempt, n))),
    });
  });
  yield* program.dual(Infinity);
  const plan = new PartPlan(problem);
  // Other chances than those of the costs.
  const fewer = (n: number): number => (chance(attempt + 500, n) < (attempt % 4) * FEWER ? 1 : 0);
  const cuts = patterns.map((pattern, n) => ({ pattern, times: program.at[program.size + n]! - fewer(n) }));
  plan.takeWhole({ cuts }, 0, 1e-6);
  const rest: Problem = {
    ...problem,
    items: items.map((item, i) => ({ ...item, demand: plan.wanted[i]! })),
    types: types.map((type, j) => ({ ...type, count: plan.left[j]! })),
  };
  const proper = patterns.filter((pattern) => pattern.items.every((i, k) => pattern.copies[k]! <= plan.wanted[i]!));
  const kept = costOf(problem, plan.cuts);
  const found = yield* wholePlan(
    rest,
    proper,
    target - kept,
    (cost) => useful(cost + kept) - kept,
    (steps) => spent(program.steps + steps) || steps > STEPS,
  );
  return found.cuts && [...plan.cuts, ...found.cuts];
}
