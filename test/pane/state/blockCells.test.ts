import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ROWS } from "../../../functions/arguments/roofBlock.ts";
import { blockLayout, blockRows, inputsOf, rowOf, valueCell } from "../../../src/pane/state/blockCells.ts";
import { EMPTY_INPUTS, START_INPUTS } from "../../../src/pane/state/fields.ts";
import { cellsOf } from "../cellsOf.ts";

describe("the cells of a roof block", () => {
  it.each([
    ["Span", "24'", { content: "24'", style: "input" }],
    ["Span", " 288 ", { content: 288, style: "input", format: 'General "in"' }],
    ["Pitch", "6", { content: 6, style: "input", format: 'General "in 12"' }],
    ["Pitch", "6/12", { content: "6/12", style: "input" }],
    ["Correction", "-0.125", { content: -0.125, style: "input", format: 'General "in"' }],
    ["Waste", "10", { content: 10, style: "input", format: 'General "percent"' }],
    ["Rafter", "2x8", { content: "2x8", style: "input" }],
    ["Boards", "96", { content: 96, style: "input" }],
  ] as const)("%s %s", (row, text, cell) => {
    expect(valueCell(row, text, "in")).toEqual(cell);
  });

  it("say the unit, and leave out what is empty", () => {
    const layout = blockLayout(
      { ...EMPTY_INPUTS, Span: "7320 mm", Length: "11 m", Pitch: "6", "End pitch": "  " },
      "mm",
    );
    expect(layout.map(([label, value]) => [label.content, value.content])).toEqual([
      ["Span", "7320 mm"],
      ["Length", "11 m"],
      ["Pitch", 6],
      ["Unit", "mm"],
    ]);
  });

  it("read back as they were typed", () => {
    fc.assert(
      fc.property(fc.subarray([...ROWS]), (rows) => {
        const inputs = { ...EMPTY_INPUTS, ...Object.fromEntries(rows.map((row) => [row, START_INPUTS[row]])) };
        const written = cellsOf(blockLayout(inputs, "in").map((line) => line.map(({ content }) => content)));
        expect(inputsOf(written)).toEqual({ ...inputs, Unit: "in" });
      }),
    );
  });

  it("are found by label whatever its case", () => {
    expect([rowOf("end  PITCH:"), rowOf("Bid"), rowOf(6)]).toEqual(["End pitch", null, null]);
  });
  it("are the filled rows in the block's order", () => {
    expect(blockRows({ ...EMPTY_INPUTS, Pitch: "6", Span: "24'" })).toEqual([
      ["Span", "24'"],
      ["Pitch", "6"],
    ]);
  });
});
