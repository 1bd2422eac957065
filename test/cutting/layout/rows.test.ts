import { describe, expect, it } from "vitest";
import { uprightRows } from "../../../src/cutting/layout/rows.ts";

describe("uprightRows", () => {
  // A valley jack's head and a jack's foot that slant alike lie along one cut, the valley jack on the left.
  it.each([[[0, 1]], [[1, 0]]])("lays one after another what shares a slant, listed as %j", (list) => {
    const slants = [[2, 0] as const, [0, 2] as const];
    const pieces = slants.map((own) => ({ name: "p", size: "2x6", length: 30, count: 1, slant: "a", slants: own }));
    expect(uprightRows(pieces, list).map((row) => row.map(({ piece }) => piece))).toEqual([[1, 0]]);
  });

  // Pieces 0 and 1 make a ring: 2 to 3, 3 to 2. By hand: it opens at its 3, where the others have one.
  it.each([
    [
      "between two",
      [
        [0, 3],
        [3, 0],
      ],
      [2, 1, 0, 3],
    ],
    ["after one that ends so", [[0, 3]], [2, 1, 0]],
    ["before one that begins so", [[3, 0]], [1, 0, 2]],
    ["not into one that has none of its slants", [[0, 5]], null],
  ] as const)("opens a ring into another row, %s", (_, others, order) => {
    const all = [[2, 3], [3, 2], ...others] as readonly (readonly [number, number])[];
    const pieces = all.map((slants) => ({ name: "p", size: "2x6", length: 30, count: 1, slant: "a", slants }));
    const rows = uprightRows(pieces, [...pieces.keys()]).map((row) => row.map(({ piece }) => piece));
    expect(rows).toEqual(order ? [order] : [[0, 1], [2]]);
  });
});
