import { columnGeneration, type Relaxed } from "./columnGeneration.ts";
import type { BoardSearch } from "./boardSearch.ts";
import type { Cut, Pattern, Problem } from "../model/problem.ts";

/**
 * A whole plan from a fractional one, by diving: whole boards are kept, or where there is none one board of the pattern that is nearest to whole, and the fractional plan of what is
 * still wanted is found anew, until nothing is.
 *
 * @param attempt each dives another way, always the same. @param target given up as soon as the plan cannot cost less.
 */
export function* divedPlan(
  problem: Problem,
  search: BoardSearch,
  relaxed: Relaxed,
  attempt: number,
  target: number,
  out: () => boolean,
): Generator<void, Cut[] | null> {
  const cuts: Cut[] = [];
  const wanted = problem.items.map((item) => item.demand);
  const left = problem.types.map((type) => type.count);
  const dearest = Math.max(...problem.types.map((type) => type.cost)) || 1;
  let cost = 0;
  const take = (pattern: Pattern, times: number): void => {
    pattern.items.forEach((i, k) => (wanted[i] = Math.max(0, wanted[i]! - pattern.copies[k]! * times)));
    left[pattern.type]! -= times;
    cost += problem.types[pattern.type]!.cost * times;
    cuts.push({ pattern, times });
  };
  for (let now = relaxed, depth = 0; !out(); depth++) {
    let taken = 0;
    let [nearest, most]: [Pattern | null, number] = [null, -1];
    now.cuts.forEach(({ pattern, times }, n) => {
      // Later dives keep fewer at first.
      const less = depth === 0 ? attempt % 4 : 0;
      const whole = Math.min(left[pattern.type]!, Math.max(0, Math.floor(times + 1e-4) - less));
      if (whole > 0) take(pattern, whole);
      taken += whole;
      const part = Math.min(1, times) + (attempt === 0 ? 0 : shift(attempt, depth * 97 + n));
      if (left[pattern.type]! > 0 && part > most) [nearest, most] = [pattern, part];
    });
    if (taken === 0) {
      if (nearest === null) return null;
      take(nearest, 1);
    }
    if (wanted.every((count) => count === 0)) return cuts;
    const rest: Problem = {
      ...problem,
      items: problem.items.map((item, i) => ({ ...item, demand: wanted[i]! })),
      types: problem.types.map((type, j) => ({ ...type, count: left[j]! })),
    };
    const proper = now.patterns.filter(({ items, copies }) => items.every((i, k) => copies[k]! <= wanted[i]!));
    now = yield* columnGeneration(rest, search, proper, 10 * dearest, out, () => false);
    const least = now.cuts.reduce((sum, { pattern, times }) => sum + problem.types[pattern.type]!.cost * times, cost);
    // The little more of every piece that the linear program asks for is worth less than this.
    if (now.short || least - 2e-4 * dearest >= target) return null;
  }
  return null;
}

/** A number in 0 to 0.5 that looks like chance and is the same every time. */
function shift(attempt: number, n: number): number {
  const x = Math.sin(attempt * 127.1 + n * 311.7) * 43758.5453;
  return (x - Math.floor(x)) * 0.5;
}
