import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { blockAround, REACH, type Edges } from "../../src/hosts/blockAround.ts";

const cell = (row: number, column: number): Edges => ({ top: row, left: column, bottom: row, right: column });

/** All that is reached from a cell by going from filled to filled cells and around them, grown to a rectangle until nothing is filled beside it. */
function slowly(start: Edges, filled: (row: number, column: number) => boolean): Edges {
  let { top, left, bottom, right } = start;
  const any = (t: number, l: number, b: number, r: number) => {
    for (let i = Math.max(0, t); i <= b; i++) for (let j = Math.max(0, l); j <= r; j++) if (filled(i, j)) return true;
    return false;
  };
  for (let grown = true; grown;) {
    grown = true;
    if (top > 0 && any(top - 1, left - 1, top - 1, right + 1)) top--;
    else if (any(bottom + 1, left - 1, bottom + 1, right + 1)) bottom++;
    else if (left > 0 && any(top - 1, left - 1, bottom + 1, left - 1)) left--;
    else if (any(top - 1, right + 1, bottom + 1, right + 1)) right++;
    else grown = false;
  }
  while (top < bottom && !any(top, left, top, right)) top++;
  while (bottom > top && !any(bottom, left, bottom, right)) bottom--;
  while (left < right && !any(top, left, bottom, left)) left++;
  while (right > left && !any(top, right, bottom, right)) right--;
  return { top, left, bottom, right };
}

describe("blockAround", () => {
  it("is what grows from a cell until nothing is filled beside it", () => {
    const grid = fc.array(fc.array(fc.boolean(), { minLength: 9, maxLength: 9 }), { minLength: 9, maxLength: 9 });
    fc.assert(
      fc.property(grid, fc.nat(8), fc.nat(8), fc.nat(3), (rows, row, column, thin) => {
        const filled = (i: number, j: number) => rows[i]?.[j] === true && (i + j) % (thin + 1) === 0;
        expect(blockAround(cell(row, column), filled)).toEqual(slowly(cell(row, column), filled));
      }),
      { numRuns: 500 },
    );
  });

  it("looks at each cell of a long list a few times at most, and no further than a roof could be", () => {
    let asked = 0;
    const list = (rows: number) => (row: number, column: number) => (asked++, row < rows && column < 10);
    expect(blockAround(cell(0, 0), list(900))).toEqual({ top: 0, left: 0, bottom: 899, right: 9 });
    expect(asked).toBeLessThan(900 * 10 * 4);
    asked = 0;
    expect(blockAround(cell(5_000, 3), list(1_000_000))).toEqual({
      top: 5_000 - REACH.rows,
      left: 0,
      bottom: 5_000 + REACH.rows,
      right: 9,
    });
    expect(asked).toBeLessThan(2 * REACH.rows * 10 * 4);
  });
});
