import { problemsOf } from "../../../src/cutting/model/problemsOf.ts";
import type { Cut, Pattern, Problem } from "../../../src/cutting/model/problem.ts";
import { fits, usedLength } from "../../../src/cutting/model/usedLength.ts";
import { optimum } from "../otherSolver.ts";
import { randomInstance, slantedInstance } from "../instances.ts";

/** Small problems by chance: plain pieces, pieces with hands, slanting ends, boards that are limited or have prices. Invented. */
export const smallProblems = (count: number): Problem[] =>
  Array.from({ length: count }, (_, n) => {
    const list = n % 2 === 0 ? randomInstance(n + 1, true) : slantedInstance(n + 1);
    return problemsOf(list.pieces, list.boards, list, "upright")[0]!.problem;
  });

/** Every way to cut a board of every type, full or not, written down one by one. */
export function everyPattern(problem: Problem, wanted = problem.items.map(({ demand }) => demand)): Pattern[] {
  const found: Pattern[] = [];
  problem.types.forEach((board, type) => {
    const fill = (i: number, items: number[], copies: number[]): void => {
      if (i === problem.items.length) {
        if (items.length > 0 && fits(board, usedLength(problem, items, copies), items, copies))
          found.push({ type, items, copies });
        return;
      }
      fill(i + 1, items, copies);
      for (let k = 1; k <= wanted[i]!; k++) fill(i + 1, [...items, i], [...copies, k]);
    };
    fill(0, [], []);
  });
  return found;
}

/** What so many of each item, from so many boards of each type, cost at least by HiGHS, in fractions of boards or in whole ones; null where that cannot be. */
export function leastCost(
  problem: Problem,
  wanted: readonly number[],
  left: readonly number[],
  whole: boolean,
): Promise<number | null> {
  const patterns = everyPattern(problem, [...wanted]);
  const rows = wanted.flatMap((count, i) => {
    const terms = patterns.flatMap(({ items, copies }, c) =>
      items.includes(i) ? [`${copies[items.indexOf(i)]} x${c}`] : [],
    );
    if (count === 0) return [];
    return [`p${i}: ${terms.length > 0 ? terms.join(" + ") : "0 x0"} >= ${count}`];
  });
  left.forEach((count, j) => {
    const own = patterns.flatMap(({ type }, c) => (type === j ? [`x${c}`] : []));
    if (count < Infinity && own.length > 0) rows.push(`b${j}: ${own.join(" + ")} <= ${count}`);
  });
  const costs = patterns.map(({ type }, c) => `${problem.types[type]!.cost} x${c}`);
  const general = whole ? `General\n ${patterns.map((_, c) => `x${c}`).join("\n ")}\n` : "";
  return optimum(`Minimize\n c: ${costs.join("\n + ")}\nSubject To\n ${rows.join("\n ")}\n${general}End`);
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
