import { describe, expect, it } from "vitest";
import { uprightRows } from "../../../src/cutting/layout/rows.ts";

describe("uprightRows", () => {
  // A valley jack's head and a jack's foot that slant alike lie along one cut, the valley jack on the left.
  it.each([[[0, 1]], [[1, 0]]])("lays one after another what shares a slant, listed as %j", (list) => {
    const slants = [[2, 0] as const, [0, 2] as const];
    const pieces = slants.map((own) => ({ name: "p", size: "2x6", length: 30, count: 1, slant: "a", slants: own }));
    expect(uprightRows(pieces, list).map((row) => row.map(({ piece }) => piece))).toEqual([[1, 0]]);
  });
});
