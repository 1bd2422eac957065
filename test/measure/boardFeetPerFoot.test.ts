import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { boardFeetPerFoot } from "../../src/measure/boardFeetPerFoot.ts";
import { dressedSizes } from "../../src/measure/dressedSizes.ts";
import { readSize, type ReadSize } from "../../src/measure/readSize.ts";
import { sizeName } from "../../src/measure/sizeName.ts";

const feetOf = (text: string) => boardFeetPerFoot(readSize(text) as ReadSize);

describe("boardFeetPerFoot", () => {
  // A board foot is 1 in by 12 in by 1 ft, nominal: a definition. Rounding other actual sizes up is common practice, no source.
  it.each([
    ["1x12", 1],
    ["2x6", 1],
    ["2x4", 8 / 12],
    ["2x8", 16 / 12],
    ["6x8", 4],
    ["38 x 140", 1],
    ["19 x 286", 1],
    ["64 x 140", 18 / 12],
    ["1.5 x 7.25", 16 / 12],
    ["1.75 x 9.5", 20 / 12],
    ["45 x 200", 16 / 12],
    ["50.8 x 101.6", 8 / 12],
    ["2.0 x 8.0", 16 / 12],
  ])("%s: %d", (size, feet) => {
    expect(feetOf(size)).toBeCloseTo(feet, 12);
  });

  it("is the same for a nominal size and for its dressed size in inches and in millimeters", () => {
    fc.assert(
      fc.property(fc.constantFrom(...dressedSizes), (size) => {
        const nominal = feetOf(sizeName(size.nominalThickness, size.nominalDepth, "nominal"));
        expect(nominal).toBe((size.nominalThickness * size.nominalDepth) / 12);
        expect(feetOf(sizeName(size.thickness, size.depth, "in"))).toBe(nominal);
        expect(feetOf(sizeName(Math.round(size.thickness * 25.4), Math.round(size.depth * 25.4), "mm"))).toBe(nominal);
      }),
      { seed: 1 },
    );
  });
});
