import { consolidateOffcut } from "../layout/consolidateOffcut.ts";
import { BestPlan } from "./bestPlan.ts";
import { BoardSearch, patternKey } from "./boardSearch.ts";
import { columnGeneration, type Relaxed } from "./columnGeneration.ts";
import { cornerPlan } from "./cornerPlan.ts";
import { divedPlan } from "./divedPlan.ts";
import { greedyPlan } from "./greedyPlan.ts";
import { dearestOf } from "../model/costOf.ts";
import { mergeLengths, refined } from "../model/mergeLengths.ts";
import { roundedPlan } from "./roundedPlan.ts";
import { safeBound, type SafePrices } from "./safeBound.ts";
import { CLOSE, wholePlan } from "./wholePlan.ts";
import { worthOfCopies } from "./worthOfCopies.ts";
import type { Cut, Pattern, Problem } from "../model/problem.ts";

/** Beyond this many distinct pieces in one size lengths that lie close together count as one: as the longer for a plan, as the shorter for the bound. */
const MOST_DISTINCT = 400;
/** More patterns than this are not put into one program. */
const MOST_PATTERNS = 12_000;
/** Fractional plans are rounded so often, each time a little otherwise. */
const ROUNDINGS = 3;
/** So many dives where a few steps of the costs are left, as where boards have no prices; with fine prices writing the patterns down is faster. Roofs stacked three at a time
 * are proved by the twelfth or not by the thirtieth. */
const DIVES = 12;
/** So many corners after that, over so many patterns: of 24 stacks of six roofs twice as many stay open without. */
const CORNERS = 60;
const NEAR_PATTERNS = 3_000;
/** After so many steps the linear program need not come to its end, as long as the bound is as good. */
const LONG = 150_000_000;

/** The best plan found for one size, and what no plan goes below. */
export interface Solved {
  readonly cuts: readonly Cut[];
  readonly cost: number;
  readonly bound: number;
  readonly proved: boolean;
}

/** No plan was found: there is none (`impossible`), there is none below the cost asked for (`noneBelow`), or the work allowed was spent. */
export interface Unsolved {
  readonly impossible: boolean;
  readonly bound: number;
}

/** Asked at every pause: is the work allowed done, after so many steps? */
export type Spent = (steps: number) => boolean;

/**
 * The least plan of one size, or the best that was found in the work allowed, with a bound that holds in any case.
 *
 * First a greedy plan. Then the linear program over patterns gives the bound, rounded up to the costs' grid; its rounded solution, filled up board by
 * board, is nearly always as good as the bound. If not, it is dived from: the linear program is solved again after every few boards. If that fails too, other corners of the
 * linear program are tried, each with the best plan of what its whole boards leave. Then all patterns
 * that a cheaper plan can hold are written down, few as a rule, and the cheapest whole plan cut in these is looked for. What stays open is a step of the costs' grid, of orders
 * whose boards have no prices: so many patterns are then as good that they cannot all be written down.
 *
 * @param below only plans that cost less are of use. @param floor what no plan costs less than, as far as is known. @returns no cuts when no plan was found, which only limited stock or `below` can bring about.
 */
export function* solveSize(
  problem: Problem,
  spent: Spent,
  below = Infinity,
  floor = 0,
): Generator<void, Solved | Unsolved> {
  const best = new BestPlan(problem, below);
  best.raise(Math.max(floor, materialCost(problem)));
  best.offer(yield* greedyPlan(problem));
  const search = new BoardSearch(problem);
  if (!best.closed)
    yield* problem.items.length > MOST_DISTINCT
      ? merged(problem, best, search, spent)
      : exact(problem, best, search, spent);
  if (best.cuts === null) return { impossible: best.impossible, bound: best.bound };
  best.offer(consolidateOffcut(problem, best.cuts), true);
  const { cuts, cost, bound, closed } = best;
  return { cuts, cost, bound: closed ? cost : bound, proved: closed };
}

/** What material alone must cost: every piece its room, at the least price of a unit of room. */
function materialCost({ items, types }: Problem): number {
  const rates = types.map(({ cost, room, alone }) => cost / Math.max(room, ...alone.map((i) => items[i]!.weight)));
  return items.reduce((sum, item) => sum + item.weight * item.demand, 0) * Math.min(...rates) * (1 - 1e-12);
}

function* exact(problem: Problem, best: BestPlan, search: BoardSearch, spent: Spent): Generator<void, void> {
  const out = (): boolean => spent(search.steps);
  const relaxed = yield* root(problem, best, search, out);
  const prices = yield* safeBound(problem, search, relaxed.duals, relaxed.scarcity);
  best.raise(prices.bound);
  for (let n = 0; n < ROUNDINGS && !best.closed && !out(); n++)
    best.offer(yield* roundedPlan(problem, search, relaxed, n));
  for (let n = 0; best.within(4) && n < DIVES && !best.closed && !out(); n++)
    best.offer(yield* divedPlan(problem, search, relaxed, n, best.target, out));
  // A plan that wastes nothing is found sooner where all is looked through.
  const wasteful = prices.bound < best.target * (1 - CLOSE);
  if (wasteful && best.within(4) && !best.closed && !out())
    yield* fromCorners(problem, best, search, prices, relaxed.patterns, spent);
  if (!best.closed && !out()) yield* deepen(problem, best, search, prices, relaxed.patterns, spent);
}

/** Plans from corner after corner of the linear program, over the patterns that are nearest to being of use. */
function* fromCorners(
  problem: Problem,
  best: BestPlan,
  search: BoardSearch,
  prices: SafePrices,
  known: readonly Pattern[],
  spent: Spent,
): Generator<void, void> {
  const collected = nearPatterns(problem, search, prices);
  let near: readonly Pattern[] = [];
  const most = best.target - prices.bound;
  for (let gap = most / 512; gap < most; gap *= 1.3) {
    const { patterns, complete } = yield* collected(gap, NEAR_PATTERNS);
    if (!complete) break;
    near = patterns;
  }
  const patterns = [...new Map([...near, ...known].map((pattern) => [patternKey(pattern), pattern])).values()];
  for (let n = 0; n < CORNERS && !best.closed && !spent(search.steps); n++) {
    best.offer(yield* cornerPlan(problem, patterns, n, best.target, best.targetOf, added(search, spent)));
  }
}

/** Asked for the steps of a part of the work, which are added to those of the search so far. */
function added(search: BoardSearch, spent: Spent): Spent {
  const before = search.steps;
  return (steps) => spent((search.steps = before + steps));
}

/** The patterns whose reduced cost is at most so much, up to so many. */
function nearPatterns(problem: Problem, search: BoardSearch, prices: SafePrices) {
  const demands = problem.items.map((item) => item.demand);
  const values = worthOfCopies(problem, prices.worths, demands);
  return (gap: number, most: number) =>
    search.collect({ values, thresholds: Float64Array.from(prices.spend, (cost) => cost * (1 - 1e-9) - gap) }, most);
}

/** The fractional plan; with limited stock pieces may be left over in it, if need be at a cost that is beyond any plan's. */
function* root(problem: Problem, best: BestPlan, search: BoardSearch, out: () => boolean): Generator<void, Relaxed> {
  const patterns = (best.cuts ?? []).map((cut) => cut.pattern);
  const enough = (bound: number, value: number): boolean =>
    best.proves(bound) || (search.steps > LONG && best.proves(bound, value));
  const relaxed = yield* columnGeneration(problem, search, patterns, 10 * dearestOf(problem), out, enough);
  if (!relaxed.short || out()) return relaxed;
  return yield* columnGeneration(problem, search, relaxed.patterns, 4 * best.most, out, () => false);
}

/**
 * Plans that cost at most so much more than the bound, then twice that, until one is found or the best one is proved.
 *
 * A plan of cost c holds no pattern whose reduced cost is more than c less the bound. So all patterns within that are written down, and the cheapest plan cut in
 * these is the least of all, or none costs less than c.
 */
function* deepen(
  problem: Problem,
  best: BestPlan,
  search: BoardSearch,
  prices: SafePrices,
  known: readonly Pattern[],
  spent: Spent,
): Generator<void, void> {
  const collected = nearPatterns(problem, search, prices);
  const widest = (): number => best.target - prices.bound;
  const whole = function* (patterns: readonly Pattern[], target: number): Generator<void, number> {
    const found = yield* wholePlan(problem, patterns, target, best.targetOf, added(search, spent));
    best.offer(found.cuts);
    return found.bound;
  };
  let kept: readonly Pattern[] = [];
  // No plan costs less than the next step of the grid, so nothing nearer is looked for.
  const nearest = (best.bound - prices.bound) * 1.001;
  for (
    let gap = Math.max(widest() / 8, nearest), last = false;
    !last && !best.closed && !spent(search.steps);
    gap *= 2
  ) {
    last = gap > widest() / 1.5;
    if (last) gap = widest();
    const { patterns, complete } = yield* collected(gap, MOST_PATTERNS);
    if (!complete && (kept.length > 0 || gap < widest() / 500)) break;
    last &&= complete;
    if (!complete) gap /= 16;
    else {
      kept = patterns;
      const target = prices.bound + gap;
      best.raise(Math.min(target, yield* whole(patterns, target)));
    }
  }
  // Too many patterns: the cheapest plan of those at hand need not be the least, but is a good one.
  if (!best.closed && !spent(search.steps)) yield* whole([...kept, ...known], best.target);
}

/** A long list made short: a plan of the longer lengths holds the true ones too, and a bound of the shorter ones holds for them. */
function* merged(problem: Problem, best: BestPlan, search: BoardSearch, spent: Spent): Generator<void, void> {
  const shorter = mergeLengths(problem, MOST_DISTINCT, false).problem;
  const low = new BoardSearch(shorter);
  const relaxed = yield* columnGeneration(
    shorter,
    low,
    [],
    4 * best.most,
    () => spent(low.steps),
    (bound) => best.proves(bound),
  );
  best.raise((yield* safeBound(shorter, low, relaxed.duals, relaxed.scarcity)).bound);
  const longer = mergeLengths(problem, MOST_DISTINCT, true);
  const solved = yield* solveSize(longer.problem, (steps) => spent(low.steps + steps), best.cost);
  search.steps = low.steps;
  if ("cuts" in solved) best.offer(refined(problem, longer, solved.cuts));
}
