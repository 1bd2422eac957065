import { expect, it } from "vitest";
import { problemsOf } from "../../../src/cutting/model/problemsOf.ts";
import { usedLength } from "../../../src/cutting/model/usedLength.ts";
import type { Hand, StockPiece } from "../../../src/cutting/stock.ts";

// By hand: pieces of 30, no kerf, a lean of 3, and a left and a right that save 2 head to head.
it.each([
  ["left", "right"],
  ["right", "left"],
] as const)("pieces of either hand take their length, less a turn for every two: %s listed before %s", (...hands) => {
  const pieces = hands.map((hand: Hand): StockPiece => ({
    name: hand,
    size: "2x6",
    length: 30,
    count: 4,
    lean: 3,
    slant: "a",
    hand,
    turn: 2,
  }));
  const boards = [{ size: "2x6", length: 240 }];
  const { problem } = problemsOf(pieces, boards, { kerf: 0, trim: 0 }, "turning")[0]!;
  expect(problem.items.map(({ either, demand }) => [either, demand])).toEqual([[true, 8]]);
  const inch = problem.types[0]!.room / 240;
  const used = [1, 2, 3, 4].map((copies) => usedLength(problem, [0], [copies]) / inch);
  [33, 61, 91, 119].forEach((taken, n) => expect(used[n]).toBeCloseTo(taken, 6));
});
