import { afterAll, describe, expect, it } from "vitest";
import { Shop } from "../shop.ts";
import { differences } from "./compare.ts";
import type { RoofFigures } from "./figures.ts";
import { measureRoof } from "./measureRoof.ts";
import { mistakes, moved } from "./mistakes.ts";
import type { WingedPlan } from "./plan.ts";
import { said } from "./said.ts";
import { frameWinged } from "./winged.ts";

const shop = new Shop();
afterAll(() => shop.sweep());

const known = new Map<string, RoofFigures>();
/** A roof's figures; made once for a plan. */
function figuresOf(plan: WingedPlan): RoofFigures {
  const name = JSON.stringify(plan);
  const figures = known.get(name) ?? measureRoof(shop, frameWinged(shop, plan));
  known.set(name, figures);
  return figures;
}

describe("the comparison of roofs with wings finds what it is there to find", { timeout: 60_000 }, () => {
  it.each(mistakes)("nothing in what is right, but $name", ({ plan, spoil }) => {
    const figures = figuresOf(plan);
    const right = said(figures);
    expect(differences(figures, right)).toEqual([]);
    expect(differences(figures, spoil(right, { plan, figures, of: (other) => said(figuresOf(other)) }))).not.toEqual(
      [],
    );
  });

  it("a list that is a sixteenth off, a piece too many, and what is no number", () => {
    const figures = figuresOf(mistakes[0]!.plan);
    const right = said(figures);
    const [first, ...rest] = right.lists;
    expect(differences(figures, { ...right, lists: [moved(first!, 1 / 16), ...rest] })).not.toEqual([]);
    const [one, ...others] = right.members;
    expect(differences(figures, { ...right, members: [{ ...one!, plain: one!.plain + 1 }, ...others] })).toHaveLength(
      1,
    );
    expect(differences(figures, { ...right, members: [{ ...one!, board: NaN }, ...others] })).not.toEqual([]);
    expect(differences(figures, { ...right, takeOff: { ...right.takeOff, eaves: NaN } })).toHaveLength(1);
  });
});
