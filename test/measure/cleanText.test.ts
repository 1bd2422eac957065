import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cleanText } from "../../src/measure/cleanText.ts";
import { shortened } from "../../src/measure/shortened.ts";
import { anyText } from "./anyText.ts";

describe("cleanText", () => {
  it.each([
    ["9′ 4½″", `9' 4 1/2"`],
    ["9’ 4”", `9' 4"`],
    ["10''", `10"`],
    ["2 × 8", "2 x 8"],
    ["−5 – 3", "-5 - 3"],
    ["3⁄16", "3/16"],
    [" \t9'\u00a0 4 IN\n", "9' 4 in"],
    ["⅞⅑⅒", "7/8 1/9 1/10"],
    ["９＇　４＂", `9' 4"`],
  ])("%s -> %s", (text, clean) => {
    expect(cleanText(text)).toBe(clean);
  });

  it("spells every vulgar fraction as Unicode does", () => {
    for (const character of "½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅐⅛⅜⅝⅞⅑⅒")
      expect(cleanText(character)).toBe(character.normalize("NFKC").replace("⁄", "/"));
  });

  it("changes nothing the second time", () => {
    fc.assert(
      fc.property(anyText, (text) => {
        const clean = cleanText(text);
        if (clean !== null && clean.length <= 64 && !clean.includes("''")) expect(cleanText(clean)).toBe(clean);
      }),
      { seed: 1 },
    );
  });

  it("refuses more than 64 characters", () => {
    expect(cleanText("1".repeat(65))).toBeNull();
  });
});

describe("shortened", () => {
  it("keeps 40 characters and cuts the 41st, never inside a character", () => {
    expect(shortened("a".repeat(40))).toBe("a".repeat(40));
    expect(shortened("a".repeat(41))).toBe(`${"a".repeat(39)}…`);
    expect(shortened("📐".repeat(41))).toBe(`${"📐".repeat(39)}…`);
    expect(shortened("📐".repeat(40))).toBe("📐".repeat(40));
  });
});
