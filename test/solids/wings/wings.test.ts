import { afterEach, describe, expect, it } from "vitest";
import { seed } from "../chance.ts";
import { Shop } from "../shop.ts";
import { wingedCases } from "./cases.ts";
import { chanceRoofs } from "./chance.ts";
import { handCounts } from "./counts.ts";
import { measureRoof } from "./measureRoof.ts";
import { outlineArea } from "./outline.ts";
import { blockOf } from "./plan.ts";
import type { WingedPlan } from "./plan.ts";
import { faults } from "./proof.ts";
import { frameWinged } from "./winged.ts";

const shop = new Shop();
afterEach(() => shop.sweep());

/** How many roofs by chance: LONGPOINT_ROOFS, or a few. */
const count = Number(process.env["LONGPOINT_ROOFS"] ?? 6);

/** Everything that is wrong with a roof as framed, and with the areas of its planes. */
function against(plan: WingedPlan): string[] {
  const roof = frameWinged(shop, plan);
  const { planes, edges } = measureRoof(shop, roof);
  const found = faults(shop, roof);
  const total = planes.reduce((sum, one) => sum + one.plan, 0);
  const outline = outlineArea(roof.layout);
  if (!(Math.abs(total - outline) <= 1e-9 * outline)) found.push(`its planes cover ${total}, its outline ${outline}`);
  for (const { plane, plan: flat, sloped } of planes) {
    const { pitch } = roof.layout.planes.find(({ name }) => name === plane)!;
    const slope = Math.hypot(1, pitch);
    if (!(Math.abs(sloped - flat * slope) <= 1e-9 * sloped))
      found.push(`${plane}: ${sloped} is not ${flat} x ${slope}`);
  }
  if (edges.outerCorners - edges.innerCorners !== 4)
    found.push(`${edges.outerCorners} outer and ${edges.innerCorners} inner corners`);
  shop.sweep();
  return found;
}

describe("a roof with wings, set out by the test's own hand", { timeout: 60_000 }, () => {
  it.each(Object.entries(wingedCases))(
    "%s: fits together, every end bears, its planes cover its outline",
    (_, plan) => {
      expect(against(plan)).toEqual([]);
    },
  );

  it(`fits together by chance too: LONGPOINT_SEED=${seed}`, { timeout: 60_000 + 10_000 * count }, () => {
    const found = chanceRoofs(count, 41).flatMap((plan) =>
      against(plan).map((words) => `${JSON.stringify(blockOf(plan))}: ${words}`),
    );
    expect(found).toEqual([]);
  });

  it.each(Object.entries(handCounts))("%s is counted by hand", (_, { plan, counts, total }) => {
    const roof = frameWinged(shop, plan);
    const framed: Record<string, [number, number, number]> = {};
    const add = (kind: string, hand: string): void => {
      const row = (framed[kind] ??= [0, 0, 0]);
      row[hand === "left" ? 0 : hand === "right" ? 1 : 2] += 1;
    };
    for (const { kind } of roof.bearers.all) add(kind, "plain");
    for (const { kind, hand } of roof.rafters) add(kind, hand);
    expect(framed).toEqual(counts);
    expect(roof.bearers.all.length + roof.rafters.length).toBe(total);
  });
});
