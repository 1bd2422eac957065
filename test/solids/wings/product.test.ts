import { afterEach, describe, expect, it } from "vitest";
import { rise } from "../cases.ts";
import { Shop } from "../shop.ts";
import { main } from "./cases.ts";
import { differences } from "./compare.ts";
import { fromTables } from "./fromTables.ts";
import { measureRoof } from "./measureRoof.ts";
import type { WingedPlan } from "./plan.ts";
import { frameWinged } from "./winged.ts";

const shop = new Shop();
afterEach(() => shop.sweep());

/** Everything in which the tables of a roof and its solids differ. */
async function against(plan: WingedPlan): Promise<string[]> {
  const found = differences(measureRoof(shop, frameWinged(shop, plan)), await fromTables(plan));
  shop.sweep();
  return found;
}

describe("tables and solids of the same roof", { timeout: 60_000 }, () => {
  it.each<[string, WingedPlan]>([
    ["6 in 12", main],
    ["steeper ends", { ...main, endPitch: rise(9) }],
    ["hips on the ridge, one end a gable", { ...main, hipHead: "ridge", ends: ["hip", "gable"] }],
  ])("without a wing: %s", async (_, plan) => {
    expect(await against(plan)).toEqual([]);
  });
});
