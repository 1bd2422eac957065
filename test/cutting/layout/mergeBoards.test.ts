import { describe, expect, it } from "vitest";
import { mergeBoards } from "../../../src/cutting/layout/mergeBoards.ts";
import type { Problem } from "../../../src/cutting/model/problem.ts";
import { plainItem } from "../plainItem.ts";

type Board = readonly [length: number, cost: number, count?: number];

/** A board of 96 that costs as much, and another. */
const beside = (...other: Board): Board[] => [[96, 96], other];

/** A piece of each weight; one board a cut, by its place among the boards given. What comes of them: length and weights of each kind, and how many. */
function merged(boards: readonly Board[], weights: readonly number[], on: readonly number[], times = 1) {
  const problem: Problem = {
    items: weights.map((weight, i) => plainItem(weight, times, 0, i === weights.length - 1)),
    groups: [{ setup: 0, nodes: [] }],
    types: boards.map(([length, cost, count = Infinity]) => ({ length, room: length, alone: [], cost, count })),
  };
  const cuts = on.map((type, i) => ({ pattern: { type, items: [i], copies: [1] }, times }));
  return mergeBoards(problem, cuts).map(({ pattern: { type, items, copies }, times }) => [
    boards[type]![0],
    items.flatMap((i, n) => Array<number>(copies[n]!).fill(weights[i]!)),
    times,
  ]);
}

// By hand: one board instead of two, where it holds what both do and costs no more.
describe("mergeBoards", () => {
  it("takes a board that is just filled and costs just as much", () => {
    expect(merged(beside(192, 192), [96, 96], [0, 0])).toEqual([[192, [96, 96], 1]]);
  });

  it("leaves two boards where the one is too short by a little, or dearer by a little", () => {
    const two = [
      [96, [96], 1],
      [96, [95], 1],
    ];
    expect(merged(beside(190.999, 191), [96, 95], [0, 0])).toEqual(two);
    expect(merged(beside(192, 192.001), [96, 95], [0, 0])).toEqual(two);
  });

  it("takes the cheapest that holds both, and of equal ones the first", () => {
    const boards: Board[] = [
      [96, 96],
      [180, 170],
      [200, 160],
      [210, 160],
    ];
    expect(merged(boards, [90, 80], [0, 0])).toEqual([[200, [90, 80], 1]]);
  });

  it("takes as many as there are: the last one too, and none where there is none", () => {
    const boards = (count: number) => beside(192, 192, count);
    expect(merged(boards(1), [90, 80], [0, 0])).toEqual([[192, [90, 80], 1]]);
    // Two of 90 go together first, then 90 and 80; for the two of 80 that are left there is none.
    expect(merged(boards(2), [90, 80], [0, 0], 3)).toEqual([
      [96, [80], 2],
      [192, [90, 90], 1],
      [192, [90, 80], 1],
    ]);
    expect(merged(boards(0), [90, 80], [0, 0])).toEqual([
      [96, [90], 1],
      [96, [80], 1],
    ]);
  });
});
