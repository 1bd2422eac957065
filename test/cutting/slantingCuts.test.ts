import { describe, expect, it } from "vitest";
import { checkPlan, planOf } from "./checkPlan.ts";
import { randomInstance, slantedInstance } from "./instances.ts";
import { planCutsNow } from "./planCutsNow.ts";
import type { StockBoard, StockPiece } from "../../src/cutting/stock.ts";

const boards = (...lengths: number[]): StockBoard[] => lengths.map((length) => ({ size: "2x6", length }));
const piece = (length: number, count: number, more: Partial<StockPiece> = {}): StockPiece => ({
  name: "p",
  size: "2x6",
  length,
  count,
  ...more,
});

// By hand: lengths of 30, a kerf of 1 and a lean of 3, less what the shared cuts save.
describe("slanting cuts at both ends", () => {
  it.each<[string, [number, number][], number]>([
    // Cripples between parallel bearers, one after another: 3 x 30 + 2 + 3 less two turns.
    [
      "three alike with parallel ends",
      [
        [2, 2],
        [2, 2],
        [2, 2],
      ],
      91,
    ],
    [
      "two that lean to two sides share nothing",
      [
        [2, 2],
        [-2, -2],
      ],
      64,
    ],
    [
      "a left and a right cripple that are longer on one face",
      [
        [-2, 2],
        [2, -2],
      ],
      62,
    ],
    [
      "two such of one hand share nothing",
      [
        [-2, 2],
        [-2, 2],
      ],
      64,
    ],
    [
      "a jack, cripples of its slant and a valley jack: every cut",
      [
        [2, 0],
        [2, 2],
        [0, 2],
      ],
      91,
    ],
    [
      "a ring of three is cut open where that loses least",
      [
        [2, 3],
        [3, 3],
        [3, 2],
      ],
      95 - 6,
    ],
    [
      "a ring beside a row that it goes into",
      [
        [2, 2],
        [0, 2],
        [2, 0],
      ],
      91,
    ],
  ])("shares slanting cuts, all crown up: %s", (_, slants, used) => {
    // In whatever order the list has them.
    for (const order of [slants, slants.toReversed()]) {
      const pieces = order.map((own) => piece(30, 1, { lean: 3, slant: "a", slants: own }));
      const plan = planOf(planCutsNow(pieces, boards(used, used + 1), { kerf: 1 }));
      expect(plan).toMatchObject({ cost: used, proved: true });
      checkPlan(plan, { pieces, boards: boards(used, used + 1), kerf: 1 });
      expect(plan.boards[0]!.pieces.some(({ flipped }) => flipped)).toBe(false);
    }
  });

  it.each([
    [3, 1],
    [5, 2],
    [1, 6],
  ])("every board's pieces have the side they are cut to: %d lefts and %d rights", (left, right) => {
    const cripple = (count: number, slant: number) => piece(30, count, { lean: 3, slant: "a", slants: [slant, slant] });
    const pieces = [cripple(left, 2), cripple(right, -2)];
    const plan = planOf(planCutsNow(pieces, boards(70), { kerf: 1 }));
    expect(plan).toMatchObject({ cost: 70 * Math.ceil((left + right) / 2), proved: true });
    checkPlan(plan, { pieces, boards: boards(70), kerf: 1 });
  });
});

// By hand: pieces of 30, no kerf; each slope loses a lean of its own, whether or not it has a name.
it.each([
  [3, 5, 68],
  [3, 3, 63],
  [0, 3, 63],
])("pieces that lean by %d and %d without a name for their slant", (one, other, used) => {
  const pieces = [piece(30, 1, { lean: one }), piece(30, 1, { lean: other })];
  const plan = planOf(planCutsNow(pieces, boards(used - 1, used), { kerf: 0 }));
  expect(plan).toMatchObject({ cost: used, proved: true });
});

// Invented lists; what a plan takes is checked by itself (checkPlan).
it.each([
  ["hands", (n: number) => randomInstance(5 * n + 2)],
  ["slants", slantedInstance],
] as const)("an order costs the same whichever piece is listed first: %s", (_, make) => {
  for (let n = 1; n <= 40; n++) {
    const list = make(n);
    const turned = { ...list, pieces: list.pieces.toReversed() };
    const [one, other] = [list, turned].map((own) => {
      const plan = planOf(planCutsNow(own.pieces, own.boards, own));
      checkPlan(plan, own);
      return plan.cost;
    });
    expect([n, other]).toEqual([n, one]);
  }
});
