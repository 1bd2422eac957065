import { describe, expect, it } from "vitest";
import type { StockPiece } from "../../src/cutting/stock.ts";
import { checkPlan, planOf } from "./checkPlan.ts";
import { planCutsNow } from "./planCutsNow.ts";
import { lengthsOf, realRoofs } from "./roofs.ts";

describe("planCuts, of large lists", () => {
  const many = (lengths: number, count: number): StockPiece[] =>
    Array.from({ length: lengths }, (_, n) => ({ name: "p", size: "2x6", length: 20 + ((n * 97.31) % 200), count }));
  it.each([
    ["a thousand distinct lengths", many(1000, 1), 0.03],
    ["a million pieces of two hundred lengths", many(200, 5000), 0.03],
    ["a million pieces of ten lengths", many(10, 100_000), 0],
  ])("%s: an answer with its gap", (_, pieces, gap) => {
    const stock = [96, 120, 144, 168, 192, 216, 240].map((length) => ({ size: "2x6", length }));
    const plan = planOf(planCutsNow(pieces, stock, { kerf: 0.125 }));
    checkPlan(plan, { pieces, boards: stock, kerf: 0.125 });
    expect(plan.cost / plan.bound - 1).toBeLessThanOrEqual(gap);
    expect(plan.boards.length).toBeLessThan(2500);
  });

  // Rounding and diving come to within a step of the costs; a plan from another corner of the linear program is as good as the bound.
  it("six roofs ordered together, of 82 lengths: the least", () => {
    const list = realRoofs(1, 6);
    const plan = planOf(planCutsNow(list.pieces, list.boards, list));
    checkPlan(plan, list);
    expect([plan.proved, lengthsOf(list)]).toEqual([true, 82]);
  });
});
