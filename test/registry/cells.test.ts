import { describe, expect, it } from "vitest";
import { hasComma, isBlank } from "../../src/registry/cells.ts";

describe("isBlank", () => {
  it.each([undefined, null, ""])("%j is blank", (cell) => expect(isBlank(cell)).toBe(true));
  it.each([0, false, " ", "0", NaN, [], [[]], {}])("%j is not", (cell) => expect(isBlank(cell)).toBe(false));
});

describe("hasComma", () => {
  it.each(["6,5", "1,000", "a 1,2"])("%j has one between digits", (cell) => expect(hasComma(cell)).toBe(true));
  it.each(["6.5", "8', 12'", 65, null])("%j has none", (cell) => expect(hasComma(cell)).toBe(false));
});
