import { describe, expect, it } from "vitest";
import { FEET, HEADS, least, rows } from "./orderRows.ts";

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

describe("a joined piece of a list", () => {
  it("is named on the boards of its own parts, and on no other's that begins with its name", async () => {
    const joined = (name: string) => [name, "2x8", 300, 1, 150];
    const plan = await rows("STICKPLAN", [[...HEADS, "Join"], joined("R"), joined("R x")], `13'`);
    const notes = plan.map(({ Pieces, Note }) => [Pieces, String(Note).split(" longer than every board")[0]]).sort();
    expect(notes).toEqual([
      ["R 1 of 2", "R"],
      ["R 2 of 2", "R"],
      ["R x 1 of 2", "R x"],
      ["R x 2 of 2", "R x"],
    ]);
  });
});
