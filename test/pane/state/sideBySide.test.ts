import { describe, expect, it } from "vitest";
import { START_INPUTS } from "../../../src/pane/state/fields.ts";
import { orderNow } from "../../../src/pane/state/orderNow.ts";
import { boardsOf, costOf, variantsOf } from "../../../src/pane/state/sideBySide.ts";
import { Failure } from "../../../src/measure/result.ts";

describe("variantsOf", () => {
  it("is every pitch with every spacing, each a roof of its own", () => {
    const variants = variantsOf(START_INPUTS, ["6", "12"], ["16", "24"]);
    expect(variants.map(({ pitch, spacing }) => `${pitch} ${spacing}`)).toEqual(["6 16", "6 24", "12 16", "12 24"]);
    // By hand: 12' of run at 12 in 12 rise 12', on a heel of 7.25" / cos 45 - 3.5" = 6.753": 150 3/4".
    expect(variants[2]!.figures[1]).toBe(`12' 6 3/4"`);
    // The eaves' rectangle, 27' by 39', over the cosine of 45 degrees.
    expect(variants[3]!.figures[2]).toBe(`${(27 * 39 * Math.SQRT2).toFixed(1)} sq ft`);
    expect(variants[1]!.inputs).toEqual({ ...START_INPUTS, Pitch: "6", Spacing: "24" });
  });

  it("has no figures where no roof can be framed", () => {
    expect(variantsOf(START_INPUTS, ["6"], ["40'"])[0]!.figures).toEqual([]);
    expect(variantsOf(START_INPUTS, ["steep"], ["24"])[0]!.figures).toEqual([]);
  });
});

describe("boardsOf", () => {
  it("is what the lumber order of that roof buys", async () => {
    const [variant] = variantsOf(START_INPUTS, ["6"], ["24"]);
    const order = await orderNow({ inputs: variant!.inputs, kerf: "" });
    if (order instanceof Failure) throw new Error("refused");
    expect(await boardsOf(variant!, "")).toEqual({ boards: order.boards, length: order.length });
    expect(await boardsOf(variantsOf(START_INPUTS, ["steep"], ["24"])[0]!, "")).toBeNull();
  });
});

describe("costOf", () => {
  it.each([
    ["1.35", "in", "135.00"],
    ["$ 2", "in", "200.00"],
    ["", "in", ""],
    ["cheap", "in", null],
    ["-1", "in", null],
    ["4", "mm", "4.80"],
  ] as const)("at %s, in %s: %s", (price, unit, cost) => {
    expect(costOf({ boards: 5, length: 1200 }, price, unit)).toBe(cost);
  });
});
