import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dressedSizes } from "../../src/measure/dressedSizes.ts";
import { nominalOf } from "../../src/measure/nominalOf.ts";
import { readSize } from "../../src/measure/readSize.ts";
import type { ReadSize } from "../../src/measure/readSize.ts";

const nominal = (text: string) => {
  const found = nominalOf(readSize(text) as ReadSize);
  return found && `${found.nominalThickness}x${found.nominalDepth}`;
};

describe("nominalOf", () => {
  // Whole-millimeter sizes of dressed lumber as sold in Canada (38 x 140, 38 x 184, 38 x 235, 38 x 286): common practice, no source.
  it.each([
    ["38 x 89", "2x4"],
    ["38 x 140", "2x6"],
    ["38 x 184", "2x8"],
    ["38 x 235", "2x10"],
    ["38 x 286", "2x12"],
    ["64 x 89", "3x4"],
    ["19 x 140", "1x6"],
    ["1.5 x 7.25", "2x8"],
    ["1.5 x 7 15/64", "2x8"],
    ["2x8", "2x8"],
  ])("%s is a %s", (text, name) => {
    expect(nominal(text)).toBe(name);
  });

  it.each(["45 x 200", "39 x 184", "1.75 x 9.5", "2.0 x 8.0", "1.5 x 7.5"])("%s is none", (text) => {
    expect(nominal(text)).toBeNull();
  });

  it("finds every dressed size, once", () => {
    expect(new Set(dressedSizes.map((size) => `${size.thickness}x${size.depth}`)).size).toBe(dressedSizes.length);
    fc.assert(
      fc.property(fc.constantFrom(...dressedSizes), (size) => {
        expect(nominalOf({ thickness: size.thickness, depth: size.depth, unit: "in", name: "" })).toBe(size);
      }),
      { seed: 1 },
    );
  });
});
