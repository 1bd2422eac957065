import { describe, expect, it } from "vitest";
import { comparedFigure } from "../../../src/roof/tables/comparison.ts";
import { pieces } from "../../../src/roof/frame/pieces.ts";
import { asked, refusal, rows } from "../../functions/asked.ts";
import { framed } from "../anySpec.ts";

describe("comparedFigure", () => {
  const frame = framed();
  it.each([
    // The framing-square table: difference in jacks at 24 in on centers, rise 6; hip 18.00 in per foot of run.
    ["step", 26.83, 2],
    ["hip length", 12 * 18 - 0.75 * 1.5, 2],
    ["jacks", 40, 9],
    ["roof area", 288 * 432 * Math.sqrt(1.25), 4],
    // The heel of a 2x6 on a seat of 3 1/2 in: its plumb depth less what the seat's run rises. Half the span rises 72 in.
    ["ridge height", 5.5 * Math.sqrt(1.25) - 3.5 * 0.5 + 72, 9],
    ["longest jack", (120 - 0.75 * Math.SQRT2 + 0.75) * Math.sqrt(1.25), 9],
  ] as const)("%s", (what, figure, digits) => {
    expect(comparedFigure(what, frame, pieces(frame))).toBeCloseTo(figure, digits);
  });
});

describe("COMPARE", () => {
  const block = [
    ["Span", `24'`],
    ["Length", `36'`],
    ["Pitch", 6],
    ["Waste", 10],
  ];
  const grid = (...cells: readonly unknown[]) => asked("COMPARE", ...cells) as (string | number)[][];

  it("each cell is what the other tables say of the roof with that pitch and spacing", () => {
    const found = grid(block, [[4, 8]], [[16], ["2'"]]);
    [4, 8].forEach((pitch, i) =>
      [16, 24].forEach((spacing, j) => {
        const jacks = rows("JACKTABLE", [
          ["Span", `24'`],
          ["Length", `36'`],
          ["Pitch", pitch],
          ["Spacing", spacing],
        ]);
        expect(found[i + 1]![j + 1]).toBe(jacks[0]!["Long point"]);
      }),
    );
    expect([found[0], found.map((row) => row[0])]).toEqual([
      ["longest jack, in", 16, "2'"],
      ["longest jack, in", 4, 8],
    ]);
  });

  it("board feet, roof area and squares are those of MEMBERS and TAKEOFF", () => {
    const takeOff = Object.fromEntries(rows("TAKEOFF", block).map((row) => [row["Item"], row["Amount"]]));
    const feet = rows("MEMBERS", block).reduce((sum, row) => sum + Number(row["Board feet"]), 0);
    const figure = (what: string) => grid(block, 6, 24, what)[1]![1];
    expect(figure("board feet")).toBeCloseTo(feet, 9);
    expect(figure("roof area")).toBeCloseTo(Number(takeOff["Roof, sloped"]), 9);
    expect(figure("squares")).toBeCloseTo(Number(takeOff["Roofing"]), 9);
  });

  it("the end pitch follows where it is blank, and stays where it is given", () => {
    const step = (...more: unknown[][]) =>
      grid([["Span", `24'`], ["Length", `60'`], ["Pitch", 6], ...more], 12, 24, "step")[1]![1];
    expect(step()).toBeCloseTo(24 * Math.SQRT2, 9);
    // tan f = m2 / m1 = 1/2.
    expect(step(["End pitch", 6])).toBeCloseTo(12 * Math.SQRT2, 9);
  });

  it("a pitch and spacing that frame no roof say why in their cell, and the rest of the grid stands", () => {
    const [, row] = grid(block, 6, [[24, 150]]);
    expect([typeof row![1], row![2]]).toEqual([
      "number",
      `no roof: Spacing: 12' 6" is not less than the run of 12' 0", so no jack stands beside the king common`,
    ]);
  });

  it("a metric block compares in meters", () => {
    const metric = [
      ["Span", "6 m"],
      ["Length", "9 m"],
      ["Pitch", "30°"],
    ];
    expect(grid(metric, "30°", "600 mm", "roof area")[1]![1]).toBeCloseTo(54 / Math.cos(Math.PI / 6), 9);
    expect(grid(metric, "30°", 600, "squares")[0]![0]).toBe("squares, m2");
    expect(refusal("COMPARE", metric, 6, `24"`)).toMatch(/^spacings: .*metric/);
  });

  it.each([
    ["a bad pitch by its place", [[[6], [0.5]], 24], /^pitches, value 2: /],
    ["no pitch", [[[null]], 24], /^pitches: nothing/],
    ["a spacing of 0", [6, [[24, 0]]], /^spacings, value 2: 0/],
    ["too many", [Array.from({ length: 41 }, () => [6]), 24], /^pitches: more than 40/],
    ["something else to compare", [6, 24, "weight"], /^what: /],
  ] as const)("refuses %s", (_, cells, words) => {
    expect(refusal("COMPARE", block, ...cells)).toMatch(words);
  });
});
