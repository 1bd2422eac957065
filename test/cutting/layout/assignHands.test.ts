import { expect, it } from "vitest";
import { assignHands } from "../../../src/cutting/layout/assignHands.ts";
import type { Cut, Item, Problem } from "../../../src/cutting/model/problem.ts";
import { chance } from "../../solids/chance.ts";
import { plainItem } from "../plainItem.ts";

/** How many of an item are cut in all. */
const countOf = (cuts: readonly Cut[], item: number): number =>
  cuts.reduce((sum, { pattern, times }) => sum + times * (pattern.copies[pattern.items.indexOf(item)] ?? 0), 0);

/** Items of two keys of either hand and one without, on boards by chance: of each of either hand an even number in all. Invented. */
function boardsOf(seed: number): { problem: Problem; cuts: Cut[] } {
  const random = chance(seed);
  const upTo = (n: number): number => Math.floor(random() * n);
  const items: Item[] = [0, 0, 0, 1, 1, -1].map((key) => ({ ...plainItem(10, 0, 0), key, either: key >= 0 }));
  const cuts = Array.from({ length: 3 + upTo(6) }, (): Cut => {
    const own = [...items.keys()].filter(() => upTo(2) === 0);
    return { pattern: { type: 0, items: own, copies: own.map(() => 1 + upTo(3)) }, times: 1 + upTo(4) };
  });
  // What is odd in all is made even by a board of its own; of what has no hand nobody asks that.
  items.forEach(({ either }, item) => {
    if (!either) return;
    if (countOf(cuts, item) % 2 === 1) cuts.push({ pattern: { type: 0, items: [item], copies: [1] }, times: 1 });
  });
  return { problem: { items, groups: [{ setup: 0, nodes: [] }], types: [] }, cuts };
}

it("gives as many lefts as rights of each length, and on a board at most one of a key without a partner", () => {
  for (let seed = 1; seed <= 300; seed++) {
    const { problem, cuts } = boardsOf(seed);
    const boards = assignHands(problem, cuts);
    const total = (list: readonly { times: number }[]) => list.reduce((sum, { times }) => sum + times, 0);
    expect(total(boards)).toBe(total(cuts));
    problem.items.forEach(({ either }, item) => {
      const own = boards.flatMap(({ parts, times }) =>
        parts.filter((part) => part.item === item).map((part) => ({ ...part, times })),
      );
      const sum = (of: (one: (typeof own)[number]) => number) => own.reduce((all, one) => all + one.times * of(one), 0);
      const wanted = countOf(cuts, item);
      const [lefts, rights, plain] = [sum(({ left }) => left), sum(({ right }) => right), sum((one) => one.plain)];
      expect([seed, item, lefts, rights, plain]).toEqual(
        either ? [seed, item, wanted / 2, wanted / 2, 0] : [seed, item, 0, 0, wanted],
      );
    });
    for (const { parts } of boards)
      for (const key of [0, 1]) {
        const own = parts.filter(({ item }) => problem.items[item]!.key === key);
        const over = own.reduce((sum, { left, right }) => sum + left - right, 0);
        expect([seed, Math.abs(over) <= 1]).toEqual([seed, true]);
      }
  }
});
