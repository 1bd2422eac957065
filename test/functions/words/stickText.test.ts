import { describe, expect, it } from "vitest";
import { stickText } from "../../../functions/words/stickText.ts";

describe("stickText", () => {
  const piece = (name: string, hand: "left" | "right" | "plain", shares: "none" | "square" | "plumb" | "compound") => ({
    name,
    hand,
    shares,
  });
  it.each([
    ["a; b", [piece("a", "plain", "none"), piece("b", "plain", "none")]],
    [
      "2 x (a L + b R) | c",
      [
        piece("a", "left", "none"),
        piece("b", "right", "compound"),
        piece("a", "left", "plumb"),
        piece("b", "right", "compound"),
        piece("c", "plain", "plumb"),
      ],
    ],
    ["a; a", [piece("a", "plain", "none"), piece("a", "plain", "none")]],
    [
      "3 x a | b | a",
      [
        piece("a", "plain", "none"),
        piece("a", "plain", "square"),
        piece("a", "plain", "square"),
        piece("b", "plain", "square"),
        piece("a", "plain", "square"),
      ],
    ],
  ])("%s", (text, pieces) => {
    expect(stickText(pieces)).toBe(text);
  });
});
