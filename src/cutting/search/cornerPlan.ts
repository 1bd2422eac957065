import { costOf } from "../model/costOf.ts";
import { restOf } from "../model/restOf.ts";
import { patternProgram } from "./patternProgram.ts";
import { chance, PartPlan } from "./partPlan.ts";
import { wholePlan } from "./wholePlan.ts";
import type { Cut, Pattern, Problem } from "../model/problem.ts";

/** By so much, as a part of it, a board's cost may change from attempt to attempt. */
const UNEVEN = 1e-3;
/** Of this part of the patterns one board fewer is kept; none at the first of every four attempts, then once, twice and three times that. */
const FEWER = 0.1;
/** What is left is planned in so many steps, or hardly ever. */
const STEPS = 40_000_000;

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
  const { program, add } = patternProgram(problem);
  patterns.forEach((pattern, n) =>
    add(pattern, problem.types[pattern.type]!.cost * (1 + (attempt === 0 ? 0 : UNEVEN * chance(attempt, n)))),
  );
  yield* program.dual(Infinity);
  const plan = new PartPlan(problem);
  // Other chances than those of the costs.
  const fewer = (n: number): number => (chance(attempt + 500, n) < (attempt % 4) * FEWER ? 1 : 0);
  const cuts = patterns.map((pattern, n) => ({ pattern, times: program.at[program.size + n]! - fewer(n) }));
  plan.takeWhole({ cuts }, 0, 1e-6);
  const proper = patterns.filter((pattern) => pattern.items.every((i, k) => pattern.copies[k]! <= plan.wanted[i]!));
  const kept = costOf(problem, plan.cuts);
  const found = yield* wholePlan(
    restOf(problem, plan),
    proper,
    target - kept,
    (cost) => useful(cost + kept) - kept,
    (steps) => spent(program.steps + steps) || steps > STEPS,
  );
  return found.cuts && [...plan.cuts, ...found.cuts];
}
