import { describe, expect, it } from "vitest";
import { fuzzedCases, gridCases } from "./cases.ts";
import { seed } from "./chance.ts";
import { commonCheck } from "./commonCheck.ts";
import { Shop } from "./shop.ts";
import { tailCheck } from "./tailCheck.ts";
import { wrong } from "./wrong.ts";

describe("commons as solids", { timeout: 60_000 }, () => {
  const shop = new Shop();

  it("agree with every function of a common rafter", async () => {
    expect((await wrong(shop, gridCases(), (one) => commonCheck(shop, one))).found).toEqual([]);
  });

  it("tails cut plumb, square and level agree with every function of a tail", async () => {
    const { looked, found } = await wrong(shop, gridCases(), (one) => tailCheck(shop, one));
    expect(found).toEqual([]);
    expect(looked).toBeGreaterThan(100);
  });

  it(`by chance too: LONGPOINT_SEED=${seed}`, async () => {
    expect((await wrong(shop, fuzzedCases(60, 3), (one) => commonCheck(shop, one))).found).toEqual([]);
    expect((await wrong(shop, fuzzedCases(60, 4), (one) => tailCheck(shop, one))).found).toEqual([]);
  });
});
