import { describe, expect, it } from "vitest";
import { fuzzedCases, gridCases } from "./cases.ts";
import { seed } from "./chance.ts";
import { Shop } from "./shop.ts";
import { crippleCheck, valleyJackCheck } from "./valleyCheck.ts";
import { valleyRafterCheck } from "./valleyRafterCheck.ts";
import { wrong } from "./wrong.ts";

describe("valley jacks and cripples as solids", { timeout: 60_000 }, () => {
  const shop = new Shop();

  it("valley jacks agree with VALLEYJACK", async () => {
    const { looked, found } = await wrong(shop, gridCases(), (one) => valleyJackCheck(shop, one));
    expect(found).toEqual([]);
    expect(looked).toBeGreaterThanOrEqual(20);
  });

  it("cripples agree with CRIPPLELEN on both faces", async () => {
    const { looked, found } = await wrong(shop, gridCases(), (one) => crippleCheck(shop, one, 72));
    expect(found).toEqual([]);
    expect(looked).toBeGreaterThanOrEqual(20);
  });

  it("supporting and shortened valleys and the cripples between them agree with their functions", async () => {
    const { looked, found } = await wrong(shop, gridCases(), (one) => valleyRafterCheck(shop, one));
    expect(found).toEqual([]);
    expect(looked).toBeGreaterThanOrEqual(20);
  });

  it(`by chance too: LONGPOINT_SEED=${seed}`, async () => {
    const cases = fuzzedCases(60, 2);
    expect((await wrong(shop, cases, (one) => valleyJackCheck(shop, one))).found).toEqual([]);
    expect((await wrong(shop, cases, (one) => crippleCheck(shop, one, 40 + one.offset))).found).toEqual([]);
    expect((await wrong(shop, cases, (one) => valleyRafterCheck(shop, one))).found).toEqual([]);
  });
});
