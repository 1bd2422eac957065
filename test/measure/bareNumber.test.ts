import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bareNumber } from "../../src/measure/bareNumber.ts";

describe("bareNumber", () => {
  it.each([
    ["48", 48],
    ["-1.5", -1.5],
    ["+2.", 2],
    [".5", 0.5],
    [".25", 0.25],
    ["1e3", 1000],
    ["2E-2", 0.02],
  ])("reads %s", (text, value) => expect(bareNumber(text)).toBe(value));

  it.each(["", " 6", "6 in", "6/12", "6,5", "--6", "1e", "Infinity", "NaN", "0x10", ".", "1e999"])(
    "is null for %j",
    (text) => expect(bareNumber(text)).toBeNull(),
  );

  it("reads every finite number as JavaScript writes it", () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (value) => {
        expect(bareNumber(String(value))).toBe(value === 0 ? 0 : value);
      }),
      { seed: 1 },
    );
  });
});
