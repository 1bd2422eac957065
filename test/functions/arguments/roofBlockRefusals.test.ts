import { describe, expect, it } from "vitest";
import { refusal } from "../asked.ts";

type Rows = readonly (readonly unknown[])[];
const usual: Rows = [
  ["Span", `24'`],
  ["Length", `36'`],
  ["Pitch", 6],
];

const withRows = (...more: Rows): Rows => [
  ...usual.filter(([label]) => !more.some(([other]) => other === label)),
  ...more,
];

describe("a block is refused by the label at fault", () => {
  it.each<[string, Rows, RegExp]>([
    ["missing span", usual.slice(1), /^Span: the block has no value.*24' or 288/],
    ["missing length", [usual[0]!, usual[2]!], /^Length: /],
    ["missing pitch", usual.slice(0, 2), /^Pitch: /],
    ["blank span", [["Span", ""], ...usual.slice(1)], /^Span: /],
    ["doubled", [...usual, ["Span", `20'`]], /^roof: Span stands there twice/],
    ["doubled in other letters", [...usual, [" span:", `20'`]], /^roof: Span stands there twice/],
    [
      "unknown",
      [...usual, ["Color", "red"]],
      /^roof: "Color" is no row of a roof block\. The rows are: Span, Length, Pitch/,
    ],
    ["a number for a label", [...usual, [7, 7]], /^roof: 7 is no row/],
    ["a value without a label", [...usual, ["", 7]], /^roof: the value 7 has no label/],
    [
      "a note in a third column",
      [...usual, ["Spacing", 16, "o.c."]],
      /^Wing A, Spacing: "o\.c\." was read in a wing's column/,
    ],
    [
      "an end overhang of 0",
      withRows(["End overhang", 0]),
      /^End overhang: 0 was read, as some sheets hand over an empty cell\. Type none for no overhang, or leave it blank for a level fascia\.$/,
    ],
    ["one column", [["Span"], ["Length"]], /^roof: .*two columns/],
    [
      "a heel of 0",
      withRows(["Heel", 0]),
      /^Heel: 0 was read, as some sheets hand over an empty cell\. Type a length, or take the row away\.$/,
    ],
    [
      "a spacing of 0",
      withRows(["Spacing", 0]),
      /^Spacing: 0 was read, as some sheets hand over an empty cell\. Type a length, or take the row away\.$/,
    ],
    ["seat and heel", withRows(["Seat", 3.5], ["Heel", 4]), /^Heel: .*Keep one/],
    ["no ridge for hips on the ridge", withRows(["Ridge", "none"], ["Hip head", "ridge"]), /^Hip head: /],
    ["hips on the ridge of a pyramid", withRows(["Length", `24'`], ["Hip head", "ridge"]), /^Hip head: /],
    [
      "too narrow for a jack",
      withRows(["Span", `5'`], ["Length", `20'`], ["Spacing", 29]),
      /^Span: .*too narrow for one jack/,
    ],
    ["a length under twice the end run", withRows(["Length", `20'`]), /^Length: .*24' 0"/],
    ["a ridge of no use", withRows(["Length", `24' 1"`]), /^Length: .*24' 0" for a pyramid, or 24' 3" or more/],
    [
      "a spacing wider than the run",
      withRows(["Spacing", `12'`]),
      /^Spacing: 12' 0" is not less than the run of 12' 0"/,
    ],
    [
      "bare feet for the span",
      withRows(["Span", 24]),
      /^Span: 24 was read, which is too short in inches\. Type 24' for feet/,
    ],
    ["bare feet for the length", withRows(["Length", "36"]), /^Length: .*Type 36' for feet/],
    [
      "bare meters",
      withRows(["Span", 6], ["Length", 9000], ["Unit", "mm"]),
      /^Span: 6 was read.*Type "6 m" for meters/,
    ],
    [
      "bare millimeters for the span",
      withRows(["Span", 7200]),
      /^Span: 7200 was read, which is too long in inches\. Type "7200 mm" for millimeters, or in beside the label Unit\.$/,
    ],
    [
      "bare feet for the spacing",
      withRows(["Spacing", 2]),
      /^Spacing: .* Type 3" or more, center to center; feet need their mark, as 2'\.$/,
    ],
    [
      "feet among metric",
      [
        ["Span", "6 m"],
        ["Length", `36'`],
        ["Pitch", 6],
      ],
      /^Span: "6 m" is metric, but the block is in feet and inches/,
    ],
    ["metric among feet", withRows(["Overhang", "400 mm"]), /^Overhang: "400 mm" is metric/],
    [
      "feet under Unit mm",
      withRows(["Span", 6000], ["Length", 9000], ["Overhang", `1'`], ["Unit", "mm"]),
      /^Overhang: .*row Unit/,
    ],
    ["a metric size among feet", withRows(["Rafter", "38 x 140"]), /^Rafter: /],
    [
      "a metric board among feet",
      withRows(["Boards", "2400 mm, 3000 mm"]),
      /^Boards: "2400 mm" is metric, but the rest of the block is feet and inches\. Type both in the same unit\.$/,
    ],
    ["no such unit", withRows(["Unit", "cubits"]), /^Unit: "cubits".*in, mm/],
    ["no such shape", withRows(["Ends", "dome"]), /^Ends: "dome".*hip and hip/],
    ["no such size", withRows(["Rafter", "2x7"]), /^Rafter: "2x7" is no nominal size/],
    ["a size turned round", withRows(["Hip", "8x2"]), /^Hip: .*Type 2x8/],
    ["a sheet's date for the pitch", withRows(["Pitch", 45817]), /^Pitch: .*date/],
    ["a sheet's time for the pitch", withRows(["End pitch", 0.25]), /^End pitch: .*time/],
    ["no spacing to speak of", withRows(["Spacing", 2]), /^Spacing: /],
    ["a negative overhang", withRows(["Overhang", -4]), /^Overhang: /],
    ["a negative waste", withRows(["Waste", -1]), /^Waste: /],
    ["waste as a sheet's percent", withRows(["Waste", 0.1]), /^Waste: 0\.1 was read, which a sheet makes of 10%/],
    [
      "a percent whose double is not whole",
      withRows(["Waste", 0.07]),
      /^Waste: 0\.07 was read, which a sheet makes of 7%\. Type 7 for 7 percent\.$/,
    ],
    ["spares in percent", withRows(["Spares", "10%"]), /^Spares: "10%" was read; it must be a whole number/],
    [
      "a word in a block of feet",
      withRows(["Spacing", "wide"]),
      /^Spacing: "wide" was read, which is no length\. Type 24\.$/,
    ],
    [
      "a word in a metric block",
      [
        ["Span", "6 m"],
        ["Length", "9 m"],
        ["Pitch", 6],
        ["Seat", "wide"],
      ],
      /^Seat: "wide" was read, which is no length\. Type "89 mm"\.$/,
    ],
    [
      "no span in a metric block",
      [
        ["Length", "9 m"],
        ["Pitch", 6],
      ],
      /^Span: the block has no value for it\. Type "7\.2 m" beside the label Span\.$/,
    ],
    ["half a spare", withRows(["Spares", 1.5]), /^Spares: .*whole number/],
    [
      "boards in bare feet",
      withRows(["Boards", "8 to 20 by 2"]),
      /^Boards: "8 to 20 by 2" was read, and no board so short in inches frames a roof\. Type "8' to 20' by 2'" for feet\.$/,
    ],
    ["one board in bare feet", withRows(["Boards", 16]), /^Boards: 16 was read, .* Type "16'" for feet\.$/],
    [
      "boards in bare meters",
      withRows(["Unit", "mm"], ["Boards", "2.4, 4.8"], ["Span", 7200], ["Length", 10800]),
      /^Boards: "2\.4, 4\.8" was read, .*millimeters.* Type "2\.4 m, 4\.8 m" for meters\.$/,
    ],
    ["no boards", withRows(["Boards", ", ,"]), /^Boards: /],
    ["boards backwards", withRows(["Boards", `20' to 8' by 2'`]), /^Boards: .*backwards/],
    ["words", [["Span", "wide"], ...usual.slice(1)], /^Span: "wide" was read, which is no length/],
  ])("%s", (_, block, words) => {
    for (const table of ["JACKTABLE", "MEMBERS", "PLATEMARKS", "TAKEOFF", "CAUTIONS"])
      expect(refusal(table, block)).toMatch(words);
  });

  it("a length beside the block in another unit, and says that the block set the first", () => {
    expect(refusal("SALVAGE", usual, "Main", "left", "2 m")).toMatch(/"2 m" is metric, but roof is feet and inches/);
  });

  it("no block at all", () => {
    for (const block of [undefined, "roof", 24, [], [[]], [["Span", { feet: 24 }], ...usual.slice(1)]])
      expect(refusal("MEMBERS", block)).toMatch(/^(roof|Span): /);
  });
});
