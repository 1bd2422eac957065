import { describe, expect, it } from "vitest";
import { HEADS, refusal } from "./orderRows.ts";

describe("LUMBERORDER on a list", () => {
  it.each<[string, unknown[], RegExp]>([
    ["nothing", ["", [[96]]], /^pieces: nothing was given/],
    ["no headings", [[["a", "2x4", 90, 1]], [[96]]], /^pieces: .*Piece, Size, Length, Count/],
    [
      "a missing column",
      [
        [
          ["Piece", "Size", "Length"],
          ["a", "2x4", 90],
        ],
        [[96]],
      ],
      /^pieces: there is no column Count/,
    ],
    [
      "a doubled column",
      [
        [
          [...HEADS, "Length"],
          ["a", "2x4", 90, 1, 2],
        ],
        [[96]],
      ],
      /^pieces: the heading Length stands there twice/,
    ],
    ["headings only", [[HEADS], [[96]]], /^pieces: there is nothing under the headings/],
    ["no piece wanted", [[HEADS, ["a", "2x4", 90, 0]], [[96]]], /^pieces: there is no piece/],
    ["a length of 0", [[HEADS, ["a", "2x4", 90, 1], ["b", "2x4", 0, 1]], [[96]]], /^pieces, row 3: Length: 0 was read/],
    ["a negative length", [[HEADS, ["a", "2x4", -3, 1]], [[96]]], /^pieces, row 2: Length: -3 was read/],
    ["text for a length", [[HEADS, ["a", "2x4", "long", 1]], [[96]]], /^pieces, row 2: Length: "long" was read/],
    ["a date for a length", [[HEADS, ["a", "2x4", 45000, 1]], [[96]]], /^pieces, row 2: Length: .*date/],
    [
      "a length of the other unit",
      [[HEADS, ["a", "2x4", `8'`, 1], ["b", "2x4", "2 m", 1]], [[96]]],
      /^pieces, row 3: Length: .*metric/,
    ],
    ["half a piece", [[HEADS, ["a", "2x4", 90, 1.5]], [[96]]], /^pieces, row 2: Count: 1.5 was read/],
    ["a count below 0", [[HEADS, ["a", "2x4", 90, -1]], [[96]]], /^pieces, row 2: Count: -1 was read/],
    ["no count", [[HEADS, ["a", "2x4", 90, ""]], [[96]]], /^pieces, row 2: Count: nothing was given/],
    ["more than a million of one", [[HEADS, ["a", "2x4", 90, 1e9]], [[96]]], /^pieces, row 2: Count: /],
    ["no name", [[HEADS, ["", "2x4", 90, 1]], [[96]]], /^pieces, row 2: Piece: nothing was given/],
    [
      "a name that no board has room for",
      [[HEADS, ["n".repeat(41), "2x4", 90, 1]], [[96]]],
      /^pieces, row 2: Piece: .*40 letters/,
    ],
    ["no size", [[HEADS, ["a", "", 90, 1]], [[96]]], /^pieces, row 2: Size: nothing was given/],
    ["no such nominal size", [[HEADS, ["a", "2x7", 90, 1]], [[96]]], /^pieces, row 2: Size: "2x7" is no nominal size/],
    [
      "a pitch on a size that is not known",
      [
        [
          [...HEADS, "Pitch"],
          ["a", "oak", 90, 1, 6],
        ],
        [[96]],
      ],
      /^pieces, row 2: Size: "oak" is no lumber size/,
    ],
    [
      "a pitch that a sheet made a time",
      [
        [
          [...HEADS, "Pitch"],
          ["a", "2x6", 90, 1, 0.25],
        ],
        [[96]],
      ],
      /^pieces, row 2: Pitch: /,
    ],
    [
      "a tilt without a hand",
      [
        [
          [...HEADS, "Saw tilt"],
          ["a", "2x6", 90, 1, 45],
        ],
        [[96]],
      ],
      /^pieces, row 2: Hand: .*left or right/,
    ],
    [
      "a tilt that turns past the tail",
      [
        [
          [...HEADS, "Saw tilt", "Hand"],
          ["a", "2x6", 1, 1, 60, "left"],
        ],
        [[96]],
      ],
      /^pieces, row 2: a is 1 long/,
    ],
    [
      "a hand that is none",
      [
        [
          [...HEADS, "Hand"],
          ["a", "2x6", 90, 1, "both"],
        ],
        [[96]],
      ],
      /^pieces, row 2: Hand: /,
    ],
    [
      "a piece longer than every board",
      [[HEADS, ["a", "2x4", 90, 1], ["long one", "2x4", 97, 1]], [[96]]],
      /^pieces, row 3: long one is 97 long and takes a 2x4 of 97; the longest board is 96/,
    ],
    [
      "a size that cannot be had",
      [
        [HEADS, ["a", "2x4", 90, 1]],
        [
          ["Size", "Length"],
          ["2x6", 96],
        ],
      ],
      /^boards: there is none of 2x4, which a is cut from \(pieces, row 2\)/,
    ],
    [
      "too few boards",
      [
        [HEADS, ["a", "2x4", 90, 3]],
        [
          ["Size", "Length", "Count"],
          ["2x4", 96, 2],
        ],
      ],
      /^boards: there are not enough of 2x4/,
    ],
    ["no boards", [[HEADS, ["a", "2x4", 90, 1]], ""], /^boards: /],
    [
      "a board of no length",
      [
        [HEADS, ["a", "2x4", 90, 1]],
        [
          ["Size", "Length"],
          ["2x4", 96],
          ["2x4", 0],
        ],
      ],
      /^boards, row 3: Length: 0 was read/,
    ],
    [
      "a price for one board only",
      [
        [HEADS, ["a", "2x4", 90, 1]],
        [
          ["Size", "Length", "Price"],
          ["2x4", 96, 4],
          ["2x4", 120, ""],
        ],
      ],
      /^boards, row 3: Price: nothing was given/,
    ],
    [
      "a price of 0 beside others, which may be an empty cell",
      [
        [HEADS, ["a", "2x4", 90, 1]],
        [
          ["Size", "Length", "Price"],
          ["2x4", 96, 4],
          ["2x4", 120, 0],
        ],
      ],
      /^boards, row 3: Price: 0 was read/,
    ],
    [
      "a negative price",
      [
        [HEADS, ["a", "2x4", 90, 1]],
        [
          ["Size", "Length", "Price"],
          ["2x4", 96, -4],
        ],
      ],
      /^boards, row 2: Price: -4 was read/,
    ],
    [
      "a count of 0 beside empty cells, which somebody typed",
      [
        [HEADS, ["a", "2x4", 90, 1]],
        [
          ["Size", "Length", "Count"],
          ["2x4", 96, 0],
          ["2x4", 120, ""],
        ],
      ],
      /^boards, row 2: Count: 0 was read/,
    ],
    [
      "half a board",
      [
        [HEADS, ["a", "2x4", 90, 1]],
        [
          ["Size", "Length", "Count"],
          ["2x4", 96, 2.5],
        ],
      ],
      /^boards, row 2: Count: 2.5 was read/,
    ],
    [
      "a board for a kerf",
      [[HEADS, ["a", "2x4", `7'`, 1]], [[`8'`]], `11'`],
      /^kerf: "11'" was read, which is wider than a saw cuts\. Type 1\/8"\.$/,
    ],
    [
      "millimeters of kerf among feet",
      [[HEADS, ["a", "2x4", `7'`, 1]], [[`8'`]], 3],
      /^kerf: 3 was read, which is wider than a saw cuts/,
    ],
    ["a kerf below 0", [[HEADS, ["a", "2x4", 90, 1]], [[96]], -1], /^kerf: /],
    [
      "more rows than can be planned",
      [[HEADS, ...Array.from({ length: 2001 }, (_, i) => [`p${i}`, "2x4", 20, 1])], [[96]]],
      /^pieces: there are more than 2000 rows/,
    ],
    [
      "a roof that cannot be framed, by the row of its block",
      [
        [
          ["Span", 288],
          ["Length", 100],
          ["Pitch", 6],
        ],
        [[240]],
      ],
      /^Length: /,
    ],
    [
      "a trim as long as a board",
      [[HEADS, ["a", "2x4", `7'`, 1]], [[`8'`], [`2'`]], "", `2'`],
      /^trim: 2' 0" off the ends leaves nothing of a board of 2' 0"\. Type 1\/2", or/,
    ],
    [
      "a trim of the roof as long as a board",
      [
        [
          ["Span", 288],
          ["Length", 432],
          ["Pitch", 6],
          ["End trim", 24],
        ],
        [[`8'`], [`2'`]],
      ],
      /^(pieces, )?End trim: 2' 0" off the ends leaves nothing/,
    ],
    ["a trim below 0", [[HEADS, ["a", "2x4", 90, 1]], [[96]], "", -1], /^trim: /],
    ["a word for crown down", [[HEADS, ["a", "2x4", 90, 1]], [[96]], "", "", "maybe"], /^crownDown: /],
  ])("refuses %s", async (_, cells, words) => {
    const message = await refusal("LUMBERORDER", ...cells);
    expect(message).toMatch(words);
    expect(message.length).toBeLessThan(400);
    expect(await refusal("STICKPLAN", ...cells)).toBe(message);
  });
});
