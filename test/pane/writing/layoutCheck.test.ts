import { footColumns, jackTable } from "../../../functions/jackTable.ts";
import { describe, expect, it } from "vitest";
import { checkStep } from "../../../src/hosts/checkStep.ts";
import { blockRows } from "../../../src/pane/state/blockCells.ts";
import { checkCuts } from "../../../src/pane/state/checkCuts.ts";
import { START_INPUTS } from "../../../src/pane/state/fields.ts";
import { layoutCheck } from "../../../src/pane/writing/layoutCheck.ts";
import { columnsOf } from "../../../src/pane/writing/roofTables.ts";
import { report } from "../../../src/pane/state/report.ts";
import { evaluateFunction, type Table } from "../../../src/pane/state/evaluateFunction.ts";

const rows = blockRows(START_INPUTS);
const on = { block: "Roof!$A$2:$B$18", cell: () => null };
const own = { sheet: "Check", newSheet: true, row: 0, column: 0, title: null };
const at = { sheet: "Bid", newSheet: false, row: 4, column: 2, title: "Here" };

describe("layoutCheck", () => {
  const now = evaluateFunction(jackTable, [rows]) as Table;
  const { cuts } = checkCuts(report(START_INPUTS).model!, { J1: "150", J3: "100 1/2" });
  it("keeps each tape beside the name of its jack, and looks the rest up in a live schedule", () => {
    const { cells, spill, widths } = layoutCheck(own, on, { cuts, now });
    expect(cells[0]!.slice(0, 7).map((cell) => cell?.content)).toEqual([
      "Piece",
      "Tape measured",
      "Computed",
      "Long point on site",
      "Off by",
      undefined,
      "=RAFTER.JACKTABLE(Roof!$A$2:$B$18)",
    ]);
    expect(cells.slice(1, 4).map((line) => line.slice(0, 2).map((cell) => cell!.content))).toEqual([
      ["J1", 150],
      ["J3", 100.5],
      ["", ""],
    ]);
    expect(cells[1]![4]!.content).toBe('=IF(OR(A2="",B2=""),"",D2-C2)');
    expect(cells[1]![2]!.content).toMatch(
      /^=IF\(OR\(A2="",B2=""\),"",INDEX\(\$L\$2:\$L\$\d+,MATCH\(A2,\$G\$2:\$G\$\d+,0\)\)\)$/,
    );
    expect(widths).toHaveLength(cells[0]!.length);
    expect(widths!.slice(6)).toEqual(columnsOf(jackTable).map(({ width }) => width));
    expect(spill).toMatchObject({ row: 0, column: 6, columns: now[0]!.length + footColumns.length });
  });
  it.each([own, at])("fits a place, %j", (place) => {
    expect(checkStep({ title: "", blocks: [layoutCheck(place, on, { cuts, now })] }, ["Bid"])).toBeNull();
    expect(
      checkStep({ title: "", blocks: [layoutCheck(place, on, { cuts: [], now: now.slice(0, 2) })] }, ["Bid"]),
    ).toBeNull();
  });
});
