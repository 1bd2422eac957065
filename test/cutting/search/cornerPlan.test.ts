import { describe, expect, it } from "vitest";
import { cornerPlan } from "../../../src/cutting/search/cornerPlan.ts";
import { costOf } from "../../../src/cutting/model/costOf.ts";
import type { Cut, Pattern, Problem } from "../../../src/cutting/model/problem.ts";
import { leastByHighs, patternsOf } from "./patternsByChance.ts";
import { atOnce } from "../atOnce.ts";

function planned(
  problem: Problem,
  patterns: readonly Pattern[],
  attempt: number,
  target: number,
  spent = () => false,
): readonly Cut[] | null {
  return atOnce(cornerPlan(problem, patterns, attempt, target, (cost) => cost * (1 - 1e-9), spent));
}

describe("cornerPlan", () => {
  it("comes to a whole plan for no less than HiGHS finds, and in eight attempts at times for just that", async () => {
    let hits = 0;
    for (let seed = 2; seed <= 14; seed++) {
      const { problem, patterns } = patternsOf(seed);
      const least = await leastByHighs(problem, patterns);
      const plans = [...Array(8).keys()].map((attempt) => planned(problem, patterns, attempt, 1e9));
      for (const cuts of plans.filter((plan) => plan !== null)) {
        const cut = (i: number) =>
          cuts.reduce((sum, { pattern, times }) => sum + times * (pattern.copies[pattern.items.indexOf(i)] ?? 0), 0);
        problem.items.forEach(({ demand }, i) => expect(cut(i), `seed ${seed}`).toBeGreaterThanOrEqual(demand));
        problem.types.forEach(({ count }, type) => {
          const boards = cuts.filter(({ pattern }) => pattern.type === type).reduce((sum, { times }) => sum + times, 0);
          expect(boards, `seed ${seed}`).toBeLessThanOrEqual(count);
        });
        expect(costOf(problem, cuts), `seed ${seed}`).toBeGreaterThan(least! - 1e-6);
      }
      if (least === null) continue;
      if (plans.some((cuts) => cuts && costOf(problem, cuts) < least + 1e-6)) hits++;
      expect(planned(problem, patterns, 0, least - 1e-3), `seed ${seed}`).toBeNull();
    }
    expect(hits).toBeGreaterThan(2);
  });

  it("keeps another corner's boards at another attempt, and the same at the same", () => {
    const { problem, patterns } = patternsOf(3);
    const texts = [0, 1, 2, 3, 4, 5, 6, 7].map((n) => JSON.stringify(planned(problem, patterns, n, 1e9)));
    expect(new Set(texts).size).toBeGreaterThan(1);
    expect(JSON.stringify(planned(problem, patterns, 5, 1e9))).toBe(texts[5]);
  });

  it("ends when the work allowed is done", () => {
    const { problem, patterns } = patternsOf(2);
    expect(planned(problem, patterns, 0, 1e9, () => true)).toBeNull();
  });
});
