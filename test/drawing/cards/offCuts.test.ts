import { describe, expect, it } from "vitest";
import { offCuts } from "../../../src/drawing/cards/offCuts.ts";
import { stickPages } from "../../../src/drawing/cards/stickPages.ts";

const stick = (number: number, times: number, size: string, leftOver: number) => ({ number, times, size, leftOver });
const KEPT = { kerf: 0.125, least: 12, step: 1 / 16 };

describe("offCuts", () => {
  it("are what is left after the last cut, rounded down, alike ones together", () => {
    const found = offCuts(
      [
        stick(1, 2, "2x8", 46),
        stick(3, 1, "2x6", 20.19),
        stick(4, 3, "2x6", 12.1),
        stick(7, 1, "2x8", 46),
        stick(8, 1, "2x6", 30),
      ],
      KEPT,
    );
    expect(found).toEqual([
      {
        size: "2x8",
        length: 45.875,
        count: 3,
        boards: [
          [1, 2],
          [7, 7],
        ],
      },
      { size: "2x6", length: 29.875, count: 1, boards: [[8, 8]] },
      { size: "2x6", length: 20.0625, count: 1, boards: [[3, 3]] },
    ]);
  });

  it("run on over boards numbered on", () => {
    expect(offCuts([stick(1, 2, "2x8", 46), stick(3, 2, "2x8", 46)], KEPT)[0]!.boards).toEqual([[1, 4]]);
  });
});

describe("lists on the printed plan", () => {
  it("stand under the boards, with boxes, markup as letters, and words where they are empty", () => {
    const list = { title: "Shopping <list>", headings: ["Count"], rows: [["2 & 3"]], none: "Nothing." };
    const html = stickPages([], { paper: "letter", length: String, lists: [list, { ...list, rows: [] }] });
    expect(html).toContain("<h2>Shopping &#60;list&#62;</h2>");
    expect(html).toContain('<td class="box"></td><td></td><td>2 &#38; 3</td>');
    expect(html).toContain("<p>Nothing.</p>");
  });
});
