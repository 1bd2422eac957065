import { pickBoard } from "../src/cutting/pickBoard.ts";
import { boardFeetPerFoot } from "../src/measure/boardFeetPerFoot.ts";
import { MM_PER_INCH } from "../src/measure/unit.ts";
import { isBlank } from "../src/registry/cells.ts";
import { length, number, size } from "../src/registry/parameters.ts";
import { worksheetFunction, type Parameter } from "../src/registry/worksheetFunction.ts";
import { boardLengths } from "./arguments/boardLengths.ts";
import { refused } from "./arguments/refused.ts";
import { DEFAULTS } from "./arguments/roofBlock.ts";

const family = "lumber";

export const boardFeet = worksheetFunction({
  name: "BOARDFEET",
  family,
  summary: "Board feet of lumber of a nominal size.",
  parameters: [
    size("size", `Lumber size: nominal (2x8) or actual ("1.5 x 7.25", "38 x 184").`),
    length("length", "Length of a piece; a bare number is inches, or millimeters where the size is in millimeters.", {
      example: "192",
    }),
    number("count", "Number of pieces, 1 or more.", { from: 1, to: 1_000_000, example: "count", fallback: 1 }),
  ],
  result: "value",
  returns: "board feet: nominal thickness times nominal depth in inches, times length in feet, over 12.",
  examples: [
    { cells: ["2x6", `16'`], result: 16, source: "a board foot is 144 cubic inches, nominal: 2 x 6 x 192 / 144" },
    {
      cells: ["38 x 184", 3600, 10],
      result: 157.4803,
      source: "2 x 8 in nominal: 16 / 12 of 3600 / 304.8 ft, ten times",
    },
    { cells: ["1.5 x 7.25", 144], result: 16 },
  ],
  compute: ({ size, length, count }, { unit }) =>
    (boardFeetPerFoot(size) * count * length) / (unit === "mm" ? MM_PER_INCH : 1) / 12,
});

const boardsOnHand: Parameter<readonly number[] | null, "boards"> = {
  name: "boards",
  description: `Lengths of board on hand: a range of lengths, or text such as "8' to 20' by 2'".`,
  quantity: "boards",
  block: true,
  optional: true,
  defaultText: "even feet from 8' to 20', or 2.4 m to 6 m by 0.6 m",
  read: (cell, reading) => (isBlank(cell) ? null : boardLengths(cell, reading)),
};

export const boardPick = worksheetFunction({
  name: "BOARDPICK",
  family,
  summary: "Shortest board on hand that holds a piece.",
  parameters: [
    length(
      "length",
      "Shortest board that holds the piece, as JACKBOARD or MEMBERS gives it; a bare number is inches, or millimeters beside a metric text.",
      { example: "112.6" },
    ),
    boardsOnHand,
  ],
  result: "value",
  returns: "the length of that board, in the unit of length.",
  examples: [
    {
      cells: [112.6],
      result: 120,
      source: "even feet, common practice, no source: 112.6 in is over 8 ft (96 in) and under 10 ft (120 in)",
    },
    { cells: [`10' 3"`, `8', 12', 16'`], result: 144 },
    { cells: ["3.1 m"], result: 3600 },
  ],
  refuses: refused("no board long enough"),
  compute({ length, boards }, { unit }) {
    return pickBoard(length, boards ?? DEFAULTS[unit ?? "in"].boards);
  },
});

export const lumbers = [boardFeet, boardPick];
