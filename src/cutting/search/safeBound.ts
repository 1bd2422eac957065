import type { BoardSearch } from "./boardSearch.ts";
import { worthOfCopies } from "./worthOfCopies.ts";
import type { Problem } from "../model/problem.ts";

/** Duals are made whole multiples of the greatest one over this, so that the worth of a board is an exact whole number. */
const PARTS = 2 ** 30;

/** What pieces are worth and boards may cost, such that no pattern is worth more than its board may cost; and what that proves. */
export interface SafePrices {
  /** No plan costs less. */
  readonly bound: number;
  readonly worths: readonly number[];
  /** For each type of board its cost, and what one more of it would save. */
  readonly spend: readonly number[];
}

/**
 * A cost that no plan goes below, whatever rounding did to the duals it is made from.
 *
 * Duals u (one per item) and p (one per limited type, what one more such board would save) prove sum(demand u) - sum(count p) as soon as no board is worth more in u than
 * its cost and p. Duals are rounded down to whole numbers, the most valuable board of each type is found in these exactly (or bounded, where that takes too
 * long), and u is scaled down by the greatest excess (Farley 1990): so the proof needs no trust in the linear program.
 */
export function* safeBound(
  problem: Problem,
  search: BoardSearch,
  duals: ArrayLike<number>,
  scarcity: ArrayLike<number>,
): Generator<void, SafePrices> {
  const { items, types } = problem;
  const spend = types.map((type, j) => type.cost + scarcity[j]!);
  let greatest = 0;
  for (let i = 0; i < items.length; i++) greatest = Math.max(greatest, duals[i]!);
  if (!(greatest > 0)) return { bound: 0, worths: items.map(() => 0), spend };
  const whole = items.map((_, i) => Math.floor((Math.max(0, duals[i]!) / greatest) * PARTS));
  const values = worthOfCopies(
    problem,
    whole,
    items.map((item) => item.demand),
  );
  const thresholds = Float64Array.from(spend, (cost) => Math.floor((cost / greatest) * PARTS));
  const answer = yield* search.ask({ values, thresholds, limit: 60_000_000 });
  let scale = 1;
  spend.forEach((cost, j) => (scale = Math.min(scale, cost / ((answer.most[j]! / PARTS) * greatest) || 0)));
  // What is left to rounding is a handful of multiplications.
  const worths = whole.map((worth) => (worth / PARTS) * greatest * scale * (1 - 1e-13));
  let bound = items.reduce((sum, item, i) => sum + item.demand * worths[i]!, 0) * (1 - 1e-13);
  types.forEach((type, j) => (bound -= scarcity[j]! > 0 ? type.count * scarcity[j]! : 0));
  return { bound: Math.max(0, bound), worths, spend };
}
