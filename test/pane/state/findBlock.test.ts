import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ROWS } from "../../../functions/arguments/roofBlock.ts";
import { findBlock } from "../../../src/pane/state/findBlock.ts";
import { cellsOf } from "../cellsOf.ts";

const block = [
  ["Span", "24'"],
  ["length:", "36'"],
  [" PITCH ", 6],
];
const at = { row: 0, column: 0 };

describe("findBlock", () => {
  it.each<[string, (string | number)[][], { row: number; column: number }, ReturnType<typeof findBlock>]>([
    ["alone", block, at, { row: 0, column: 0, rows: 3, columns: 2 }],
    [
      "under a title and a heading",
      [["Ferry landing", ""], ["The roof", ""], ...block],
      at,
      { row: 2, column: 0, rows: 3, columns: 2 },
    ],
    [
      "beside other figures",
      [
        ["Half span", 144, ...block[0]!],
        ["", "", ...block[1]!],
        ["x", 1, ...block[2]!],
      ],
      at,
      { row: 0, column: 2, rows: 3, columns: 2 },
    ],
    ["over an empty row", [...block.slice(0, 2), ["", ""], block[2]!], at, { row: 0, column: 0, rows: 4, columns: 2 }],
    [
      "with its headings and a column for each wing, and no note beside it",
      [
        ["Ferry landing", "", "", "", ""],
        ["", "Main roof", "Wing A", "", ""],
        ["Span", 288, 144, "", "wide"],
        ["Length", 432, "", "", ""],
        ["Pitch", 6, 8, "", ""],
      ],
      at,
      { row: 1, column: 0, rows: 4, columns: 3 },
    ],
    [
      "with wings that its row Wall tells of",
      [
        ["Wall", "", "", "back", ""],
        ["Span", 288, "", 144, "note"],
        ["Length", 432, "", "", ""],
        ["Pitch", 6, "", "", ""],
      ],
      at,
      { row: 0, column: 0, rows: 4, columns: 4 },
    ],
    [
      "the one that is nearer, of two",
      [...block, ...block],
      { row: 4, column: 1 },
      { row: 3, column: 0, rows: 3, columns: 2 },
    ],
    [
      "not where Pitch is missing",
      [
        ["Span", 288],
        ["Length", 432],
        ["Hip", "2x8"],
      ],
      at,
      null,
    ],
    ["not in one column", [["Span"], ["Length"], ["Pitch"]], at, null],
    [
      "not in text that is far too long",
      [
        ["Span", 1],
        ["Length", 2],
        ["Pitch".padEnd(10_000), 3],
      ],
      at,
      null,
    ],
  ])("%s", (_, rows, from, found) => {
    expect(findBlock(cellsOf(rows), from)).toEqual(found);
  });

  it("finds a block of any rows in any order wherever it stands", () => {
    const rows = fc
      .shuffledSubarray(ROWS.filter((row) => !["Span", "Length", "Pitch"].includes(row)))
      .chain((some) => fc.shuffledSubarray(["Span", "Length", "Pitch", ...some], { minLength: 3 + some.length }));
    fc.assert(
      fc.property(rows, fc.nat(5), fc.nat(4), (labels, above, left) => {
        const width = left + 2;
        const empty = Array.from({ length: above }, () => Array.from({ length: width }, () => "note"));
        const lines = labels.map((label) => [...Array.from({ length: left }, () => "x"), label, "1"]);
        expect(findBlock(cellsOf([...empty, ...lines]), at)).toEqual({
          row: above,
          column: left,
          rows: labels.length,
          columns: 2,
        });
      }),
    );
  });
});
