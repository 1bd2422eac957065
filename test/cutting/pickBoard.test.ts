import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { pickBoard } from "../../src/cutting/pickBoard.ts";
import { Failure } from "../../src/measure/result.ts";

describe("pickBoard", () => {
  it.each([
    ["the shortest that holds it", 112.6, [96, 144, 120], 120],
    ["an exact fit", 96, [120, 96], 96],
    ["an exact fit, but for the last bits", 0.1 + 0.2, [0.3], 0.3],
    ["metric", 2500, [2400, 3000, 3600], 3000],
  ])("%s", (_, length, boards, expected) => expect(pickBoard(length, boards)).toBe(expected));

  it.each([
    ["too long", 241, [96, 240], new Failure({ kind: "no board long enough", length: 241, longest: 240 })],
    [
      "a sixteenth too long",
      96.0625,
      [96],
      new Failure({ kind: "no board long enough", length: 96.0625, longest: 96 }),
    ],
  ])("refuses: %s", (_, length, boards, expected) => expect(pickBoard(length, boards)).toEqual(expected));

  it("holds the piece, and no shorter board does", () => {
    const size = fc.double({ min: 1, max: 300, noNaN: true });
    fc.assert(
      fc.property(size, fc.array(size, { minLength: 1 }), (length, boards) => {
        const picked = pickBoard(length, boards);
        const holding = boards.filter((board) => board * (1 + 1e-9) >= length);
        if (holding.length === 0) expect(picked).toBeInstanceOf(Failure);
        else expect(picked).toBe(Math.min(...holding));
      }),
      { seed: 1 },
    );
  });
});
