import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { asked, number, refusal } from "./asked.ts";

// A board foot is 144 cubic inches of nominal size.
describe("BOARDFEET", () => {
  it.each<[string, unknown[], number]>([
    ["nominal", ["2x8", 144], 16],
    ["dressed, which counts as its nominal size", ["1.5 x 7.25", 144], 16],
    ["pieces", ["2x4", `8'`, 3], 16],
    ["metric, by its nominal size", ["38 x 140", "3048 mm"], 10],
    ["nominal by a metric length", ["2x6", "3.048 m"], 10],
  ])("%s", (_, cells, feet) => {
    expect(number("BOARDFEET", ...cells)).toBeCloseTo(feet, 9);
  });

  it("grows with length and count", () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 300, noNaN: true }), fc.integer({ min: 1, max: 50 }), (length, count) => {
        expect(number("BOARDFEET", "2x10", length, count)).toBeCloseTo((20 * length * count) / 144, 6);
      }),
      { seed: 16 },
    );
  });

  it.each<[string, unknown[], RegExp]>([
    ["no such size", ["2x7", 96], /^size: /],
    ["inches of a metric size", ["38 x 140", `8'`], /^length: .*size is metric/],
    ["half a board more", ["2x6", 96, -1], /^count: /],
    ["0, which an empty cell may read as", ["2x6", 96, 0], /^count: 0 was read/],
  ])("refuses %s", (_, cells, words) => {
    expect(refusal("BOARDFEET", ...cells)).toMatch(words);
  });
});

describe("BOARDPICK", () => {
  it.each<[string, unknown[], number]>([
    ["even feet from 8' to 20'", [50], 96],
    ["a length that is a board's", [120], 120],
    ["the next where it is a little more", [120.01], 144],
    ["boards on hand, in any order", [`9'`, [[192], [null], [`10'`], [144]]], 120],
    ["a list as text", [100, `8' to 12' by 1'`], 108],
    ["one board", [90, 96], 96],
    ["metric", ["2.5 m"], 3000],
    ["metric boards for a bare length", [2500, "2700 mm, 3 m"], 2700],
  ])("%s", (_, cells, board) => {
    expect(number("BOARDPICK", ...cells)).toBe(board);
  });

  it.each<[string, unknown[], RegExp]>([
    ["one that no board holds", [241], /^length: 241 is longer than the longest board, 240/],
    ["feet on metric boards", [`9'`, "3 m"], /^boards: .*metric/],
    ["no length", [""], /^length: /],
    ["an empty list", [90, [[null]]], /^boards: /],
  ])("refuses %s", (_, cells, words) => {
    expect(refusal("BOARDPICK", ...cells)).toMatch(words);
  });

  it("holds what MEMBERS says every piece needs", () => {
    const block = [
      ["Span", `24'`],
      ["Length", `36'`],
      ["Pitch", 6],
      ["Overhang", 16],
    ];
    const [headings, ...members] = asked("MEMBERS", block) as (string | number)[][];
    for (const row of members.slice(1)) {
      const need = Number(row[headings!.indexOf("Shortest board")]);
      expect(number("BOARDPICK", need, `2' to 30' by 6"`)).toBe(Math.ceil(need / 6 - 1e-9) * 6);
    }
  });
});
