import { describe, expect, it } from "vitest";
import { noteText } from "../../../functions/words/notes.ts";
import { groupedNotes } from "../../../src/pane/sections/groupedNotes.ts";
import { START_INPUTS } from "../../../src/pane/state/fields.ts";
import { report } from "../../../src/pane/state/report.ts";

describe("groupedNotes", () => {
  const { pieces } = report({ ...START_INPUTS, "End pitch": "12" }).model!;
  const groups = groupedNotes(pieces, "in");

  it("names each note once, with every piece that has it and no other", () => {
    expect(new Set(groups.map(({ note }) => note)).size).toBe(groups.length);
    expect(groups.some(({ marks }) => marks.length > 1)).toBe(true);
    for (const { note, marks } of groups)
      expect(marks).toEqual(
        pieces.filter(({ notes }) => notes.some((one) => noteText(one, "in") === note)).map(({ mark }) => mark),
      );
  });
  it("leaves none out", () => {
    const said = new Set(groups.map(({ note }) => note));
    for (const { notes } of pieces) for (const note of notes) expect(said).toContain(noteText(note, "in"));
  });
  it("has none where no piece has any", () => {
    expect(groupedNotes([{ mark: "J1", notes: [] }], "in")).toEqual([]);
  });
});
