import { boardsLeft } from "../model/boardsLeft.ts";
import { fits, usedLength } from "../model/usedLength.ts";
import type { Cut, Problem } from "../model/problem.ts";

/**
 * A plan that meets every demand exactly, from one that may cut too much: pieces cut over the demand are left out, and each board becomes the cheapest that still holds
 * what is left.
 */
export function tidyCuts(problem: Problem, cuts: readonly Cut[]): Cut[] {
  const wanted = problem.items.map((item) => item.demand);
  const left = boardsLeft(problem, cuts);
  const tidy: Cut[] = [];
  for (const { pattern, times } of cuts) {
    let open = times;
    while (open > 0) {
      const copies = pattern.items.map((i, k) => Math.min(pattern.copies[k]!, wanted[i]!));
      if (copies.every((count) => count === 0)) {
        left[pattern.type]! += open;
        break;
      }
      let same = open;
      copies.forEach((count, k) => {
        if (count > 0) same = Math.min(same, Math.floor(wanted[pattern.items[k]!]! / count));
      });
      const kept = pattern.items.flatMap((i, k) => (copies[k]! > 0 ? [{ i, count: copies[k]! }] : []));
      const items = kept.map(({ i }) => i);
      const counts = kept.map(({ count }) => count);
      const type = cheapest(problem, items, counts, pattern.type, left);
      if (type !== pattern.type) same = Math.min(same, left[type]!);
      kept.forEach(({ i, count }) => (wanted[i]! -= count * same));
      left[type]! -= same;
      left[pattern.type]! += same;
      tidy.push({ pattern: { type, items, copies: counts }, times: same });
      open -= same;
    }
  }
  return tidy;
}

function cheapest(
  problem: Problem,
  items: readonly number[],
  copies: readonly number[],
  own: number,
  left: readonly number[],
): number {
  const used = usedLength(problem, items, copies);
  let best = own;
  problem.types.forEach((type, j) => {
    if (type.cost < problem.types[best]!.cost && left[j]! >= 1 && fits(type, used, items, copies)) best = j;
  });
  return best;
}
