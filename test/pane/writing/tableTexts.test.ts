import { describe, expect, it } from "vitest";
import { tableTexts } from "../../../src/pane/writing/tableTexts.ts";

const table = [
  ["Piece", "Long point", "Saw tilt", "Left", "Note"],
  ["J1", 112.625, 45, 4, "a; b"],
  ["J2", 51.5, "", 4, "b"],
];

describe("tableTexts", () => {
  it("shows lengths on the tape, angles in degrees, and only the columns asked for", () => {
    expect(tableTexts(table, "in", ["Long point", "Saw tilt", "Nowhere", "Left"])).toEqual({
      headings: ["Long point", "Saw tilt", "Left"],
      rows: [
        [`9' 4 5/8"`, "45.00°", "4"],
        [`4' 3 1/2"`, "", "4"],
      ],
      numbers: [true, true, true],
    });
  });
  it("shows millimetres in a metric roof", () => {
    expect(tableTexts(table, "mm", ["Long point"]).rows).toEqual([["113 mm"], ["52 mm"]]);
  });
});
