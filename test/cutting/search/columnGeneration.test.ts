import { describe, expect, it } from "vitest";
import { costOf, dearestOf } from "../../../src/cutting/model/costOf.ts";
import type { Problem } from "../../../src/cutting/model/problem.ts";
import { restOf } from "../../../src/cutting/model/restOf.ts";
import { BoardSearch } from "../../../src/cutting/search/boardSearch.ts";
import { ColumnGeneration, type Relaxed } from "../../../src/cutting/search/columnGeneration.ts";
import { chance } from "../../solids/chance.ts";
import { atOnce } from "../atOnce.ts";
import { everyPattern, smallProblems } from "./everyPattern.ts";
import { leastByHighs } from "./patternsByChance.ts";

const never = () => false;
const leastOf = (problem: Problem) => leastByHighs(problem, everyPattern(problem), false);

describe("the linear program over patterns", () => {
  // The least cost is HiGHS's over every pattern written down.
  it("comes to the least cost of fractions of boards, of all that is wanted and then of what is left", async () => {
    let [short, whole] = [0, 0];
    for (const [n, made] of smallProblems(24).entries()) {
      const random = chance(n);
      // Of every third all boards are limited.
      const types = made.types.map((type) => (n % 3 === 0 ? { ...type, count: 1 + Math.floor(random() * 2) } : type));
      const problem: Problem = { ...made, types };
      const all = { wanted: problem.items.map(({ demand }) => demand), left: problem.types.map(({ count }) => count) };
      const rests = [1, 2, 3].map(() => ({
        wanted: all.wanted.map((count) => Math.floor(random() * (count + 1))),
        left: all.left.map((count) => (count === Infinity ? count : Math.floor(random() * (count + 1)))),
      }));
      const columns = new ColumnGeneration(problem, new BoardSearch(problem), [], 1000 * dearestOf(problem));
      for (const open of [all, ...rests]) {
        const relaxed: Relaxed = atOnce(
          open === all ? columns.solve({ out: never }) : columns.solve({ out: never }, open),
        );
        const least = open.wanted.some((count) => count > 0) ? await leastOf(restOf(problem, open)) : 0;
        expect([n, relaxed.short]).toEqual([n, least === null]);
        if (least === null) {
          short++;
          continue;
        }
        whole++;
        const cost = costOf(problem, relaxed.cuts);
        // A little more of every piece is asked for.
        expect(cost).toBeGreaterThan(least - 1e-6);
        expect(cost).toBeLessThan(least + 1e-3 * dearestOf(problem));
        for (const { pattern } of relaxed.cuts)
          pattern.items.forEach((i, k) => expect(pattern.copies[k]).toBeLessThanOrEqual(open.wanted[i]!));
        const worth = open.wanted.reduce((sum, count, i) => sum + count * relaxed.duals[i]!, 0);
        const scarce = relaxed.scarcity.reduce((sum, one, j) => sum + (one > 0 ? one * open.left[j]! : 0), 0);
        expect(worth - scarce).toBeCloseTo(least, 2);
      }
    }
    expect(short).toBeGreaterThan(3);
    expect(whole).toBeGreaterThan(60);
  });

  it("looks for no pattern where what it has is cheap enough, out or proved", () => {
    const [problem] = smallProblems(1) as [Problem];
    const made = () => new ColumnGeneration(problem, new BoardSearch(problem), [], 10 * dearestOf(problem));
    const [cheap, out, proved] = [made(), made(), made()];
    atOnce(cheap.solve({ out: never, cheap: Infinity }));
    atOnce(out.solve({ out: () => true }));
    expect([cheap.patterns, out.patterns]).toEqual([[], []]);
    const asked: (readonly [number, number])[] = [];
    atOnce(proved.solve({ out: never, proves: (bound, value) => asked.push([bound, value]) > 0 }));
    expect(asked).toHaveLength(1);
    expect(asked[0]![0]).toBeLessThan(asked[0]![1]);
    expect(proved.patterns.length).toBeGreaterThan(0);
  });
});
