import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { exact } from "../../src/measure/exact.ts";
import { anyText } from "./anyText.ts";

describe("exact", () => {
  it.each([
    ["7", "7"],
    ["7.5", "15/2"],
    [".1", "1/10"],
    ["7.", "7"],
    ["3/16", "3/16"],
    ["6 / 8", "3/4"],
    ["7 3/16", "115/16"],
    ["7-3/16", "115/16"],
    ["7 - 3/16", "115/16"],
    ["007", "7"],
    ["9007199254740993", "9007199254740993"],
  ])("reads %s as %s", (text, fraction) => {
    expect(exact(text)?.toFraction()).toBe(fraction);
  });

  it.each([
    "",
    " ",
    "-7",
    "+7",
    "1/0",
    "1/00",
    "7 3",
    "7.5 1/2",
    "1/2/3",
    "1.5/2",
    "1/2.5",
    "1e3",
    "1.(3)",
    "0.'3'",
    "7  3/16",
    "abc",
  ])("is null for %j", (text) => {
    expect(exact(text)).toBeNull();
  });

  it("never throws, whatever the text", () => {
    fc.assert(
      fc.property(anyText, (text) => {
        expect(() => exact(text)).not.toThrow();
      }),
      { seed: 1, numRuns: 2_000 },
    );
  });
});
