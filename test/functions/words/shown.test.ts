import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { shown } from "../../../functions/words/shown.ts";

describe("shown", () => {
  it.each<[unknown, string]>([
    ["6/12", `"6/12"`],
    [48.5, "48.5"],
    [NaN, "NaN"],
    [true, "TRUE"],
    [false, "FALSE"],
    [10n, "10"],
    [[[1]], "a range of cells"],
    [{}, "something that is neither number nor text"],
    [null, "something that is neither number nor text"],
    [Symbol("x"), "something that is neither number nor text"],
  ])("%o as %s", (cell, text) => expect(shown(cell)).toBe(text));

  it("shows no more than 40 characters, and never half of one", () => {
    fc.assert(
      fc.property(fc.string({ unit: "grapheme", maxLength: 300 }), (text) => {
        const seen = shown(text);
        expect(Array.from(seen).length).toBeLessThanOrEqual(43);
        expect(seen).not.toMatch(/\p{Surrogate}/u);
        if (text.length <= 40) expect(seen).toBe(`"${text}"`);
        else expect(seen.endsWith(`…"`)).toBe(true);
      }),
      { seed: 1 },
    );
  });

  it("ends a cut text of emoji whole", () => expect(shown("🏠".repeat(50))).toBe(`"${"🏠".repeat(40)}…"`));
});
