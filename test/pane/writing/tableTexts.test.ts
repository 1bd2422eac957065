import { describe, expect, it } from "vitest";
import { areaReference, areaText, reference } from "../../../src/pane/state/reference.ts";
import { freeSheetName } from "../../../src/pane/writing/freeSheetName.ts";
import { groupedNotes } from "../../../src/pane/controls/groupedNotes.ts";
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

describe("groupedNotes", () => {
  it("names each note once with its pieces", () => {
    expect(groupedNotes(table)).toEqual([
      { note: "a", pieces: ["J1"] },
      { note: "b", pieces: ["J1", "J2"] },
    ]);
  });
  it("has none where no column holds notes", () => {
    expect(groupedNotes([["Piece"], ["J1"]])).toEqual([]);
  });
});

describe("reference", () => {
  it.each([
    ["Roof", "Roof", "$B$4"],
    ["Roof", "Jacks", "Roof!$B$4"],
    ["Cut list", "Jacks", "'Cut list'!$B$4"],
    ["It's", "Jacks", "'It''s'!$B$4"],
  ])("of %s from %s", (sheet, from, text) => {
    expect(reference(sheet, 3, 1, from)).toBe(text);
  });
  it("of an area", () => {
    expect(areaReference({ sheet: "A1 b", row: 1, column: 26, rows: 3, columns: 2 }, "x")).toBe("'A1 b'!$AA$2:$AB$4");
  });
  it("for people", () => {
    expect([
      areaText({ sheet: "Roof", row: 1, column: 0, rows: 3, columns: 2 }),
      areaText({ sheet: "Roof", row: 1, column: 0, rows: 1, columns: 1 }),
    ]).toEqual(["Roof!A2:B4", "Roof!A2"]);
  });
});

describe("freeSheetName", () => {
  it.each([
    ["Jacks", [], "Jacks"],
    ["Jacks", ["jacks"], "Jacks 2"],
    ["Jacks", ["Jacks", "Jacks 2", "Jacks 3"], "Jacks 4"],
  ] as const)("%s beside %j", (wish, taken, name) => {
    expect(freeSheetName(wish, taken)).toBe(name);
  });
});
