import { describe, expect, it } from "vitest";
import { functions } from "../../functions/index.ts";
import { column, headings, tableOf, type Column, type ColumnKind } from "../../src/registry/columns.ts";

interface Board {
  readonly size: string;
  readonly length: number;
}
const columns: readonly Column<Board, "in" | "mm">[] = [
  column("Size", "text", ({ size }) => size, 120),
  column("Board", "length", ({ length }) => length),
  column("Unit", "text", (_, unit) => unit),
];

describe("columns", () => {
  it("make a table of rows, headings first, with what all rows share", () => {
    const boards = [
      { size: "2x6", length: 96 },
      { size: "2x8", length: 120 },
    ];
    expect(tableOf(columns, boards, "in")).toEqual([
      ["Size", "Board", "Unit"],
      ["2x6", 96, "in"],
      ["2x8", 120, "in"],
    ]);
    expect(tableOf(columns, [], "mm")).toEqual([headings(columns)]);
  });

  it.each<[ColumnKind, string | null]>([
    ["length", "0.000"],
    ["angle", "0.00"],
    ["count", "0"],
    ["money", "0.00"],
    ["area", "0.00"],
    ["amount", "0.00"],
    ["text", null],
  ])("%s is shown as %s", (kind, format) => expect(column("It", kind, String).format).toBe(format));

  it("are as wide as their kind, or as they say", () => {
    expect(columns.map(({ width }) => width)).toEqual([120, 92, 84]);
  });

  it("are never narrower than a heading takes: measured in Chromium, DejaVu Sans bold of 11 points, without edges", () => {
    const taken = {
      "Long point": 88.5,
      "Short point": 93.4,
      "Shortest board": 124.2,
      "From hip head": 118.6,
      Course: 57.2,
    };
    const widths = new Map(
      functions.flatMap(({ columns: own = [] }) => own.map(({ heading, width }) => [heading, width])),
    );
    for (const [heading, pixels] of Object.entries(taken))
      expect(widths.get(heading), heading).toBeGreaterThan(pixels + 4);
  });

  it("of every function name each heading once", () => {
    const tables = functions.filter((one) => one.columns);
    expect(tables.length).toBeGreaterThan(5);
    for (const { name, columns: own, examples } of tables) {
      expect(new Set(headings(own!)).size, name).toBe(own!.length);
      for (const { result } of examples) expect((result as unknown[][])[0], name).toEqual(headings(own!));
    }
  });
});
