import { afterEach, describe, expect, it } from "vitest";
import { stockPieces, type RoofStock } from "../../../src/roof/tables/stockPieces.ts";
import { checkPlan, planOf } from "../../cutting/checkPlan.ts";
import { leastByPatterns } from "../../cutting/otherSolver.ts";
import { planCutsNow } from "../../cutting/planCutsNow.ts";
import { Shop } from "../shop.ts";
import { wingedCases } from "./cases.ts";
import { modelOf } from "./frameOf.ts";
import { measureRoof } from "./measureRoof.ts";
import type { WingedPlan } from "./plan.ts";
import { wordOf } from "./said.ts";
import { frameWinged } from "./winged.ts";

const shop = new Shop();
afterEach(() => shop.sweep());

const T = wingedCases["a T with a lower ridge"]!;
const roofs: Readonly<Record<string, WingedPlan>> = {
  "a T with a lower ridge": T,
  "a T at two pitches, long valley right": wingedCases["a T at two pitches, long valley right"]!,
  "an L, flush left, lower ridge": wingedCases["an L, flush left, lower ridge"]!,
  "a T laid over": { ...T, wings: T.wings.map((wing) => ({ ...wing, framing: "laid over" })) },
};

const LENGTHS = [96, 120, 144, 168, 192, 216, 240, 288, 336];
const KERF = 0.125;

/** The pieces of a roof as they are ordered, and the boards of their sizes. */
function orderOf(plan: WingedPlan) {
  const { frame, pieces } = modelOf(plan);
  const boards = LENGTHS.map((length) => ({ length, cost: length }));
  const { pieces: stock } = stockPieces(frame, pieces, () => boards, 0);
  const sizes = [...new Set(stock.map(({ size }) => size))];
  return { frame, pieces, stock, boards: sizes.flatMap((size) => LENGTHS.map((length) => ({ size, length }))) };
}

describe("the order of a roof with wings", { timeout: 120_000 }, () => {
  it.each(Object.entries(roofs))(
    "%s: every solid fits the board that its piece takes alone, none is bought for less",
    (_, plan) => {
      const { pieces, stock } = orderOf(plan);
      const figures = measureRoof(shop, frameWinged(shop, plan));
      const boards = [
        ...figures.bearers.map(({ kind, board }) => ({ member: kind as string, board })),
        ...figures.rafters.map(({ kind, board }) => ({ member: wordOf(kind), board })),
      ];
      const taken = pieces.flatMap(({ mark, member, left, right, plain }) =>
        stock
          .filter(({ name }) => name === mark)
          .slice(0, 1)
          .flatMap(({ length, toe }) =>
            Array.from({ length: left + right + plain }, () => ({ member: String(member), board: length + toe })),
          ),
      );
      expect(taken.length).toBe(boards.length);
      // Member by member from the longest on: as long as its solid, a hip or valley up to its thickness more for what its cheeks leave.
      for (const member of new Set(boards.map((one) => one.member))) {
        const of = (all: typeof taken) =>
          all
            .filter((one) => one.member === member)
            .map(({ board }) => board)
            .sort((a, b) => b - a);
        of(boards).forEach((board, i) =>
          expect([member, of(taken)[i]! - board]).toEqual([member, expect.closeTo(0, 5)]),
        );
      }
    },
  );

  it.each(Object.entries(roofs))("%s: pieces lie in their boards a kerf apart, and every one is cut", (_, plan) => {
    const { stock, boards } = orderOf(plan);
    const found = planOf(planCutsNow(stock, boards, { kerf: KERF, trim: 0.5 }));
    checkPlan(found, { pieces: [...stock], boards, kerf: KERF, trim: 0.5 });
    expect(found.bound / found.cost).toBeGreaterThan(0.98);
  });

  it.each(Object.entries(roofs))(
    "%s: hips, valleys and ridges for the least that an independent solver finds",
    async (_, plan) => {
      const { stock, boards, pieces } = orderOf(plan);
      const rafters = new Set(pieces.filter(({ planes }) => planes.length > 0).map(({ mark }) => mark));
      const few: RoofStock[] = stock.filter(({ name }) => !rafters.has(name));
      const list = {
        pieces: few,
        boards: boards.filter(({ size }) => few.some((piece) => piece.size === size)),
        kerf: KERF,
      };
      const found = planOf(planCutsNow(few, list.boards, list));
      expect(found.proved).toBe(true);
      const bySize = [...new Set(few.map(({ size }) => size))].map((size) => ({
        ...list,
        pieces: few.filter((piece) => piece.size === size),
        boards: list.boards.filter((board) => board.size === size),
      }));
      const least = await Promise.all(bySize.map(leastByPatterns));
      expect(found.cost).toBeCloseTo(
        least.reduce<number>((sum, one) => sum + one!, 0),
        6,
      );
    },
  );
});
