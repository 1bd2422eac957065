import { worthOfCopies } from "./worthOfCopies.ts";
import type { BoardSearch } from "./boardSearch.ts";
import type { Cut, Pattern, Problem } from "../model/problem.ts";
import type { Relaxed } from "./columnGeneration.ts";

/**
 * A whole plan from a fractional one: whole boards are kept, and what is still wanted is cut from one best board after another.
 *
 * The best board is the one that is worth most for its cost, pieces being worth their duals. Later attempts keep fewer boards and shift the worths a little, each in its own, always the same way.
 */
export function* roundedPlan(
  problem: Problem,
  search: BoardSearch,
  relaxed: Relaxed,
  attempt: number,
): Generator<void, Cut[] | null> {
  const { items, types } = problem;
  const remaining = items.map((item) => item.demand);
  const left = types.map((type) => type.count);
  const cuts: Cut[] = [];
  const take = (pattern: Pattern, times: number): void => {
    pattern.items.forEach((i, k) => (remaining[i] = Math.max(0, remaining[i]! - pattern.copies[k]! * times)));
    left[pattern.type]! -= times;
    cuts.push({ pattern, times });
  };
  for (const { pattern, times } of relaxed.cuts) {
    const whole = Math.min(left[pattern.type]!, Math.max(0, Math.floor(times + 1e-6) - (attempt % 3)));
    if (whole > 0) take(pattern, whole);
  }
  const room = types[types.length - 1]!.room;
  const worths = items.map(
    (item, i) =>
      Math.max(relaxed.duals[i]!, 0) * (1 + (attempt === 0 ? 0 : shift(attempt, i))) + (1e-9 * item.weight) / room,
  );
  const worth = (pattern: Pattern): number =>
    pattern.items.reduce((sum, i, k) => sum + worths[i]! * pattern.copies[k]!, 0);
  while (remaining.some((count) => count > 0)) {
    const values = worthOfCopies(problem, worths, remaining);
    let best: Pattern | null = null;
    for (const ease of [0.9, 0]) {
      const thresholds = Float64Array.from(types, (type, j) => (left[j]! < 1 ? Infinity : type.cost * ease));
      const answer = yield* search.ask({ values, thresholds, limit: 200_000 });
      let rate = 0;
      for (const pattern of answer.patterns) {
        const { cost } = types[pattern.type]!;
        if (worth(pattern) <= rate * cost) continue;
        rate = worth(pattern) / cost;
        best = pattern;
      }
      if (best !== null) break;
    }
    if (best === null) return null;
    const pattern: Pattern = best;
    let most = left[pattern.type]!;
    pattern.items.forEach((i, k) => (most = Math.min(most, Math.floor(remaining[i]! / pattern.copies[k]!))));
    take(pattern, Math.max(1, most));
  }
  return cuts;
}

/** A number in -0.02 to 0.02 that looks like chance and is the same every time. */
function shift(attempt: number, item: number): number {
  const x = Math.sin(attempt * 127.1 + item * 311.7) * 43758.5453;
  return (x - Math.floor(x) - 0.5) * 0.04;
}
