import { afterEach, describe, expect, it } from "vitest";
import { disagreements } from "./agreement.ts";
import { assemble } from "./assemble.ts";
import { seed } from "./chance.ts";
import { fuzzedRoofs, regular, roofCases } from "./roofCases.ts";
import { blockOf } from "./roofPlan.ts";
import { takeOffCheck } from "./takeOffCheck.ts";
import { Shop } from "./shop.ts";
import type { RoofPlan } from "./roofPlan.ts";

const shop = new Shop();
afterEach(() => shop.sweep());

const against = async (plan: RoofPlan): Promise<string[]> =>
  disagreements(await takeOffCheck(shop, assemble(shop, plan)));

describe("the roof as one solid", { timeout: 60_000 }, () => {
  it.each(Object.entries(roofCases))("%s: its planes and edges are what TAKEOFF counts", async (_, plan) => {
    expect(await against(plan)).toEqual([]);
  });

  it(`by chance too: LONGPOINT_SEED=${seed}`, async () => {
    const found: string[] = [];
    for (const plan of fuzzedRoofs(shop, 8, 11)) {
      found.push(...(await against(plan)).map((words) => `${JSON.stringify(blockOf(plan))}: ${words}`));
      shop.sweep();
    }
    expect(found).toEqual([]);
  });

  it("is another for another overhang", async () => {
    expect(
      disagreements(await takeOffCheck(shop, { ...assemble(shop, regular), plan: { ...regular, overhang: 17 } })),
    ).not.toEqual([]);
  });
});
