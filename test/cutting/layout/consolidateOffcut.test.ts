import { describe, expect, it } from "vitest";
import { consolidateOffcut } from "../../../src/cutting/layout/consolidateOffcut.ts";
import type { Cut, Problem } from "../../../src/cutting/model/problem.ts";
import { plainItem } from "../plainItem.ts";

/** Pieces of these weights on boards of 100; a cut is the weights on a board, and how many there are of it. */
function moved(weights: readonly number[], ...boards: readonly (readonly [number[], number])[]): [number[], number][] {
  const problem: Problem = {
    items: weights.map((weight, i) => plainItem(weight, 9, 0, i === weights.length - 1)),
    groups: [{ setup: 0, nodes: [] }],
    types: [{ length: 100, room: 100, alone: [], cost: 100, count: Infinity }],
  };
  const cuts = boards.map(([own, times]): Cut => {
    const items = [...weights.keys()].filter((i) => own.includes(weights[i]!));
    const copies = items.map((i) => own.filter((weight) => weight === weights[i]).length);
    return { pattern: { type: 0, items, copies }, times };
  });
  return consolidateOffcut(problem, cuts).map(({ pattern: { items, copies }, times }) => [
    items.flatMap((i, n) => Array<number>(copies[n]!).fill(weights[i]!)),
    times,
  ]);
}

// By hand, what is left of each board in mind.
describe("consolidateOffcut", () => {
  it("moves pieces of one board into the room of others, where they fill best, for one longer left-over", () => {
    // 30 and 25 are left; 20 moves beside 75, and 50 are left of the other.
    expect(moved([75, 50, 20], [[75], 1], [[50, 20], 1])).toEqual([
      [[75, 20], 1],
      [[50], 1],
    ]);
    // Beside 78 it leaves less than beside 75.
    expect(moved([78, 75, 50, 20], [[75], 1], [[78], 1], [[50, 20], 1])).toEqual([
      [[75], 1],
      [[78, 20], 1],
      [[50], 1],
    ]);
  });

  it("keeps the pieces of a board in their order, the moved one in its place", () => {
    expect(moved([50, 40, 30, 25], [[50, 25], 1], [[40, 30], 1])).toEqual([
      [[40, 30, 25], 1],
      [[50], 1],
    ]);
    expect(moved([60, 45, 25, 10], [[60, 10], 1], [[45, 25], 1])).toEqual([
      [[60, 25, 10], 1],
      [[45], 1],
    ]);
  });

  it("takes one board of several that are alike, and leaves the others", () => {
    expect(moved([75, 50, 20], [[75], 3], [[50, 20], 2])).toEqual([
      [[75], 2],
      [[50, 20], 1],
      [[75, 20], 1],
      [[50], 1],
    ]);
  });

  it("saves a board that loses all its pieces", () => {
    expect(moved([80, 20], [[80], 1], [[20], 1])).toEqual([[[80, 20], 1]]);
  });

  it("leaves boards as they are where no left-over grows, and so many that nobody would look", () => {
    const full: [number[], number][] = [
      [[60, 40], 2],
      [[60, 30], 1],
    ];
    expect(moved([60, 40, 30], ...full)).toEqual(full);
    const weights = Array.from({ length: 151 }, (_, n) => 60 + n / 10_000);
    const many = [...weights.map((weight): [number[], number] => [[weight], 1]), [[20], 1] as [number[], number]];
    expect(moved([...weights, 20], ...many)).toEqual(many);
    expect(moved([...weights.slice(0, 149), 20], ...many.slice(0, 149), many.at(-1)!)).toHaveLength(149);
  });
});
