import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { lengthText } from "../../src/measure/lengthText.ts";
import { readLength } from "../../src/measure/readLength.ts";
import type { Unit } from "../../src/measure/unit.ts";

describe("lengthText", () => {
  it.each([
    [112.625, "in", `9' 4 5/8"`],
    [2860, "mm", "2860 mm"],
    [2860.4, "mm", "2860 mm"],
    [2860.5, "mm", "2861 mm"],
    [-0.4, "mm", "0 mm"],
    [-2.5, "mm", "-2 mm"],
    [53.31830281, null, "53.318"],
    [48, null, "48"],
    [48.5, null, "48.5"],
    [-0.0001, null, "0"],
  ] as const)("writes %d %s as %s", (value, unit, text) => {
    expect(lengthText(value, unit)).toBe(text);
  });

  it("passes the smallest mark on", () => {
    expect(lengthText(7.176, "in", 64)).toBe(`7 11/64"`);
  });

  it("reads back in its own unit, no further off than it rounds", () => {
    const coarse = { in: 1 / 32, mm: 0.5, none: 0.0005 };
    fc.assert(
      fc.property(
        fc.double({ min: -1e6, max: 1e6, noNaN: true }),
        fc.constantFrom<Unit | null>("in", "mm", null),
        (value, unit) => {
          const read = readLength(lengthText(value, unit)) as { value: number; unit: Unit | null };
          expect(read.unit).toBe(unit);
          expect(Math.abs(read.value - value)).toBeLessThanOrEqual(coarse[unit ?? "none"] + 1e-9);
        },
      ),
      { seed: 1 },
    );
  });

  it("never throws", () => {
    fc.assert(
      fc.property(fc.double(), fc.constantFrom<Unit | null>("in", "mm", null), (value, unit) => {
        expect(lengthText(value, unit)).not.toBe("");
      }),
      { seed: 2 },
    );
  });
});
