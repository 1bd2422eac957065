import { expect, it } from "vitest";
import type { Problem } from "../../../src/cutting/model/problem.ts";
import { BoardSearch, type BoardQuestion } from "../../../src/cutting/search/boardSearch.ts";
import { chance } from "../../solids/chance.ts";
import { atOnce } from "../atOnce.ts";
import { optimum } from "../otherSolver.ts";
import { plainItem } from "../plainItem.ts";

const ROOM = 100e6;
const DEMAND = 6;

/** Lengths by chance, longest first, worth a little more than they weigh: the less, the harder. Invented. */
function askedOf(
  seed: number,
  lengths: number,
  more: number,
): { problem: Problem; question: BoardQuestion; worths: number[] } {
  const random = chance(seed);
  const weights = Array.from({ length: lengths }, () => 2_000_000 + Math.floor(random() * 9_000_000)).sort(
    (a, b) => b - a,
  );
  const items = weights.map((weight, i) => plainItem(weight, DEMAND, 0, i === lengths - 1));
  const worths = weights.map((weight) => weight / ROOM + random() * more);
  return {
    problem: {
      items,
      groups: [{ setup: 0, nodes: [] }],
      types: [{ length: ROOM, room: ROOM, alone: [], cost: 1, count: Infinity }],
    },
    question: {
      values: worths.map((worth) => Float64Array.from({ length: DEMAND + 1 }, (_, k) => k * worth)),
      thresholds: new Float64Array([0]),
    },
    worths,
  };
}

/** The most that a board can hold, by HiGHS. */
async function mostOf({ items }: Problem, worths: readonly number[]): Promise<number> {
  const sum = (of: (i: number) => number) => items.map((_, i) => `${of(i)} x${i}`);
  const least = await optimum(
    `Minimize\n c: - ${sum((i) => worths[i]!).join(" - ")}\nSubject To\n room: ${sum((i) => items[i]!.weight).join(" + ")} <= ${ROOM}\n` +
      `Bounds\n ${items.map((_, i) => `0 <= x${i} <= ${DEMAND}`).join("\n ")}\nGeneral\n ${items.map((_, i) => `x${i}`).join("\n ")}\nEnd`,
  );
  return -least!;
}

// Invented lengths; the most is HiGHS's (an open-source solver of the University of Edinburgh).
it.each([1, 2, 3, 4, 5, 6])("the most valuable board is HiGHS's, seed %d", async (seed) => {
  const { problem, question, worths } = askedOf(seed, 7, 0.02);
  const { most, patterns } = atOnce(new BoardSearch(problem).ask(question));
  const best = await mostOf(problem, worths);
  expect(most[0]).toBeCloseTo(best, 9);
  const { items, copies } = patterns.at(-1)!;
  expect(items.reduce((sum, i, n) => sum + worths[i]! * copies[n]!, 0)).toBeCloseTo(best, 9);
  expect(items.reduce((sum, i, n) => sum + problem.items[i]!.weight * copies[n]!, 0)).toBeLessThanOrEqual(ROOM);
});

it.each([1, 2])("cut short, its bound holds, and comes down as its tables get finer, seed %d", async (seed) => {
  const { problem, question, worths } = askedOf(seed, 14, 0.0002);
  const search = new BoardSearch(problem);
  const bounds = [1, 2, 3].map(() => atOnce(search.ask({ ...question, limit: 1e6 })).most[0]!);
  expect(bounds[0]).toBeGreaterThan(bounds[1]!);
  expect(bounds[1]).toBeGreaterThan(bounds[2]!);
  expect(bounds[2]).toBeGreaterThan(await mostOf(problem, worths));
});
