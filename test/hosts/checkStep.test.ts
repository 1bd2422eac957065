import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { address } from "../../src/hosts/address.ts";
import { checkStep } from "../../src/hosts/checkStep.ts";

describe("checkStep", () => {
  const at = (sheet: string, newSheet = false) => ({
    title: "x",
    blocks: [{ sheet, newSheet, row: 0, column: 0, cells: [[{ content: 1 }]] }],
  });
  it.each([
    ["Roof", false, true],
    ["ROOF", false, true],
    ["roof", true, false],
    ["Jacks", true, true],
    ["Jacks", false, false],
    ["a:b", true, false],
    ["'x", true, false],
    ["History", true, false],
    ["n".repeat(31), true, true],
  ] as const)("%s, new %s: %s", (sheet, isNew, fine) => {
    expect(checkStep(at(sheet, isNew), ["Roof"]) === null).toBe(fine);
  });
  it("takes every block that lies inside the sheet, and none that does not", () => {
    const place = fc.record({
      row: fc.integer({ min: -2, max: 1_048_580 }),
      column: fc.integer({ min: -2, max: 16_390 }),
    });
    fc.assert(
      fc.property(place, ({ row, column }) => {
        const inside = row >= 0 && row <= 1_048_575 && column >= 0 && column <= 16_383;
        expect(
          checkStep({ title: "x", blocks: [{ sheet: "Roof", row, column, cells: [[null]] }] }, ["Roof"]) === null,
        ).toBe(inside);
      }),
      { seed: 1 },
    );
  });
});

describe("address", () => {
  it.each([
    ["Jacks", 3, 1, "Jacks!B4"],
    ["Sheet1", 0, 25, "Sheet1!Z1"],
    ["Hip jacks", 9, 26, "'Hip jacks'!AA10"],
    ["Bob's", 0, 701, "'Bob''s'!ZZ1"],
    ["A1", 0, 702, "'A1'!AAA1"],
    ["R1C1", 0, 0, "'R1C1'!A1"],
    ["2024", 1_048_575, 16_383, "'2024'!XFD1048576"],
  ])("%s %i %i is %s", (sheet, row, column, text) => {
    expect(address(sheet, row, column)).toBe(text);
  });
});
