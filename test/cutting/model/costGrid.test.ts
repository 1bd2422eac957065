import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { costGrid } from "../../../src/cutting/model/costGrid.ts";

describe("costGrid", () => {
  it.each([
    ["8 to 20 ft by 2 ft, in inches", [96, 120, 144, 168, 192, 216, 240], 24],
    ["cents", [7.48, 9.97], 0.01],
    ["studs and boards", [92.625, 96], 0.375],
    ["metric lengths written in inches", [2400 / 25.4, 3000 / 25.4, 3600 / 25.4], 600 / 25.4],
    ["a free board", [0, 12], 12],
    ["nothing in common", [Math.PI, Math.SQRT2], 0],
    ["nothing but free boards", [0], 0],
  ])("%s", (_, costs, expected) => expect(costGrid(costs)).toBeCloseTo(expected, 9));

  it("divides every cost, and is no less than what they were made from", () => {
    const steps = fc.array(fc.integer({ min: 1, max: 5000 }), { minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(steps, fc.double({ min: 0.01, max: 100, noNaN: true }), (whole, step) => {
        const costs = whole.map((n) => n * step);
        const grid = costGrid(costs);
        expect(grid).toBeGreaterThanOrEqual(step * (1 - 1e-9));
        for (const cost of costs) expect(Math.abs(cost / grid - Math.round(cost / grid))).toBeLessThan(1e-6);
      }),
      { seed: 2 },
    );
  });
});
