import { compare } from "../../../functions/compare.ts";
import { describe, expect, it } from "vitest";
import { checkStep } from "../../../src/hosts/checkStep.ts";
import { blockRows } from "../../../src/pane/state/blockCells.ts";
import { START_INPUTS } from "../../../src/pane/state/fields.ts";
import { evaluateFunction, type Table } from "../../../src/pane/state/evaluateFunction.ts";
import { layoutComparison, listed } from "../../../src/pane/writing/layoutComparison.ts";

const rows = blockRows(START_INPUTS);
const on = { block: "Roof!$A$2:$B$18", cell: () => null };
const own = { sheet: "Compare", newSheet: true, row: 0, column: 0, title: null };
const at = { sheet: "Bid", newSheet: false, row: 4, column: 2, title: "Here" };

describe("layoutComparison", () => {
  const comparison = { pitches: ["6", "8/12"], spacings: ["16", "24"], what: "step" };
  const grid = evaluateFunction(compare, [rows, [["6"], ["8/12"]], [["16", "24"]], "step"]) as Table;
  it("lets what is compared be changed in the sheet", () => {
    const { cells, spill } = layoutComparison(at, on, comparison, grid);
    expect(cells.map((line) => line.map((cell) => cell?.content ?? null))).toEqual([
      ["Here", null, null],
      ["Pitches", 6, "8/12"],
      ["Spacings", 16, 24],
      ["What", "step", null],
      [null, null, null],
      ["=RAFTER.COMPARE(Roof!$A$2:$B$18,D6:E6,D7:E7,D8)", "", ""],
    ]);
    expect(spill).toMatchObject({ row: 5, rows: 3, columns: 3 });
  });
  it("shows what can be changed as such, and every figure of the grid alike", () => {
    const { cells, spill, widths, frozenRows } = layoutComparison(own, on, comparison, grid);
    expect(cells.slice(0, 3).map((line) => line.map((cell) => cell?.style ?? null))).toEqual([
      ["label", "input", "input"],
      ["label", "input", "input"],
      ["label", "input", null],
    ]);
    expect(cells[4]![0]).toEqual({
      content: "=RAFTER.COMPARE(Roof!$A$2:$B$18,B1:C1,B2:C2,B3)",
      style: "heading",
      format: "General",
    });
    expect(spill).toEqual({ row: 4, column: 0, rows: 3, columns: 3, formats: [null, "0.000", "0.000"] });
    expect([widths, frozenRows]).toEqual([[150, 92, 92], undefined]);
  });
  it.each([
    [["6"], ["12", "16", "24"], "B1:B1", "B2:D2"],
    [["6", "8", "9"], ["24"], "B1:D1", "B2:B2"],
  ])("has a column for each of the longer list: %j, %j", (pitches, spacings, first, second) => {
    const table = [["", ...spacings], ...pitches.map((pitch) => [pitch, ...spacings.map(() => 1)])];
    const { cells, widths } = layoutComparison(own, on, { pitches, spacings, what: "step" }, table);
    expect(cells[4]![0]!.content).toBe(`=RAFTER.COMPARE(Roof!$A$2:$B$18,${first},${second},B3)`);
    expect([cells[0]!.length, widths]).toEqual([4, [150, 92, 92, 92]]);
  });
  it.each([own, at])("fits a place, %j", (place) => {
    expect(checkStep({ title: "", blocks: [layoutComparison(place, on, comparison, grid)] }, ["Bid"])).toBeNull();
  });
  it("reads a list with or without blanks", () => {
    expect([listed(" 4,6 , 8,"), listed("")]).toEqual([["4", "6", "8"], []]);
  });
});
