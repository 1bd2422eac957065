import { afterEach, describe, expect, it } from "vitest";
import { rise } from "../cases.ts";
import { Shop } from "../shop.ts";
import { main } from "./cases.ts";
import { chanceRoofs } from "./chance.ts";
import { differences } from "./compare.ts";
import { fromTables } from "./fromTables.ts";
import { measureRoof } from "./measureRoof.ts";
import type { WingedPlan, WingPlan } from "./plan.ts";
import { faults } from "./proof.ts";
import { frameWinged } from "./winged.ts";

const shop = new Shop();
afterEach(() => shop.sweep());

const laid = (wing: Omit<WingPlan, "framing">): WingPlan => ({ ...wing, framing: "laid over" });

/** Wings laid over the sheathed main roof (farmer's valley): common practice, no source. */
const cases: Readonly<Record<string, WingedPlan>> = {
  "a gabled wing at 6 in 12": {
    ...main,
    wings: [laid({ wall: "front", from: 150, out: 120, span: 192, end: "gable" })],
  },
  "a hipped wing at another pitch than the main roof's": {
    ...main,
    pitch: rise(8),
    endPitch: rise(8),
    wings: [laid({ wall: "front", from: 140, out: 130, span: 210, end: "hip", pitch: rise(6), endPitch: rise(9) })],
  },
  "a steep wing at the back, thick sheathing and boards": {
    ...main,
    valley: { thickness: 2.25, depth: 9.25 },
    wings: [laid({ wall: "back", from: 120, out: 100, span: 160, end: "gable", pitch: rise(10), sheathing: 0.75 })],
  },
  "a wing with fascias that are not level": {
    ...main,
    wings: [laid({ wall: "front", from: 130, out: 100, span: 180, end: "hip", overhang: 9, endOverhang: 20 })],
  },
  "a wing with wider fascias than the main roof's": {
    ...main,
    wings: [laid({ wall: "front", from: 130, out: 90, span: 180, end: "gable", overhang: 23, pitch: rise(7) })],
  },
  "hips on the ridge, level ridges, one end a gable": {
    ...main,
    ends: ["hip", "gable"],
    hipHead: "ridge",
    ridge: { thickness: 2.25, depth: 9.25 },
    wings: [laid({ wall: "front", from: 152, out: 160, span: 288, end: "hip" })],
  },
  "a little wing, whose upper jacks are wedges": {
    ...main,
    spacing: 16,
    rafter: { thickness: 1.5, depth: 9.25 },
    heel: 7,
    wings: [laid({ wall: "front", from: 180, out: 40, span: 100, end: "gable" })],
  },
  "metric, no overhang": {
    ...main,
    span: 7200 / 25.4,
    length: 13000 / 25.4,
    spacing: 600 / 25.4,
    overhang: 0,
    rafter: { thickness: 38 / 25.4, depth: 140 / 25.4 },
    wings: [laid({ wall: "front", from: 4100 / 25.4, out: 3000 / 25.4, span: 4800 / 25.4, end: "hip" })],
  },
  "beside a wing that is framed in, and another behind": {
    ...main,
    length: 620,
    hipTop: "backed",
    wings: [
      { wall: "front", from: 60, out: 80, span: 150, end: "gable" },
      laid({ wall: "front", from: 330, out: 96, span: 170, end: "hip" }),
      laid({ wall: "back", from: 250, out: 60, span: 150, end: "gable", pitch: rise(8) }),
    ],
  },
};

describe("a wing that is laid over", { timeout: 60_000 }, () => {
  it.each(Object.entries(cases))("%s: tables agree with solids, which fit together", async (_, plan) => {
    const roof = frameWinged(shop, plan);
    expect(faults(shop, roof)).toEqual([]);
    expect(differences(measureRoof(shop, roof), await fromTables(plan))).toEqual([]);
  });

  // More of them with LONGPOINT_ROOFS, others with LONGPOINT_SEED.
  const count = Number(process.env["LONGPOINT_ROOFS"] ?? 6);
  it.each(chanceRoofs(count, 43, true).map((plan, i) => [i + 1, plan] as const))("by chance: %i", async (_, plan) => {
    const roof = frameWinged(shop, plan);
    expect(faults(shop, roof)).toEqual([]);
    expect(differences(measureRoof(shop, roof), await fromTables(plan))).toEqual([]);
  });
});
