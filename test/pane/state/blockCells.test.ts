import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ROWS } from "../../../functions/arguments/roofBlock.ts";
import { blockLayout, blockRows, inputsOf, rowOf, valueCell } from "../../../src/pane/state/blockCells.ts";
import { EMPTY_INPUTS, emptyWing, START_INPUTS } from "../../../src/pane/state/fields.ts";
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
    expect(layout.map((line) => line.map((cell) => cell!.content))).toEqual([
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
        const written = cellsOf(blockLayout(inputs, "in").map((line) => line.map((cell) => cell?.content ?? "")));
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

  describe("with wings", () => {
    const a = { ...emptyWing("A"), Wall: "front", "From left corner": "8'", Span: "144" };
    const c = { ...emptyWing("C"), Wall: "back", Ends: "hip", Overhang: "none" };
    const inputs = { ...EMPTY_INPUTS, Span: "24'", Pitch: "6", wings: [a, c] };

    it("have a heading row and a column for each", () => {
      expect(blockRows(inputs)).toEqual([
        ["", "Main roof", "Wing A", "Wing C"],
        ["Wall", "", "front", "back"],
        ["From left corner", "", "8'", ""],
        ["Span", "24'", "144", ""],
        ["Pitch", "6", "", ""],
        ["Ends", "", "", "hip"],
        ["Overhang", "", "", "none"],
      ]);
    });
    it("are shaded where a value may stand, and read back as they were typed", () => {
      const layout = blockLayout(inputs, "in");
      expect(layout[3]!.map((cell) => cell?.style ?? null)).toEqual(["label", "input", "input", "input"]);
      expect(layout[1]!.map((cell) => cell?.style ?? null)).toEqual(["label", null, "input", "input"]);
      expect(inputsOf(cellsOf(layout.map((line) => line.map((cell) => cell?.content ?? ""))))).toEqual({
        ...inputs,
        Unit: "in",
      });
    });
    it("have their letters by place where no heading says it; a 0 is an empty cell", () => {
      const cells = cellsOf([
        ["Wall", "", "", "front"],
        ["Span", 288, "", 144],
        ["Overhang", 0, "", 0],
      ]);
      expect(inputsOf(cells)).toEqual({
        ...EMPTY_INPUTS,
        Span: "288",
        Overhang: "0",
        wings: [{ ...emptyWing("B"), Wall: "front", Span: "144" }],
      });
    });
  });
});
