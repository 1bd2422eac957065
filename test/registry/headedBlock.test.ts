import { newReading } from "../../src/registry/reading.ts";
import { messageOf } from "../../functions/words/problemText.ts";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { headedBlock } from "../../src/registry/headedBlock.ts";
import { CellError, type Refusal } from "../../src/registry/refusal.ts";

const read = (input: unknown) => headedBlock(input, newReading("list"), ["Piece", "Length"], ["Hand"]);

describe("headedBlock", () => {
  it("gives the filled rows by heading, each with its place in the block", () => {
    expect(
      read([
        ["length:", "Note", " PIECE "],
        [8, "x", "a"],
        [null, "y", ""],
        [0, "", 0],
        [9, "", "b"],
      ]),
    ).toEqual([
      { row: 2, cells: { Length: 8, Piece: "a" } },
      { row: 5, cells: { Length: 9, Piece: "b" } },
    ]);
  });

  it("passes over headings that a stacked list brings along, and keeps a row of which a cell is blank or like its heading", () => {
    expect(
      read([
        ["Piece", "Length", "Hand"],
        ["a", 8, ""],
        [" piece: ", "LENGTH", "hand"],
        ["Piece", 9, "left"],
        ["b", "Length", "Hand"],
        ["c", 0, null],
        ["Length", "Hand", "Piece"],
      ]),
    ).toEqual([
      { row: 2, cells: { Piece: "a", Length: 8, Hand: "" } },
      { row: 4, cells: { Piece: "Piece", Length: 9, Hand: "left" } },
      { row: 5, cells: { Piece: "b", Length: "Length", Hand: "Hand" } },
      { row: 6, cells: { Piece: "c", Length: 0, Hand: null } },
      { row: 7, cells: { Piece: "Length", Length: "Hand", Hand: "Piece" } },
    ]);
  });

  it.each([
    ["a text", "Piece"],
    ["nothing", undefined],
    ["no cells", []],
    [
      "one heading only",
      [
        ["Length", 432],
        ["Pitch", 6],
      ],
    ],
    ["no headings", [["a", 8]]],
    ["cells that are no rows", [1, 2]],
  ])("is null for %s", (_, input) => {
    expect(read(input)).toBeNull();
  });

  it.each<[string, unknown, RegExp]>([
    [
      "a missing column",
      [
        ["Piece", "Hand"],
        ["a", "left"],
      ],
      /^list: there is no column Length/,
    ],
    [
      "a doubled one",
      [
        ["Piece", "Length", "piece"],
        ["a", 1, "b"],
      ],
      /^list: the heading Piece stands there twice/,
    ],
    ["headings alone", [["Piece", "Length"]], /^list: there is nothing under the headings/],
    [
      "too many rows",
      [["Piece", "Length"], ...Array.from({ length: 2001 }, () => ["a", 1])],
      /^list: there are more than 2000 rows/,
    ],
  ])("refuses %s", (_, input, words) => {
    expect(messageOf(read(input) as Refusal)).toMatch(words);
  });

  it("lets an error of any cell pass through", () => {
    const error = new CellError("#REF!");
    expect(
      read([
        ["Piece", "Length"],
        ["a", 1],
        ["b", error],
      ]),
    ).toBe(error);
  });

  it("reads the same whatever the order of the columns", () => {
    fc.assert(
      fc.property(fc.shuffledSubarray(["Piece", "Length", "Hand", "Note", ""], { minLength: 5 }), (headings) => {
        const cells: Record<string, unknown> = { Piece: "a", Length: 8, Hand: "left", Note: "n", "": 1 };
        expect(read([headings, headings.map((heading) => cells[heading])])).toEqual([
          { row: 2, cells: { Piece: "a", Length: 8, Hand: "left" } },
        ]);
      }),
      { seed: 3 },
    );
  });
});
