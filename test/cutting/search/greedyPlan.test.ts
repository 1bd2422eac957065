import { expect, it } from "vitest";
import { greedyPlan } from "../../../src/cutting/search/greedyPlan.ts";
import type { Item, Problem } from "../../../src/cutting/model/problem.ts";
import { atOnce } from "../atOnce.ts";
import { plainItem } from "../plainItem.ts";

/** What each board of the plan holds, largest first, on boards of 100. */
function planned(items: readonly Item[]): number[][] | null {
  const groups = [...new Set(items.map(({ group }) => group))].map(() => ({ setup: 0, nodes: null }));
  const types = [{ length: 100, room: 100, alone: [], cost: 100, count: Infinity }];
  const cuts = atOnce(greedyPlan({ items, groups, types } as Problem));
  return (
    cuts?.flatMap(({ pattern, times }) => {
      const board = pattern.items.flatMap((i, k) => Array<number>(pattern.copies[k]!).fill(items[i]!.weight));
      return Array.from({ length: times }, () => board.sort((a, b) => b - a));
    }) ?? null
  );
}

// By hand: 60 and 40 fill a board; the small ones first would take three.
it("fills each board with the largest piece that still fits, in whatever order the pieces stand", () => {
  expect(planned([plainItem(40, 2, 0), plainItem(60, 2, 0)])).toEqual([
    [60, 40],
    [60, 40],
  ]);
});

it("goes on until every group is cut, were one of them used up before", () => {
  expect(planned([plainItem(60, 1, 0), plainItem(55, 3, 1)])).toEqual([[60], [55], [55], [55]]);
});
