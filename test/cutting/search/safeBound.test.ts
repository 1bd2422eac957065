import { describe, expect, it } from "vitest";
import { BoardSearch } from "../../../src/cutting/search/boardSearch.ts";
import { safeBound, type SafePrices } from "../../../src/cutting/search/safeBound.ts";
import type { BoardType, Problem } from "../../../src/cutting/model/problem.ts";
import { atOnce } from "../atOnce.ts";
import { plainItem } from "../plainItem.ts";

/** A double as a whole number of 2^-1000: sums of these are exact. */
function exactly(value: number): bigint {
  let [whole, shift] = [value, 1000];
  for (; !Number.isInteger(whole); whole *= 2) shift--;
  return BigInt(whole) << BigInt(shift);
}

/** Plain pieces in boards, of one slant that costs nothing. */
function problemOf(
  pieces: readonly (readonly [weight: number, demand: number])[],
  boards: readonly BoardType[],
): Problem {
  return {
    items: pieces.map(([weight, demand], i) => plainItem(weight, demand, 0, i === pieces.length - 1)),
    groups: [{ setup: 0, nodes: [] }],
    types: boards,
  };
}
const board = (length: number, cost: number, count = Infinity): BoardType => ({
  length,
  room: length,
  alone: [],
  cost,
  count,
});

function bounded(problem: Problem, duals: number[], scarcity = problem.types.map(() => 0)): SafePrices {
  return atOnce(safeBound(problem, new BoardSearch(problem), duals, scarcity));
}

/** The most that a board of this room is worth, over every way to fill it. */
function worthiest({ items }: Problem, worths: readonly bigint[], room: number, from = 0): bigint {
  let most = 0n;
  for (let i = from; i < items.length; i++)
    if (items[i]!.weight <= room) {
      const worth = worths[i]! + worthiest({ items } as Problem, worths, room - items[i]!.weight, i);
      if (worth > most) most = worth;
    }
  return most;
}

describe("safeBound", () => {
  it("proves its bound in exact numbers, whatever the last bits of duals and costs", () => {
    for (let n = 1; n <= 60; n++) {
      const problem = problemOf(
        [
          [31, 9 + n],
          [23, 7],
          [11, 5],
        ],
        [board(64, 1 / n + 0.1), board(97, Math.sqrt(n))],
      );
      const { bound, worths, spend } = bounded(problem, [1 / (n + 2), 0.1 + 0.7 / n, 0.3 / n]);
      const exact = worths.map(exactly);
      problem.types.forEach(({ room, cost }, j) => {
        expect(spend[j]).toBe(cost);
        expect(worthiest(problem, exact, room) <= exactly(cost), `board ${j} of ${n}`).toBe(true);
      });
      const proved = problem.items.reduce((sum, { demand }, i) => sum + BigInt(demand) * exact[i]!, 0n);
      expect(exactly(bound) <= proved, `bound of ${n}`).toBe(true);
      // And the margin is no more than rounding is.
      expect(bound / (Number(proved >> 900n) / 2 ** 100)).toBeCloseTo(1, 11);
    }
  });

  it("is the linear program's own value where no rounding is in it", () => {
    // Two to a board that costs 2: each is worth 1.
    const problem = problemOf([[5, 10]], [board(10, 2)]);
    expect(bounded(problem, [1]).bound).toBeCloseTo(10, 10);
    // Duals of twice that prove no more, for they are scaled to what a board may cost; half of them prove half.
    expect(bounded(problem, [2]).bound).toBeCloseTo(10, 10);
    expect(bounded(problem, [0.5]).bound).toBeCloseTo(5, 10);
  });

  it("takes off what scarce boards would save, each as often as there are such boards", () => {
    const problem = problemOf([[5, 10]], [board(10, 2, 3), board(20, 5)]);
    // A piece at 1.25 fills the long board for 5, and the short one for 2 and a half: half each of three is saved.
    const { bound, spend } = bounded(problem, [1.25], [0.5, 0]);
    expect(spend).toEqual([2.5, 5]);
    expect(bound).toBeCloseTo(12.5 - 1.5, 9);
  });

  it("proves nothing from duals that are nothing, and none below 0", () => {
    const problem = problemOf([[5, 10]], [board(10, 2, 3)]);
    expect(bounded(problem, [0])).toEqual({ bound: 0, worths: [0], spend: [2] });
    expect(bounded(problem, [-1])).toEqual({ bound: 0, worths: [0], spend: [2] });
    expect(bounded(problem, [0.1], [9]).bound).toBe(0);
  });
});
