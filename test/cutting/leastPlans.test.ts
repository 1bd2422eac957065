import { describe, expect, it } from "vitest";
import { planCutsNow } from "./planCutsNow.ts";
import { checkPlan, planOf } from "./checkPlan.ts";
import { randomInstance, slantedInstance } from "./instances.ts";
import { leastByPatterns, leastByPlaces } from "./otherSolver.ts";

const range = (from: number, count: number): number[] => Array.from({ length: count }, (_, n) => from + n);

// Invented random lists; the least costs are HiGHS's (see otherSolver.ts).
describe("plans cost what an independent solver finds", () => {
  it.each(range(0, 10))("180 lists, every pattern written down: batch %i", async (batch) => {
    for (const seed of range(1 + batch * 18, 18)) {
      const list = randomInstance(seed);
      const plan = planOf(planCutsNow(list.pieces, list.boards, list));
      expect([seed, plan.proved]).toEqual([seed, true]);
      expect(plan.cost, `seed ${seed}`).toBeCloseTo((await leastByPatterns(list))!, 6);
    }
  });

  it.each(range(0, 4))("40 small lists, every piece given a place: batch %i", async (batch) => {
    const small = range(1001, 400)
      .map((seed) => randomInstance(seed, true))
      .filter(({ pieces, trim }) => trim === 0 && pieces.reduce((sum, piece) => sum + piece.count, 0) <= 6);
    for (const list of small.slice(batch * 10, batch * 10 + 10)) {
      const plan = planOf(planCutsNow(list.pieces, list.boards, list));
      expect(plan.proved).toBe(true);
      expect(plan.cost).toBeCloseTo((await leastByPlaces(list))!, 6);
    }
  });

  it.each(range(0, 4))(
    "80 lists with slanting cuts at both ends, every order on a board tried: batch %i",
    async (batch) => {
      for (const seed of range(1 + batch * 20, 20)) {
        const list = slantedInstance(seed);
        const plan = planOf(planCutsNow(list.pieces, list.boards, list));
        checkPlan(plan, list);
        expect([seed, plan.proved]).toEqual([seed, true]);
        expect(plan.cost, `seed ${seed}`).toBeCloseTo((await leastByPatterns(list))!, 6);
      }
    },
  );

  it("finds no plan where there is none", async () => {
    let none = 0;
    for (const seed of range(2001, 12)) {
      const list = randomInstance(seed);
      const scarce = { ...list, boards: list.boards.map((board) => ({ ...board, count: 1 })) };
      const plan = planCutsNow(scarce.pieces, scarce.boards, scarce);
      const least = await leastByPatterns(scarce);
      if (least === null) none++;
      if (least === null) expect(plan).toMatchObject({ problem: { kind: "too few boards" } });
      else expect(planOf(plan).cost).toBeCloseTo(least, 6);
    }
    expect(none).toBeGreaterThan(0);
  });
});
