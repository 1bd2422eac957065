import { describe, expect, it } from "vitest";
import { fuzzedCases, gridCases } from "./cases.ts";
import { seed } from "./chance.ts";
import { hipCheck } from "./hipCheck.ts";
import { Shop } from "./shop.ts";
import { wrong } from "./wrong.ts";

describe("hips as solids", { timeout: 60_000 }, () => {
  const shop = new Shop();

  it("agree with every hip function at every corner, dropped, backed and shifted", async () => {
    const { looked, found } = await wrong(shop, gridCases(), (one) => hipCheck(shop, one));
    expect(found).toEqual([]);
    expect(looked).toBeGreaterThanOrEqual(60);
  });

  it(`by chance too: LONGPOINT_SEED=${seed}`, async () => {
    const { found } = await wrong(shop, fuzzedCases(60, 1), (one) => hipCheck(shop, one));
    expect(found).toEqual([]);
  });
});
