import { describe, expect, it } from "vitest";
import { costOf } from "../../../src/cutting/model/costOf.ts";
import type { Problem } from "../../../src/cutting/model/problem.ts";
import { BoardSearch } from "../../../src/cutting/search/boardSearch.ts";
import { divedPlan } from "../../../src/cutting/search/divedPlan.ts";
import { partOf, type Spent } from "../../../src/cutting/search/spent.ts";
import { tailPlan } from "../../../src/cutting/search/tailPlan.ts";
import { chance } from "../../solids/chance.ts";
import { atOnce } from "../atOnce.ts";
import { plainItem } from "../plainItem.ts";
import { begun, everyPattern, isPlan, smallProblems } from "./everyPattern.ts";
import { leastByHighs } from "./patternsByChance.ts";

const never: Spent = () => false;

/** Small problems that have a plan, and its least cost by HiGHS. */
async function planned(): Promise<(readonly [Problem, number])[]> {
  const all = smallProblems(30).map(async (problem) => {
    const least = await leastByHighs(problem, everyPattern(problem));
    return least === null ? [] : [[problem, least] as const];
  });
  return (await Promise.all(all)).flat();
}

/** Many lengths of which a board holds four: more patterns than are written down. Invented. */
function manyLengths(): Problem {
  const random = chance(1);
  const items = Array.from({ length: 40 }, (_, i) => plainItem(200 + Math.floor(random() * 60), 1, 0, i === 39));
  return {
    items,
    groups: [{ setup: 0, nodes: [] }],
    types: [{ length: 960, room: 960, alone: [], cost: 1, count: Infinity }],
  };
}

describe("the plan of a few boards", () => {
  it("is the least below the target, and none where nothing is below", async () => {
    for (const [problem, least] of await planned()) {
      const { search, relaxed } = begun(problem);
      const cuts = atOnce(tailPlan(problem, search, relaxed, least + 1e-6, never));
      expect(isPlan(problem, cuts!)).toBe(true);
      expect(costOf(problem, cuts!)).toBeCloseTo(least, 6);
      expect(atOnce(tailPlan(problem, search, relaxed, least - 1e-2, never))).toBeNull();
    }
  });

  it("is not looked for among too many patterns, nor beyond the work allowed", () => {
    const problem = manyLengths();
    const { search, relaxed } = begun(problem);
    expect(atOnce(tailPlan(problem, search, relaxed, 20, never))).toBeUndefined();
    const [small] = smallProblems(1);
    const begin = begun(small!);
    expect(atOnce(tailPlan(small!, begin.search, begin.relaxed, 1e9, () => true))).toBeNull();
  });
});

describe("a plan by diving", () => {
  it("costs the least at most attempts, never less", async () => {
    let [hits, dives] = [0, 0];
    for (const [problem, least] of await planned()) {
      for (let attempt = 0; attempt < 6; attempt++) {
        const { search, columns, relaxed } = begun(problem);
        const cuts = atOnce(divedPlan(problem, search, columns, relaxed, attempt, least + 1e-3, never));
        dives++;
        if (cuts) {
          hits++;
          expect(isPlan(problem, cuts)).toBe(true);
          expect(costOf(problem, cuts)).toBeGreaterThan(least - 1e-6);
          expect(costOf(problem, cuts)).toBeLessThan(least + 1e-3);
        }
      }
    }
    expect(dives).toBeGreaterThan(100);
    expect(hits).toBeGreaterThan(0.8 * dives);
  });

  it("goes another way at another attempt, the same at the same, and ends when the work allowed is done", () => {
    const problem = manyLengths();
    const dive = (attempt: number, spent = never) => {
      const { search, columns, relaxed } = begun(problem);
      return JSON.stringify(atOnce(divedPlan(problem, search, columns, relaxed, attempt, 1e9, spent)));
    };
    const first = [0, 1, 2, 3].map((attempt) => dive(attempt));
    expect(new Set(first).size).toBeGreaterThan(2);
    expect(first[0]).toBe(dive(0));
    expect(dive(0, () => true)).toBe("null");
  });
});

it("a part of the work counts as the whole's, and ends with it or by its own limit", () => {
  const [problem] = smallProblems(1);
  const search = new BoardSearch(problem!);
  search.steps = 100;
  const part = partOf(search, (steps) => steps > 150, 70);
  expect([part(40), search.steps]).toEqual([false, 140]);
  expect([part(60), search.steps]).toEqual([true, 160]);
  expect(partOf(search, never, 70)(71)).toBe(true);
  expect(partOf(search, never)(1e12)).toBe(false);
});
