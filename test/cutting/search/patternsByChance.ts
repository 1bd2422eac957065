import type { Pattern, Problem } from "../../../src/cutting/model/problem.ts";
import { chance } from "../../solids/chance.ts";
import { leastOfColumns } from "../otherSolver.ts";
import { plainItem } from "../plainItem.ts";

/** Some lengths, and by chance patterns for them that need not be good ones; what weighs what does not matter here. Invented. */
export function patternsOf(seed: number): { problem: Problem; patterns: Pattern[] } {
  const random = chance(seed);
  const upTo = (n: number): number => Math.floor(random() * n);
  const lengths = 4 + upTo(5);
  const items = Array.from({ length: lengths }, (_, i) => plainItem(10, 1 + upTo(9), 0, i === lengths - 1));
  const types = [96, 120, 144].map((length, j) => ({
    length,
    room: length,
    alone: [],
    cost: seed % 2 === 0 ? length : length + random(),
    count: j === 1 && seed % 3 === 0 ? 2 + upTo(4) : Infinity,
  }));
  const patterns = Array.from({ length: 3 * lengths }, (_, n): Pattern => {
    const own = [...items.keys()].filter((i) => i === n % lengths || upTo(4) === 0);
    return { type: upTo(3), items: own, copies: own.map(() => 1 + upTo(3)) };
  });
  return { problem: { items, groups: [{ setup: 0, nodes: [] }], types }, patterns };
}

/** What a plan of these patterns costs at least by HiGHS, in whole boards unless said otherwise; null where there is none. */
export const leastByHighs = (
  { items, types }: Problem,
  patterns: readonly Pattern[],
  whole?: boolean,
): Promise<number | null> =>
  leastOfColumns(
    items.map(({ demand }) => demand),
    patterns.map((pattern) => ({
      way: items.map((_, i) => pattern.copies[pattern.items.indexOf(i)] ?? 0),
      board: pattern.type,
    })),
    types,
    whole,
  );
