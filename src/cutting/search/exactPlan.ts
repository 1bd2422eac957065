import { dearestOf } from "../model/costOf.ts";
import { ColumnGeneration, type Relaxed } from "./columnGeneration.ts";
import { cornerPlan } from "./cornerPlan.ts";
import { divedPlan } from "./divedPlan.ts";
import { nearestPatterns, nearPatterns } from "./nearPatterns.ts";
import { roundedPlan } from "./roundedPlan.ts";
import { safeBound, type SafePrices } from "./safeBound.ts";
import { partOf, type Spent } from "./spent.ts";
import { wholePlan } from "./wholePlan.ts";
import type { Pattern, Problem } from "../model/problem.ts";
import type { BestPlan } from "./bestPlan.ts";
import type { BoardSearch } from "./boardSearch.ts";

/** More patterns than this are not put into one program; and so many where the least plan of all need not be among them. */
const MOST_PATTERNS = 40_000;
const NEAREST = 3_000;
/** Steps for the cheapest plan in patterns written down, where dives may come to it too, and for plans from corners. */
const WHOLE_STEPS = 300_000_000;
const CORNER_STEPS = 600_000_000;
/** Fractional plans are rounded so often, each time a little otherwise. */
const ROUNDINGS = 3;
/** So many dives before patterns are written down, where a few steps of the costs are left, as where boards have no prices; and so many in all. With fine prices writing them down is faster. */
const FIRST_DIVES = 12;
const DIVES = 200;
const CORNERS = 60;
/** After so many steps the linear program need not come to its end, as long as the bound is as good. */
const LONG = 150_000_000;

/** The search of one size. */
export class ExactPlan {
  readonly #problem: Problem;
  readonly #best: BestPlan;
  readonly #search: BoardSearch;
  readonly #spent: Spent;
  /** What the linear program came to by itself, later dives apart. */
  #known: readonly Pattern[] = [];

  constructor(problem: Problem, best: BestPlan, search: BoardSearch, spent: Spent) {
    this.#problem = problem;
    this.#best = best;
    this.#search = search;
    this.#spent = spent;
  }

  *run(): Generator<void, void> {
    const [problem, best, search] = [this.#problem, this.#best, this.#search];
    const { relaxed, columns } = yield* this.#root();
    this.#known = [...columns.patterns];
    const prices = yield* safeBound(problem, search, relaxed.duals, relaxed.scarcity);
    best.raise(prices.bound);
    for (let n = 0; n < ROUNDINGS && this.#open; n++) best.offer(yield* roundedPlan(problem, search, relaxed, n));
    if (best.within(4)) {
      yield* this.#dive(columns, relaxed, 0, FIRST_DIVES);
      if (this.#open) yield* this.#fromCorners(prices);
    }
    if (this.#open) yield* this.#deepen(prices);
    yield* this.#dive(columns, relaxed, FIRST_DIVES, DIVES);
  }

  get #open(): boolean {
    return !this.#best.closed && !this.#out();
  }

  readonly #out = (): boolean => this.#spent(this.#search.steps);

  /** The fractional plan; with limited stock pieces may be left over in it, if need be at a cost that is beyond any plan's. */
  *#root(): Generator<void, { relaxed: Relaxed; columns: ColumnGeneration }> {
    const [problem, best, search, out] = [this.#problem, this.#best, this.#search, this.#out];
    const first = (best.cuts ?? []).map((cut) => cut.pattern);
    const proves = (bound: number, value: number): boolean =>
      best.proves(bound) || (search.steps > LONG && best.proves(bound, value));
    const columns = new ColumnGeneration(problem, search, first, 10 * dearestOf(problem));
    const relaxed = yield* columns.solve({ out, proves });
    if (!relaxed.short || out()) return { relaxed, columns };
    const dear = new ColumnGeneration(problem, search, columns.patterns, 4 * best.most);
    return { relaxed: yield* dear.solve({ out }), columns: dear };
  }

  *#dive(columns: ColumnGeneration, relaxed: Relaxed, from: number, to: number): Generator<void, void> {
    const best = this.#best;
    for (let n = from; n < to && this.#open; n++)
      best.offer(yield* divedPlan(this.#problem, this.#search, columns, relaxed, n, best.target, this.#spent));
  }

  /**
   * Plans that cost at most so much more than the bound, then twice that, until one is found or the best one is proved.
   *
   * A plan of cost c holds no pattern whose reduced cost is more than c less the bound. So all patterns within that are written down, and the cheapest plan cut in
   * these is the least of all, or none costs less than c.
   */
  *#deepen(prices: SafePrices): Generator<void, void> {
    const [best, bound] = [this.#best, prices.bound];
    const steps = best.within(4) ? WHOLE_STEPS : Infinity;
    // No plan costs less than the next step of the grid, so nothing nearer is looked for.
    let gap = Math.max((best.target - bound) / 8, (best.bound - bound) * 1.001);
    for (let last = false; !last && this.#open; gap *= 2) {
      last = gap > (best.target - bound) / 1.5;
      if (last) gap = best.target - bound;
      const { patterns, complete } = yield* nearPatterns(this.#problem, this.#search, prices, gap, MOST_PATTERNS);
      // Too many patterns: the cheapest plan of the nearest need not be the least, but is a good one.
      if (!complete) return void (yield* this.#whole(yield* this.#nearest(prices), best.target, steps, 0));
      best.raise(Math.min(bound + gap, yield* this.#whole(patterns, bound + gap, steps)));
    }
  }

  *#whole(patterns: readonly Pattern[], target: number, steps = Infinity, rounds?: number): Generator<void, number> {
    const part = partOf(this.#search, this.#spent, steps);
    const found = yield* wholePlan(this.#problem, patterns, target, this.#best.targetOf, part, rounds);
    this.#best.offer(found.cuts);
    return found.bound;
  }

  #nearest(prices: SafePrices): Generator<void, readonly Pattern[]> {
    const widest = this.#best.target - prices.bound;
    return nearestPatterns(this.#problem, this.#search, prices, this.#known, widest, NEAREST);
  }

  /** Plans from corner after corner of the linear program, over the patterns that are nearest to being of use. */
  *#fromCorners(prices: SafePrices): Generator<void, void> {
    const [best, search] = [this.#best, this.#search];
    const end = search.steps + CORNER_STEPS;
    const patterns = yield* this.#nearest(prices);
    for (let n = 0; n < CORNERS && search.steps < end && this.#open; n++) {
      const part = partOf(search, this.#spent);
      best.offer(yield* cornerPlan(this.#problem, patterns, n, best.target, best.targetOf, part));
    }
  }
}
