import { beforeAll, describe, expect, it } from "vitest";
import { ROWS } from "../../functions/arguments/roofBlock.ts";
import { samples } from "../../samples/index.ts";
import { plainLabel } from "../../src/registry/labelledBlock.ts";
import { bought, FEET, HEADS, least, paid, rows } from "./orderRows.ts";

const PAIR = [
  [...HEADS, "Pitch", "Hand", "Saw tilt"],
  ["a", "2x6", 46.8, 1, 9, "L", 45],
  ["b", "2x6", 46.9, 1, 9, "right", "45°"],
];

describe("LUMBERORDER on a list", () => {
  it.each<[string, unknown[], unknown[][]]>([
    [
      "one piece on the shortest board that holds it",
      [
        [HEADS, ["a", "2x4", 100, 1]],
        [[96], [120], [144]],
      ],
      [["2x4", 120, 1, 120]],
    ],
    [
      "columns in any order and case, others passed over",
      [
        [
          ["count", " LENGTH: ", "what for", "Size", "piece"],
          [2, 47, "door", "2x4", "a"],
        ],
        [[96]],
      ],
      [["2x4", 96, 1, 96]],
    ],
    [
      "blank rows between, and an unfilled rest of the range",
      [
        [["", "", "", ""], HEADS, ["a", "2x4", 47, 2], [null, "", undefined, null], [0, 0, 0, 0], ["b", "2x4", 90, 1]],
        [[96]],
      ],
      [["2x4", 96, 2, 192]],
    ],
    ["feet and inches as text", [[HEADS, ["a", "2x4", `7' 10"`, 1]], `8'`], [["2x4", 96, 1, 96]]],
    [
      "metric, with 3 mm of kerf",
      [
        [HEADS, ["a", "38 x 89", "1.2 m", 2]],
        [["2.4 m"], ["3 m"]],
      ],
      [["38 x 89 mm", 3000, 1, 3000]],
    ],
    [
      "metric with no kerf",
      [[HEADS, ["a", "38 x 89", "1.2 m", 2]], [["2.4 m"], ["3 m"]], 0],
      [["38 x 89 mm", 2400, 1, 2400]],
    ],
    [
      "a size by any of its names",
      [
        [HEADS, ["a", "2x8", 90, 1], ["b", "1.5 x 7.25", 90, 1]],
        [
          ["Size", "Length"],
          ["38 x 184", 192],
        ],
      ],
      [["2x8", 192, 1, 192]],
    ],
    [
      "a size of the user's own",
      [
        [HEADS, ["a", "Oak  board", 40, 2]],
        [
          ["Size", "Length"],
          ["oak board", 96],
        ],
      ],
      [["Oak board", 96, 1, 96]],
    ],
    [
      "the cheaper of two, though longer",
      [
        [HEADS, ["a", "2x4", 90, 1]],
        [
          ["Size", "Length", "Price"],
          ["2x4", 96, 5],
          ["2x4", 120, 4.5],
        ],
      ],
      [["2x4", 120, 1, 4.5]],
    ],
    [
      "as many of the cheap ones as there are",
      [
        [HEADS, ["a", "2x4", 90, 3]],
        [
          ["Size", "Length", "Price", "Count"],
          ["2x4", 96, 2, 2],
          ["2x4", 96, 5, ""],
        ],
      ],
      [
        ["2x4", 96, 2, 4],
        ["2x4", 96, 1, 5],
      ],
    ],
    [
      "a price column that is empty as if it were not there",
      [
        [HEADS, ["a", "2x4", 90, 1]],
        [
          ["Size", "Length", "Price", "Count"],
          ["2x4", 96, 0, 0],
          ["2x4", 120, "", 0],
        ],
      ],
      [["2x4", 96, 1, 96]],
    ],
    [
      "slanting cuts shared: 2 x 46.5 and 2.75 of slant in 96",
      [
        [
          [...HEADS, "Pitch"],
          ["a", "2x6", 46.5, 2, 6],
        ],
        [[96], [120]],
        0,
      ],
      [["2x6", 96, 1, 96]],
    ],
    [
      "a left and a right head to head where crown down is allowed: 1.5 x 5/4 less",
      [PAIR, [[96], [120]], 0, 0, "yes"],
      [["2x6", 96, 1, 96]],
    ],
    ["the same crown up, unless it is allowed", [PAIR, [[96], [120]], 0], [["2x6", 120, 1, 120]]],
    [
      "two halves of a board less its trim",
      [[HEADS, ["a", "2x4", 47.75, 2]], [[96], [120]], 0, 0.5],
      [["2x4", 96, 1, 96]],
    ],
    [
      "two that the trim leaves no room for",
      [[HEADS, ["a", "2x4", 47.8125, 2]], [[96], [120]], 0, 0.5],
      [["2x4", 120, 1, 120]],
    ],
    [
      "a piece as long as a board on an untrimmed one",
      [[HEADS, ["a", "2x4", 96, 1]], [[96], [120]], 0, 0.5],
      [["2x4", 96, 1, 96]],
    ],
    [
      "two lefts save nothing",
      [
        [
          [...HEADS, "Pitch", "Hand", "Saw tilt"],
          ["a", "2x6", 46.8, 2, 9, "left", 45],
        ],
        [[96], [120]],
        0,
      ],
      [["2x6", 120, 1, 120]],
    ],
    [
      "a piece that is not wanted now",
      [[HEADS, ["a", "2x4", 90, 1], ["b", "2x4", 500, 0]], [[96]]],
      [["2x4", 96, 1, 96]],
    ],
  ])("takes %s", async (_, cells, expected) => {
    const order = await rows("LUMBERORDER", ...cells);
    expect(bought(order)).toEqual(expected);
    expect(least(order)["Size"]).toBe("Least possible");
    expect(paid(least(order))).toBeCloseTo(
      expected.reduce((sum, row) => sum + Number(row[3]), 0),
      9,
    );
  });
});

describe("the roofs of the samples", () => {
  const blocks = samples.flatMap(({ name, book }) =>
    book.sheets.flatMap(({ rows: lines }) => {
      const labels = new Set(ROWS.map(plainLabel));
      const value = (row: number, column: number) => lines[row]?.[column]?.value ?? null;
      const known = (row: number, column: number) =>
        typeof value(row, column) === "string" && labels.has(plainLabel(String(value(row, column))));
      return lines.flatMap((_, row) =>
        [0, 1].flatMap((column) => {
          if (value(row, column) !== "Span") return [];
          const block: unknown[][] = [];
          for (let i = row; known(i, column); i++) block.push([value(i, column), value(i, column + 1)]);
          return [[name, block] as const];
        }),
      );
    }),
  );
  beforeAll(() => {
    expect(new Set(blocks.map(([name]) => name)).size).toBeGreaterThanOrEqual(3);
  });
  it.each(blocks)("%s: the order is proved least", async (_, block) => {
    const metric = block.some(([, value]) => / m$/.test(String(value)));
    const order = await rows("LUMBERORDER", block, metric ? "2.4 m to 7.2 m by 0.6 m" : FEET);
    expect(String(least(order)["Note"])).toMatch(/^proved/);
  });
});
