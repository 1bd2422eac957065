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
  it.each([own, at])("fits a place, %j", (place) => {
    expect(checkStep({ title: "", blocks: [layoutComparison(place, on, comparison, grid)] }, ["Bid"])).toBeNull();
  });
  it("reads a list with or without blanks", () => {
    expect([listed(" 4,6 , 8,"), listed("")]).toEqual([["4", "6", "8"], []]);
  });
});
