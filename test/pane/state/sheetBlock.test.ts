import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ROWS } from "../../../functions/arguments/roofBlock.ts";
import { EMPTY_INPUTS, START_INPUTS, type Inputs } from "../../../src/pane/state/fields.ts";
import { layoutUpdate } from "../../../src/pane/writing/layoutUpdate.ts";
import { differing, followed } from "../../../src/pane/state/sheetBlock.ts";
import { cellsOf } from "../cellsOf.ts";

const anyInputs = fc.record(
  Object.fromEntries(ROWS.map((row) => [row, fc.constantFrom("", "1", "2")])) as Record<
    keyof Inputs,
    fc.Arbitrary<string>
  >,
);

describe("followed", () => {
  it("takes over what changed in the sheet and keeps what was typed in the pane since", () => {
    const seen = { ...EMPTY_INPUTS, Span: "24'", Pitch: "6" };
    expect(followed({ ...seen, Pitch: "8" }, seen, { ...seen, Span: "26'" })).toEqual({
      ...seen,
      Span: "26'",
      Pitch: "8",
    });
  });
  it("is the pane's own where nothing changed, the very same", () => {
    fc.assert(
      fc.property(anyInputs, anyInputs, (pane, seen) => {
        expect(followed(pane, seen, { ...seen })).toBe(pane);
      }),
    );
  });
  it("is the sheet's where the pane said the same as the sheet before", () => {
    fc.assert(
      fc.property(anyInputs, anyInputs, (seen, now) => {
        expect(followed(seen, seen, now)).toEqual(now);
      }),
    );
  });
});

describe("planUpdate", () => {
  const area = { sheet: "Bid", row: 4, column: 0, rows: 4, columns: 2 };
  const cells = cellsOf([
    ["Span", "24'"],
    ["Length", "36'"],
    ["Pitch", 6],
    ["Spacing", "=B1*2"],
  ]);
  const inputs: Inputs = { ...EMPTY_INPUTS, Span: "26'", Length: "36'", Pitch: "6", Spacing: "16", Hip: "2x8" };

  it("writes only the cells that differ, and says which, what stands there, and what the block lacks", () => {
    const { blocks, changes, lacking } = layoutUpdate(area, cells, inputs, "in");
    expect(blocks.map(({ row, column, cells: [[cell]] }: any) => [row, column, cell.content])).toEqual([
      [4, 1, "26'"],
      [7, 1, 16],
    ]);
    expect(changes).toEqual([
      { at: "Bid!B5", from: "24'", to: "26'", formula: false },
      { at: "Bid!B8", from: "=B1*2", to: "16", formula: true },
    ]);
    expect(lacking).toEqual(["Hip"]);
  });
  it("writes nothing where block and pane agree", () => {
    expect(
      layoutUpdate(area, cells, { ...EMPTY_INPUTS, Span: "24'", Length: "36'", Pitch: "6", Spacing: "0" }, "in"),
    ).toEqual({ blocks: [], changes: [], lacking: [] });
  });
  it("compares texts without the blanks around them", () => {
    expect(differing({ ...START_INPUTS, Span: " 24' " }, START_INPUTS)).toEqual([]);
  });
});
