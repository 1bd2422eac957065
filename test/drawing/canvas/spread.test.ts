import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { spread } from "../../../src/drawing/canvas/spread.ts";

describe("spread", () => {
  it.each([
    ["leaves places that have room", [10, 30, 60], 10, [10, 30, 60]],
    ["moves two that touch apart evenly", [50, 52], 10, [46, 56]],
    ["keeps to the bounds", [0, 2, 99], 10, [0, 10, 90]],
    ["pushes a neighbor along", [50, 50, 56], 10, [42, 52, 62]],
  ])("%s", (_, places, gap, expected) => {
    expect(spread(places, gap, 0, 90)).toEqual(expected);
  });

  it("keeps order, gap and bounds whatever the places, and none moves that need not", () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: -20, max: 120 }), { minLength: 1, maxLength: 12 }),
        fc.integer({ min: 1, max: 8 }),
        (given, gap) => {
          const places = [...given].sort((a, b) => a - b);
          const found = spread(places, gap, 0, 100)!;
          for (const [i, place] of found.entries()) {
            expect(place).toBeGreaterThanOrEqual(-1e-9);
            expect(place).toBeLessThanOrEqual(100 + 1e-9);
            if (i > 0) expect(place - found[i - 1]!).toBeGreaterThanOrEqual(gap - 1e-9);
          }
          const roomy = places.every(
            (place, i) => place >= 0 && place <= 100 && (i === 0 || place - places[i - 1]! >= gap),
          );
          if (roomy) expect(found.map((place) => Math.round(place * 1e6) / 1e6)).toEqual(places);
        },
      ),
      { seed: 3 },
    );
  });

  it("is null where there is no room", () => {
    expect(spread([1, 2, 3], 51, 0, 100)).toBeNull();
  });
});
