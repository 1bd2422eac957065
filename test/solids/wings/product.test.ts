import { afterEach, describe, expect, it } from "vitest";
import { rise } from "../cases.ts";
import { Shop } from "../shop.ts";
import { main, wingedCases } from "./cases.ts";
import { chanceRoofs } from "./chance.ts";
import { differences } from "./compare.ts";
import { handCounts } from "./counts.ts";
import { fromTables } from "./fromTables.ts";
import { measureRoof } from "./measureRoof.ts";
import type { WingedPlan } from "./plan.ts";
import type { Said } from "./said.ts";
import { wordOf } from "./said.ts";
import { frameWinged } from "./winged.ts";

const shop = new Shop();
afterEach(() => shop.sweep());

/** Everything in which the tables of a roof and its solids differ. */
function against(plan: WingedPlan, said: Said): string[] {
  const found = differences(measureRoof(shop, frameWinged(shop, plan)), said);
  shop.sweep();
  return found;
}

describe("tables and solids of the same roof", { timeout: 60_000 }, () => {
  it.each<[string, WingedPlan]>([
    ["6 in 12", main],
    ["steeper ends", { ...main, endPitch: rise(9) }],
    ["hips on the ridge, one end a gable", { ...main, hipHead: "ridge", ends: ["hip", "gable"] }],
  ])("without a wing: %s", async (_, plan) => {
    expect(against(plan, await fromTables(plan))).toEqual([]);
  });

  it.each(Object.entries(wingedCases))("%s", async (_, plan) => {
    expect(against(plan, await fromTables(plan))).toEqual([]);
  });

  // More of them with LONGPOINT_ROOFS, others with LONGPOINT_SEED.
  const count = Number(process.env["LONGPOINT_ROOFS"] ?? 6);
  it.each(chanceRoofs(count, 41).map((plan, i) => [i + 1, plan] as const))("by chance: %i", async (_, plan) => {
    expect(against(plan, await fromTables(plan))).toEqual([]);
  });

  it.each(Object.entries(handCounts))("%s as counted by hand", async (_, { plan, counts, total }) => {
    const { members, takeOff } = await fromTables(plan);
    for (const word of new Set(Object.keys(counts).map(wordOf))) {
      const own = Object.entries(counts).filter(([kind]) => wordOf(kind) === word);
      const counted = ([0, 1, 2] as const).map((i) => own.reduce((sum, [, count]) => sum + count[i], 0));
      const told = (["left", "right", "plain"] as const).map((key) =>
        members.filter(({ member }) => member === word).reduce((sum, row) => sum + row[key], 0),
      );
      // By hand a valley and a broken hip were counted without their hands.
      const unhanded = word === "valley" || word === "broken hip";
      expect([word, unhanded ? told.reduce((a, b) => a + b, 0) : told]).toEqual([
        word,
        unhanded ? counted[2] : counted,
      ]);
    }
    expect(takeOff.pieces).toBe(total);
  });
});
