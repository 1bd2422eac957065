import { describe, expect, it } from "vitest";
import { drawnHeight } from "../../../src/drawing/canvas/drawnHeight.ts";
import { fitted } from "../../../src/pane/controls/fitted.ts";

/** A drawing whose height is so much of its width, and a part that is always there. */
const drawing = (aspect: number, always: number) => {
  const drawn: number[] = [];
  const draw = (width: number) => {
    drawn.push(width);
    return `<svg width="${width}" height="${aspect * width + always}">`;
  };
  return { draw, drawn };
};

describe("fitted", () => {
  it("takes the whole width where the height allows it", () => {
    const { draw, drawn } = drawing(0.5, 20);
    expect(drawnHeight(fitted()(draw, 400, 300))).toBe(220);
    expect(drawn).toEqual([400]);
  });

  it("is narrower where the height does not, and fills it nearly", () => {
    for (const [aspect, always] of [
      [0.8, 60],
      [1.2, 20],
      [0.9, 0],
    ] as const) {
      const height = drawnHeight(fitted()(drawing(aspect, always).draw, 600, 300));
      expect(height).toBeLessThanOrEqual(300);
      expect(height).toBeGreaterThan(270);
    }
  });

  it("draws once where the room and the roof's shape stay", () => {
    const { draw, drawn } = drawing(0.8, 60);
    const fit = fitted();
    fit(draw, 600, 300);
    const before = drawn.length;
    fit(draw, 600, 300);
    expect(drawn.length).toBe(before + 1);
  });

  it("grows again with the room", () => {
    const { draw } = drawing(0.8, 0);
    const fit = fitted();
    fit(draw, 600, 160);
    expect(drawnHeight(fit(draw, 600, 480))).toBeGreaterThan(450);
  });
});
