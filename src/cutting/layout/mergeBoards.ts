import { boardsLeft } from "../model/boardsLeft.ts";
import { usedLength } from "../model/usedLength.ts";
import type { Cut, Pattern, Problem } from "../model/problem.ts";

/** More patterns than this are left as they are: the work grows with their square. */
const MOST = 400;

/** The same pieces from fewer boards: two boards become one wherever one holds both for no more money. */
export function mergeBoards(problem: Problem, cuts: readonly Cut[]): Cut[] {
  const merged = cuts.map(({ pattern, times }) => ({ pattern, times }));
  if (cuts.length > MOST) return merged;
  const left = boardsLeft(problem, cuts);
  for (let a = 0; a < merged.length; a++) {
    for (let b = 0; b <= a; b++) {
      const [one, other] = [merged[a]!, merged[b]!];
      const pairs = a === b ? Math.floor(one.times / 2) : Math.min(one.times, other.times);
      if (pairs === 0) continue;
      const both = together(problem, one.pattern, other.pattern, left);
      if (both === null) continue;
      const times = Math.min(pairs, left[both.type]!);
      one.times -= times;
      other.times -= times;
      left[one.pattern.type]! += times;
      left[other.pattern.type]! += times;
      left[both.type]! -= times;
      merged.push({ pattern: both, times });
    }
  }
  return merged.filter((cut) => cut.times > 0);
}

function together(problem: Problem, a: Pattern, b: Pattern, left: readonly number[]): Pattern | null {
  const { types } = problem;
  const budget = (types[a.type]!.cost + types[b.type]!.cost) * (1 + 1e-12);
  const items = [...new Set([...a.items, ...b.items])].sort((x, y) => x - y);
  const copies = items.map((i) => copiesIn(a, i) + copiesIn(b, i));
  const taken = usedLength(problem, items, copies);
  let best: Pattern | null = null;
  types.forEach((type, j) => {
    if (
      type.room >= taken &&
      type.cost <= budget &&
      left[j]! >= 1 &&
      (best === null || type.cost < types[best.type]!.cost)
    )
      best = { type: j, items, copies };
  });
  return best;
}

function copiesIn(pattern: Pattern, item: number): number {
  const n = pattern.items.indexOf(item);
  return n < 0 ? 0 : pattern.copies[n]!;
}
