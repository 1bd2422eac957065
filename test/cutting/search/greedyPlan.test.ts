import { expect, it } from "vitest";
import { greedyPlan } from "../../../src/cutting/search/greedyPlan.ts";
import type { Item, Problem } from "../../../src/cutting/model/problem.ts";
import { atOnce } from "../atOnce.ts";
import { plainItem } from "../plainItem.ts";

const type = (length: number, count = Infinity) => ({ length, room: length, alone: [], cost: length, count });

/** What each board of the plan holds, largest first. */
function planned(items: readonly Item[], types: Problem["types"] = [type(100)]): number[][] | null {
  const groups = [...new Set(items.map(({ group }) => group))].map(() => ({ setup: 0, nodes: [] }));
  const cuts = atOnce(greedyPlan({ items, groups, types }));
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

it("takes no board that holds nothing, and has no plan where the others run out", () => {
  const boards = (count: number) => [type(50), type(100, count)];
  expect(planned([plainItem(60, 2, 0)], boards(2))).toEqual([[60], [60]]);
  expect(planned([plainItem(60, 2, 0)], boards(1))).toBeNull();
});
