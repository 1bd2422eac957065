import { patternKey, type BoardSearch, type Collected } from "./boardSearch.ts";
import { worthOfCopies } from "./worthOfCopies.ts";
import type { Pattern, Problem } from "../model/problem.ts";
import type { SafePrices } from "./safeBound.ts";

/** Patterns are written down for so many steps, which finds more than are asked for or ends. */
const STEPS = 100_000_000;

/** The patterns whose reduced cost is at most `gap`, up to so many. */
export function nearPatterns(
  problem: Problem,
  search: BoardSearch,
  { worths, spend }: SafePrices,
  gap: number,
  most: number,
): Generator<void, Collected> {
  const demands = problem.items.map((item) => item.demand);
  const thresholds = Float64Array.from(spend, (cost) => cost * (1 - 1e-9) - gap);
  return search.collect({ values: worthOfCopies(problem, worths, demands), thresholds, limit: STEPS }, most);
}

/** The nearest patterns, no more than so many and none as far as `widest`, and those that are known. */
export function* nearestPatterns(
  problem: Problem,
  search: BoardSearch,
  prices: SafePrices,
  known: readonly Pattern[],
  widest: number,
  most: number,
): Generator<void, readonly Pattern[]> {
  let near: readonly Pattern[] = [];
  for (let gap = widest / 512; gap < widest; gap *= 1.3) {
    const { patterns, complete } = yield* nearPatterns(problem, search, prices, gap, most);
    if (!complete) break;
    near = patterns;
  }
  return [...new Map([...near, ...known].map((pattern) => [patternKey(pattern), pattern])).values()];
}
