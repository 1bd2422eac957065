import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { drawComparison } from "../../../src/drawing/views/drawComparison.ts";

const figure = (cell: string | number | boolean) => String(cell);
const draw = (grid: (string | number)[][], width = 320) => drawComparison(grid, { width, figure, title: "Bars" });
const bars = (svg: string) =>
  [...svg.matchAll(/<rect x="([\d.]+)" y="[\d.]+" width="([\d.]+)"/g)].map(
    ([, x, width]) => [Number(x), Number(width)] as const,
  );

describe("drawComparison", () => {
  it("draws bars as long as their figures are large, from 0", () => {
    const [[, a], [, b], [, c]] = bars(
      draw([
        ["step", 16, 24, 48],
        [6, 10, 20, 40],
      ]),
    ) as [[number, number], [number, number], [number, number]];
    expect([b / a, c / a].map((ratio) => Math.round(ratio * 100) / 100)).toEqual([2, 4]);
  });
  it("says in words where there is no figure, cut where it does not fit, and nothing of it is markup", () => {
    const svg = draw([
      ["step", 16],
      [6, "no roof: <b> & a reason that is much too long for the width of the pane"],
    ]);
    expect(bars(svg)).toEqual([]);
    expect(svg).toContain("no roof: &#60;b&#62; &#38; a reason");
    expect(svg).toContain("…");
  });
  it("stays within its width whatever the figures", () => {
    fc.assert(
      fc.property(
        fc.array(fc.nat(100_000), { minLength: 1, maxLength: 6 }),
        fc.integer({ min: 280, max: 800 }),
        (values, width) => {
          for (const [x, long] of bars(
            draw(
              [
                ["what", ...values.map((_, i) => i)],
                [6, ...values],
              ],
              width,
            ),
          ))
            expect(x + long).toBeLessThanOrEqual(width);
        },
      ),
    );
  });
});
