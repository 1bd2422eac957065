import { describe, expect, it } from "vitest";
import { column } from "../../../src/registry/columns.ts";
import { tableTexts } from "../../../src/pane/controls/tableTexts.ts";

const columns = [
  column("Piece", "text", String),
  column("Long point", "length", Number),
  column("Saw tilt", "angle", Number),
  column("Left", "count", Number),
  column("Cost", "money", Number),
];
const table = [
  ["Piece", "Long point", "Saw tilt", "Left", "Cost"],
  ["J1", 112.625, 45, 4, 9.5],
  ["J2", 51.5, "", 4, 12],
];

describe("tableTexts", () => {
  it("shows lengths on the tape, angles in degrees, and only the columns asked for", () => {
    expect(tableTexts(columns, table, "in", ["Long point", "Saw tilt", "Left", "Cost"])).toEqual({
      headings: ["Long point", "Saw tilt", "Left", "Cost"],
      rows: [
        [`9' 4 5/8"`, "45.00°", "4", "9.50"],
        [`4' 3 1/2"`, "", "4", "12.00"],
      ],
      numbers: [true, true, true, true],
    });
  });
  it("shows millimeters in a metric roof", () => {
    expect(tableTexts(columns, table, "mm", ["Long point"]).rows).toEqual([["113 mm"], ["52 mm"]]);
  });
  it("does not pass over a column that is not there", () => {
    expect(() => tableTexts(columns, table, "in", ["Nowhere"])).toThrow("No column is called Nowhere");
  });
});
