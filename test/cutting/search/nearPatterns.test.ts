import { describe, expect, it } from "vitest";
import { dearestOf } from "../../../src/cutting/model/costOf.ts";
import type { Pattern, Problem } from "../../../src/cutting/model/problem.ts";
import { fits, usedLength } from "../../../src/cutting/model/usedLength.ts";
import { patternKey } from "../../../src/cutting/search/boardSearch.ts";
import { EndStates } from "../../../src/cutting/search/endStates.ts";
import { KnapsackBounds } from "../../../src/cutting/search/knapsackBounds.ts";
import { nearestPatterns, nearPatterns } from "../../../src/cutting/search/nearPatterns.ts";
import { safeBound } from "../../../src/cutting/search/safeBound.ts";
import { worthOfCopies } from "../../../src/cutting/search/worthOfCopies.ts";
import { atOnce } from "../atOnce.ts";
import { begun, everyPattern, smallProblems } from "./everyPattern.ts";

function priced(problem: Problem) {
  const { search, relaxed } = begun(problem);
  return { search, prices: atOnce(safeBound(problem, search, relaxed.duals, relaxed.scarcity)) };
}

const worthOf = (worths: ArrayLike<number>, { items, copies }: Pattern): number =>
  items.reduce((sum, i, n) => sum + worths[i]! * copies[n]!, 0);

/** Full, and on no board for which a cheaper one would do. */
function isOfUse(problem: Problem, all: readonly Pattern[], { type, items, copies }: Pattern): boolean {
  const { types } = problem;
  const used = usedLength(problem, items, copies);
  const fuller = all.some(
    (other) =>
      other.type === type &&
      other.items.reduce((sum, i, n) => sum + other.copies[n]! - (copies[items.indexOf(i)] ?? 0), 0) === 1 &&
      items.every((i, n) => (other.copies[other.items.indexOf(i)] ?? 0) >= copies[n]!),
  );
  const alone = items.length === 1 && copies[0] === 1 && types[type]!.alone.includes(items[0]!);
  return (
    alone ||
    (!fuller &&
      !types
        .slice(0, type)
        .some(
          (board) => board.count === Infinity && board.cost <= types[type]!.cost && fits(board, used, items, copies),
        ))
  );
}

describe("patterns near to being of use", () => {
  it("are all of them: as written down one by one", () => {
    let found = 0;
    for (const [n, problem] of smallProblems(20).entries()) {
      const { search, prices } = priced(problem);
      const all = everyPattern(problem);
      for (const gap of [0.02, 0.1, 0.4].map((part) => part * dearestOf(problem))) {
        const { patterns, complete } = atOnce(nearPatterns(problem, search, prices, gap, 1e6));
        expect(complete).toBe(true);
        const reduced = (pattern: Pattern) => prices.spend[pattern.type]! - worthOf(prices.worths, pattern);
        patterns.forEach((pattern) => expect(reduced(pattern)).toBeLessThan(gap * (1 + 1e-6)));
        const near = all.filter((pattern) => reduced(pattern) < gap * (1 - 1e-6) && isOfUse(problem, all, pattern));
        const keys = new Set(patterns.map(patternKey));
        expect([n, near.filter((pattern) => !keys.has(patternKey(pattern)))]).toEqual([n, []]);
        found += near.length;
        const few = atOnce(nearPatterns(problem, search, prices, gap, patterns.length - 1));
        expect(few.complete).toBe(false);
      }
    }
    expect(found).toBeGreaterThan(400);
  });

  it("are as many of the nearest as asked for, and those that are known, none twice", () => {
    for (const problem of smallProblems(8)) {
      const { search, prices } = priced(problem);
      const widest = 0.5 * dearestOf(problem);
      const all = atOnce(nearPatterns(problem, search, prices, widest, 1e6)).patterns;
      const known = all.slice(-2);
      const nearest = atOnce(nearestPatterns(problem, search, prices, known, widest, 12));
      const keys = nearest.map(patternKey);
      expect(new Set(keys).size).toBe(keys.length);
      known.forEach((pattern) => expect(keys).toContain(patternKey(pattern)));
      expect(nearest.length).toBeLessThanOrEqual(14);
      // The next step out holds too many.
      const reduced = (pattern: Pattern) => prices.spend[pattern.type]! - worthOf(prices.worths, pattern);
      const own = nearest.filter((pattern) => !known.includes(pattern)).map(reduced);
      const left = all.filter((pattern) => !keys.includes(patternKey(pattern))).map(reduced);
      if (own.length > 0 && left.length > 0) expect(Math.max(...own)).toBeLessThanOrEqual(Math.min(...left) + 1e-9);
    }
  });
});

it("what a board is worth at most is never less than what it holds, and little more with fine tables", () => {
  for (const problem of smallProblems(20)) {
    const worths = problem.items.map(({ weight }, i) => weight * (1 + 0.01 * ((i * 7) % 5)));
    const ends = new EndStates(problem);
    atOnce(ends.fill());
    const demands = problem.items.map(({ demand }) => demand);
    const all = everyPattern(problem);
    for (const cells of [64, 4096]) {
      const bounds = new KnapsackBounds(problem, ends, cells);
      const steps = atOnce(bounds.fill(worthOfCopies(problem, worths, demands)));
      expect(steps).toBeGreaterThan(0);
      expect(steps).toBeLessThanOrEqual(2 * bounds.entries);
      problem.types.forEach(({ room }, type) => {
        const held = all.filter(
          (pattern) => pattern.type === type && usedLength(problem, pattern.items, pattern.copies) <= room,
        );
        const best = Math.max(0, ...held.map((pattern) => worthOf(worths, pattern)));
        const most = bounds.most(0, 0, room);
        expect(most).toBeGreaterThanOrEqual(best * (1 - 1e-12));
        if (cells === 4096 && !ends.inexact.includes(true)) expect(most).toBeLessThanOrEqual(best * 1.02 + 1e-9 * room);
      });
    }
  }
});
