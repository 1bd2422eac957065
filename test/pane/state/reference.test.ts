import { describe, expect, it } from "vitest";
import { areaReference, areaText, reference } from "../../../src/pane/state/reference.ts";

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
