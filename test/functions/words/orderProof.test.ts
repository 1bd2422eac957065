import { describe, expect, it } from "vitest";
import { orderProof } from "../../../functions/words/orderProof.ts";
import type { CutPlan } from "../../../src/cutting/stock.ts";

const sizes = [
  { size: "2x6", proved: true },
  { size: "2x8", proved: false },
] as unknown as CutPlan["sizes"];
const missing = (...names: string[]) =>
  names.map((size) => ({ kind: "no board of that size" as const, row: 1, name: "C", size }));
const open: CutPlan = { boards: [], missing: [], cost: 960, bound: 936, proved: false, sizes };

describe("orderProof", () => {
  // By hand: 960 - 936 = 24, which is 2.50 percent of 960.
  it.each<[string, CutPlan, boolean, string]>([
    ["proved in money", { ...open, proved: true }, true, "proved: no order of these boards costs less"],
    ["proved in length", { ...open, proved: true }, false, "proved: no order of these boards is shorter in all"],
    ["a size left out", { ...open, missing: missing("2x10") }, true, "no least: 2x10 is not in the order"],
    [
      "sizes left out",
      { ...open, missing: missing("2x10", "2x12") },
      true,
      "no least: 2x10, 2x12 are not in the order",
    ],
    [
      "a gap in money",
      open,
      true,
      "not proved: the order comes to 960.00, and at most 24.00 of it (2.50 percent) could be saved, on 2x8; the search stopped at its limit",
    ],
    [
      "a gap in length",
      open,
      false,
      `not proved: the order comes to 80' 0", and at most 2' 0" of it (2.50 percent) could be saved, on 2x8; the search stopped at its limit`,
    ],
  ])("%s", (_, plan, priced, said) => {
    expect(orderProof({ plan, priced, unit: "in" })).toBe(said);
  });
});
