import { consolidateOffcut } from "../layout/consolidateOffcut.ts";
import { BestPlan } from "./bestPlan.ts";
import { BoardSearch } from "./boardSearch.ts";
import { ColumnGeneration } from "./columnGeneration.ts";
import { ExactPlan } from "./exactPlan.ts";
import { greedyPlan } from "./greedyPlan.ts";
import { mergeLengths, refined } from "../model/mergeLengths.ts";
import { safeBound } from "./safeBound.ts";
import type { Spent } from "./spent.ts";
import type { Cut, Problem } from "../model/problem.ts";

/** Beyond this many distinct pieces in one size lengths that lie close together count as one: as the longer for a plan, as the shorter for the bound. */
const MOST_DISTINCT = 400;

/** The best plan found for one size, and what no plan goes below. */
export interface Solved {
  readonly cuts: readonly Cut[];
  readonly cost: number;
  readonly bound: number;
  readonly proved: boolean;
}

/** No plan was found: there is none (`impossible`), there is none below the cost asked for, or the work allowed was spent. */
export interface Unsolved {
  readonly impossible: boolean;
  readonly bound: number;
}

/**
 * The least plan of one size, or the best that was found in the work allowed, with a bound that holds in any case.
 *
 * First a greedy plan. Then the linear program over patterns gives the bound, rounded up to the costs' grid; its rounded solution, filled up board by
 * board, is nearly always as good as the bound. If not, it is dived from: the linear program is solved again after every few boards. If that fails too, other corners of the
 * linear program are tried, each with the best plan of what its whole boards leave. Then all patterns
 * that a cheaper plan can hold are written down, few as a rule, and the cheapest whole plan cut in these is looked for; where they are too many, in the nearest of them. At last dives go on. What stays open is
 * a step of the costs' grid, of orders whose boards have no prices: so many patterns are then as good that they cannot all be written down.
 *
 * @param below only plans that cost less are of use. @returns no cuts when no plan was found, which only limited stock or `below` can bring about.
 */
export function* solveSize(problem: Problem, spent: Spent, below = Infinity): Generator<void, Solved | Unsolved> {
  const best = new BestPlan(problem, below);
  best.raise(materialCost(problem));
  best.offer(yield* greedyPlan(problem));
  const search = new BoardSearch(problem);
  if (!best.closed) {
    if (problem.items.length > MOST_DISTINCT) yield* merged(problem, best, search, spent);
    else yield* new ExactPlan(problem, best, search, spent).run();
  }
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

/** A long list made short: a plan of the longer lengths holds the true ones too, and a bound of the shorter ones holds for them. */
function* merged(problem: Problem, best: BestPlan, search: BoardSearch, spent: Spent): Generator<void, void> {
  const shorter = mergeLengths(problem, MOST_DISTINCT, false).problem;
  const low = new BoardSearch(shorter);
  const relaxed = yield* new ColumnGeneration(shorter, low, [], 4 * best.most).solve({
    out: () => spent(low.steps),
    proves: (bound) => best.proves(bound),
  });
  best.raise((yield* safeBound(shorter, low, relaxed.duals, relaxed.scarcity)).bound);
  const longer = mergeLengths(problem, MOST_DISTINCT, true);
  const solved = yield* solveSize(longer.problem, (steps) => spent(low.steps + steps), best.cost);
  search.steps = low.steps;
  if ("cuts" in solved) best.offer(refined(problem, longer, solved.cuts));
}
