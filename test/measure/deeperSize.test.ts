import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { deeperSize } from "../../src/measure/deeperSize.ts";
import { dressedSizes } from "../../src/measure/dressedSizes.ts";
import { readSize } from "../../src/measure/readSize.ts";
import type { ReadSize } from "../../src/measure/readSize.ts";
import { anyText } from "./anyText.ts";

// One size deeper, about 2 in (50 mm), as the Canadian housing guide asks of hips and valleys.
describe("deeperSize", () => {
  it.each([
    ["2x4", "2x6"],
    ["2x6", "2x8"],
    ["2x8", "2x10"],
    ["2x14", "2x16"],
    ["2x3", "2x4"],
    ["2x5", "2x6"],
    ["1x6", "1x8"],
    ["4x6", "4x8"],
    ["6x6", "6x8"],
    ["2 X 6", "2x8"],
    ["2x16", "1.5 x 17.25 in"],
    ["38x89", "38 x 140 mm"],
    ["38x140", "38 x 184 mm"],
    ["38 x 184 mm", "38 x 235 mm"],
    ["38x235", "38 x 286 mm"],
    ["89x140", "89 x 184 mm"],
    ["45 x 200", "45 x 250 mm"],
    ["1.5 x 5.5", "1.5 x 7.25 in"],
    ["1.75 x 9.5", "1.75 x 11.5 in"],
    ["2.0 x 6.0", "2.0 x 8.0 in"],
    ["7x9", "7x9"],
    ["", ""],
  ])("%s -> %s", (name, deeper) => {
    expect(deeperSize(name)).toBe(deeper);
  });

  it("keeps the thickness and the unit, and is 1 to 2 1/2 in deeper for every nominal size", () => {
    fc.assert(
      fc.property(fc.constantFrom(...dressedSizes), (size) => {
        const deeper = readSize(deeperSize(`${size.nominalThickness}x${size.nominalDepth}`)) as ReadSize;
        expect([deeper.thickness, deeper.unit]).toEqual([size.thickness, "in"]);
        expect(deeper.depth - size.depth).toBeGreaterThanOrEqual(1);
        expect(deeper.depth - size.depth).toBeLessThanOrEqual(2.5);
      }),
      { seed: 1 },
    );
  });

  it("never throws", () => {
    fc.assert(
      fc.property(anyText, (text) => {
        expect(typeof deeperSize(text)).toBe("string");
      }),
      { seed: 2 },
    );
  });
});
