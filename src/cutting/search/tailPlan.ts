import { nearPatterns } from "./nearPatterns.ts";
import { safeBound } from "./safeBound.ts";
import { partOf, type Spent } from "./spent.ts";
import { wholePlan } from "./wholePlan.ts";
import type { Cut, Problem } from "../model/problem.ts";
import type { BoardSearch } from "./boardSearch.ts";
import type { Relaxed } from "./columnGeneration.ts";

/** Of more patterns the cheapest plan is not looked for, and not for more steps. */
const MOST_PATTERNS = 3_000;
const STEPS = 10_000_000;

/** The cheapest plan of a few boards, null where none costs less than the target or none was found, undefined where too many patterns could serve. */
export function* tailPlan(
  problem: Problem,
  search: BoardSearch,
  { duals, scarcity }: Relaxed,
  target: number,
  spent: Spent,
): Generator<void, readonly Cut[] | null | undefined> {
  const prices = yield* safeBound(problem, search, duals, scarcity);
  const { patterns, complete } = yield* nearPatterns(problem, search, prices, target - prices.bound, MOST_PATTERNS);
  if (!complete) return undefined;
  const part = partOf(search, spent, STEPS);
  return (yield* wholePlan(problem, patterns, target, () => -Infinity, part, 0)).cuts;
}
