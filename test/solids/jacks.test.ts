import { describe, expect, it } from "vitest";
import { fuzzedCases, gridCases } from "./cases.ts";
import { seed } from "./chance.ts";
import { jackCheck } from "./jackCheck.ts";
import { Shop } from "./shop.ts";
import { wrong } from "./wrong.ts";

describe("jacks as solids", { timeout: 60_000 }, () => {
  const shop = new Shop();

  it("of the first side agree with every jack function at every corner, to a millionth of an inch", async () => {
    const { looked, found } = await wrong(shop, gridCases(), (one) => jackCheck(shop, one, 0));
    expect(found).toEqual([]);
    expect(looked).toBeGreaterThanOrEqual(300);
  });

  it("of the second side too, which are of the other hand", async () => {
    const { found } = await wrong(shop, gridCases(), (one) => jackCheck(shop, one, 1));
    expect(found).toEqual([]);
  });

  it(`by chance too: LONGPOINT_SEED=${seed}`, async () => {
    const { found } = await wrong(shop, fuzzedCases(60, 0), (one) => jackCheck(shop, one, 0));
    expect(found).toEqual([]);
  });
});
