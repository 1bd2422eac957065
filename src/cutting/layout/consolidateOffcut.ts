import { usedLength } from "../model/usedLength.ts";
import type { Cut, Pattern, Problem } from "../model/problem.ts";

/** More patterns than this are left as they are: nobody looks for one long offcut among so many boards. */
const MOST = 150;

/**
 * The same boards with one longer left-over, which is worth more than many short ones: pieces of one board move into the room that others have left.
 *
 * Each board is tried as the one to be emptied, its pieces going one by one where they fill best. A board that loses all its pieces is saved.
 */
export function consolidateOffcut(problem: Problem, cuts: readonly Cut[]): Cut[] {
  let best: readonly Cut[] = cuts;
  if (cuts.length > MOST) return [...cuts];
  let longest = Math.max(...cuts.map((cut) => roomLeft(problem, cut.pattern)));
  for (let donor = 0; donor < cuts.length; donor++) {
    const emptied = emptiedBoard(problem, cuts, donor);
    if (emptied.left <= longest) continue;
    longest = emptied.left;
    best = emptied.cuts;
  }
  return [...best];
}

/** Below zero for a piece that takes an untrimmed board. */
function roomLeft(problem: Problem, { type, items, copies }: Pattern): number {
  return problem.types[type]!.room - usedLength(problem, items, copies);
}

function emptiedBoard(problem: Problem, cuts: readonly Cut[], donor: number): { cuts: Cut[]; left: number } {
  const others = cuts.map((cut, n) => ({
    pattern: cut.pattern,
    times: n === donor ? cut.times - 1 : cut.times,
    left: roomLeft(problem, cut.pattern),
  }));
  let kept = cuts[donor]!.pattern;
  for (const item of cuts[donor]!.pattern.items) {
    while (kept.items.includes(item)) {
      const { weight, saves } = problem.items[item]!;
      let chosen: { from: number; pattern: Pattern; left: number } | null = null;
      for (let n = 0; n < others.length; n++) {
        const other = others[n]!;
        if (other.times === 0 || other.left + saves < weight) continue;
        const pattern = changed(other.pattern, item, 1);
        const left = roomLeft(problem, pattern);
        if (left >= 0 && (chosen === null || left < chosen.left)) chosen = { from: n, pattern, left };
      }
      if (chosen === null) break;
      others[chosen.from]!.times--;
      others.push({ pattern: chosen.pattern, times: 1, left: chosen.left });
      kept = changed(kept, item, -1);
    }
  }
  const all = [
    ...others.map(({ pattern, times }) => ({ pattern, times })),
    { pattern: kept, times: kept.items.length > 0 ? 1 : 0 },
  ];
  return { cuts: all.filter((cut) => cut.times > 0), left: roomLeft(problem, kept) };
}

/** A pattern with one piece more or less. */
function changed({ type, items, copies }: Pattern, item: number, by: 1 | -1): Pattern {
  const all = [...new Set([...items, item])].sort((a, b) => a - b);
  const counts = all.map((i) => (items.includes(i) ? copies[items.indexOf(i)]! : 0) + (i === item ? by : 0));
  return { type, items: all.filter((_, n) => counts[n]! > 0), copies: counts.filter((count) => count > 0) };
}
