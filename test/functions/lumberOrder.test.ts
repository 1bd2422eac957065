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

describe("the first note", () => {
  const list = [HEADS, ["a", "2x4", `7'`, 2]];
  const hall = [
    ["Span", 288],
    ["Length", 432],
    ["Pitch", 6],
  ];
  it.each<[string, unknown[], string]>([
    ["a list", [list, FEET], `no end trim, kerf 1/8"; every piece crown up`],
    [
      "a list with its trim",
      [list, FEET, `3/32"`, `3/4"`, "yes"],
      `end trim 3/4" a board, both ends together, kerf 3/32"; a jack may lie crown down where that saves`,
    ],
    ["a roof", [hall, FEET], `end trim 1/2" a board, both ends together, kerf 1/8"; every piece crown up`],
    [
      "a roof's own rows",
      [[...hall, ["End trim", 0], ["Allow crown down", "Yes"]], FEET],
      `no end trim, kerf 1/8"; a jack may lie crown down where that saves`,
    ],
    [
      "an argument before a row",
      [[...hall, ["End trim", 1], ["Allow crown down", "yes"]], FEET, "", 0, "no"],
      `no end trim, kerf 1/8"; every piece crown up`,
    ],
    [
      "a metric roof",
      [
        [
          ["Span", "7.2 m"],
          ["Length", "11.4 m"],
          ["Pitch", 6],
        ],
        "3 m to 7.2 m by 0.6 m",
      ],
      "end trim 12 mm a board, both ends together, kerf 3 mm; every piece crown up",
    ],
    [
      "a column of prices that are all 0",
      [
        list,
        [
          ["Size", "Length", "Price"],
          ["2x4", `8'`, 0],
        ],
      ],
      `no end trim, kerf 1/8"; every piece crown up; every price is 0: ordered by length`,
    ],
  ])("of %s says what was taken off and what was allowed", async (_, cells, note) => {
    expect((await rows("LUMBERORDER", ...cells))[0]!["Note"]).toBe(note);
  });

  it("stands before nothing in Cost where there are no prices", async () => {
    for (const stock of [
      FEET,
      [
        ["Size", "Length", "Price"],
        ["2x4", `8'`, 0],
      ],
    ]) {
      const order = await rows("LUMBERORDER", list, stock);
      expect(order.map((row) => row["Cost"])).toEqual(["", ""]);
      expect(order.map((row) => row["Length bought"])).toEqual([192, 192]);
    }
    const priced = await rows("LUMBERORDER", list, [
      ["Size", "Length", "Price"],
      ["2x4", `8'`, 4],
    ]);
    expect(priced.map((row) => [row["Cost"], row["Length bought"]])).toEqual([
      [8, 192],
      [8, ""],
    ]);
  });
});

describe("a size that no board is long enough for", () => {
  const hall = [
    ["Span", 288],
    ["Length", 432],
    ["Pitch", 6],
    ["Overhang", 16],
  ];
  it("has a row that says so, and the others are ordered as if it were not there", async () => {
    const order = await rows("LUMBERORDER", hall, "12', 16'");
    const long = order.find(({ Size }) => Size === "2x8")!;
    // 19' 10 7/8" with its slant and 1/2" of trim.
    expect(long["Note"]).toBe(`none long enough: H takes a 2x8 of 20' 2", the longest is 16' 0"`);
    expect([long["Board"], long["Count"], long["Cost"], long["Length bought"]]).toEqual(["", "", "", ""]);
    expect([least(order)["Cost"], least(order)["Length bought"]]).toEqual(["", ""]);
    expect(least(order)["Note"]).toBe("no least: 2x8 is not in the order");
    const enough = await rows("LUMBERORDER", hall, [
      ["Size", "Length"],
      ["2x6", `12'`],
      ["2x6", `16'`],
      ["2x8", `24'`],
    ]);
    const of = (all: typeof order) => all.filter(({ Size }) => Size === "2x6").map(({ Note: _, ...row }) => row);
    expect(of(order)).toEqual(of(enough));
    const plan = await rows("STICKPLAN", hall, "12', 16'");
    expect(plan.at(-1)).toMatchObject({ Size: "2x8", Board: "", Pieces: "", Note: long["Note"] });
  });

  it("stops neither table of a roof, even where it is the only one", async () => {
    const order = await rows("LUMBERORDER", [...hall, ["Hip", "2x6"], ["Ridge", "2x6"]], "12'");
    expect(order.map(({ Size }) => Size)).toEqual(["2x6", "Least possible"]);
    expect(order[0]!["Note"]).toMatch(/^none long enough: H takes a 2x6 of .*; end trim 1\/2"/);
    expect(await rows("STICKPLAN", [...hall, ["Hip", "2x6"], ["Ridge", "2x6"]], "12'")).toHaveLength(1);
  });

  it("is also one of which there are no boards at all", async () => {
    const order = await rows(
      "LUMBERORDER",
      [HEADS, ["a", "2x4", 90, 1], ["b", "2x6", 90, 1]],
      [
        ["Size", "Length"],
        ["2x6", 96],
      ],
    );
    expect(order.map(({ Size, Note }) => [Size, Note])).toEqual([
      ["2x6", "no end trim, kerf 0.125; every piece crown up"],
      ["2x4", "none long enough: there are no boards of 2x4 for a"],
      ["Least possible", "no least: 2x4 is not in the order"],
    ]);
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
