import { describe, expect, it } from "vitest";
import { pieceParts, wholePiece } from "../../../src/roof/members/pieceParts.ts";

describe("pieceParts", () => {
  it("names each part by its place, from joint to joint, and a piece without joints by itself", () => {
    expect(pieceParts("R", 300, [180])).toEqual([
      { name: "R 1 of 2", length: 180 },
      { name: "R 2 of 2", length: 120 },
    ]);
    expect(pieceParts("A R", 600, [200, 390]).map(({ length }) => length)).toEqual([200, 190, 210]);
    expect(pieceParts("R", 180, [])).toEqual([{ name: "R", length: 180 }]);
  });
});

describe("wholePiece", () => {
  it.each([
    ["R 1 of 2", "R"],
    ["A R 10 of 12", "A R"],
    ["R 2 of 10", "R"],
    // No part: no number before or after, or more behind it.
    ["C spare", "C spare"],
    ["R one of 2", "R one of 2"],
    ["R 1 of two", "R 1 of two"],
    ["R 1 of 2 spare", "R 1 of 2 spare"],
  ])("%s is of %s", (name, whole) => {
    expect(wholePiece(name)).toBe(whole);
    for (const part of pieceParts(whole, 100, [40, 70])) expect(wholePiece(part.name)).toBe(whole);
  });
});
