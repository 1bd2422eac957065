import { describe, expect, it } from "vitest";
import { freeSheetName } from "../../../src/pane/writing/freeSheetName.ts";

describe("freeSheetName", () => {
  it.each([
    ["Jacks", [], "Jacks"],
    ["Jacks", ["jacks"], "Jacks 2"],
    ["Jacks", ["Jacks", "Jacks 2", "Jacks 3"], "Jacks 4"],
  ] as const)("%s beside %j", (wish, taken, name) => {
    expect(freeSheetName(wish, taken)).toBe(name);
  });
});
