import { dearestOf } from "../../../src/cutting/model/costOf.ts";
import { problemsOf } from "../../../src/cutting/model/problemsOf.ts";
import type { Cut, Pattern, Problem } from "../../../src/cutting/model/problem.ts";
import { fits, usedLength } from "../../../src/cutting/model/usedLength.ts";
import { BoardSearch } from "../../../src/cutting/search/boardSearch.ts";
import { ColumnGeneration } from "../../../src/cutting/search/columnGeneration.ts";
import { atOnce } from "../atOnce.ts";
import { randomInstance, slantedInstance } from "../instances.ts";

/** Small problems by chance: plain pieces, pieces with hands, slanting ends, boards that are limited or have prices. Invented. */
export const smallProblems = (count: number): Problem[] =>
  Array.from({ length: count }, (_, n) => {
    const list = n % 2 === 0 ? randomInstance(n + 1, true) : slantedInstance(n + 1);
    return problemsOf(list.pieces, list.boards, list, "upright")[0]!.problem;
  });

/** Every way to cut a board of every type, full or not, written down one by one. */
export function everyPattern(problem: Problem): Pattern[] {
  const found: Pattern[] = [];
  problem.types.forEach((board, type) => {
    const fill = (i: number, items: number[], copies: number[]): void => {
      if (i === problem.items.length) {
        if (items.length > 0 && fits(board, usedLength(problem, items, copies), items, copies))
          found.push({ type, items, copies });
        return;
      }
      fill(i + 1, items, copies);
      for (let k = 1; k <= problem.items[i]!.demand; k++) fill(i + 1, [...items, i], [...copies, k]);
    };
    fill(0, [], []);
  });
  return found;
}

/** A search of a problem, with its fractional plan. */
export function begun(problem: Problem) {
  const search = new BoardSearch(problem);
  const columns = new ColumnGeneration(problem, search, [], 1000 * dearestOf(problem));
  return { search, columns, relaxed: atOnce(columns.solve({ out: () => false })) };
}

/** Whether boards hold what they are cut to, and are enough of every item and not too many of any type. */
export function isPlan(problem: Problem, cuts: readonly Cut[]): boolean {
  const cut = problem.items.map(() => 0);
  const used = problem.types.map(() => 0);
  for (const { pattern, times } of cuts) {
    const { type, items, copies } = pattern;
    items.forEach((i, n) => (cut[i]! += copies[n]! * times));
    used[type]! += times;
    if (!fits(problem.types[type]!, usedLength(problem, items, copies), items, copies)) return false;
  }
  return (
    problem.items.every(({ demand }, i) => cut[i]! >= demand) &&
    problem.types.every(({ count }, j) => used[j]! <= count)
  );
}
