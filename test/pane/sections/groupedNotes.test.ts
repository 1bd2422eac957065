import { describe, expect, it } from "vitest";
import { groupedNotes } from "../../../src/pane/sections/groupedNotes.ts";

const table = [
  ["Piece", "Long point", "Saw tilt", "Left", "Note"],
  ["J1", 112.625, 45, 4, "a; b"],
  ["J2", 51.5, "", 4, "b"],
];

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
