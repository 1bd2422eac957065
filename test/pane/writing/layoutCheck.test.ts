import { footColumns, jackTable } from "../../../functions/jackTable.ts";
import { describe, expect, it } from "vitest";
import { checkStep } from "../../../src/hosts/checkStep.ts";
import { blockRows } from "../../../src/pane/state/blockCells.ts";
import { checkCuts } from "../../../src/pane/state/checkCuts.ts";
import { START_INPUTS } from "../../../src/pane/state/fields.ts";
import { layoutCheck } from "../../../src/pane/writing/layoutCheck.ts";
import { columnAt } from "../../../src/registry/columns.ts";
import { roomToGrow } from "../../../src/pane/writing/layoutTable.ts";
import { texts } from "../../../src/pane/words/texts.ts";
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
  it("works the long point on site out of the tape and the height above plate of the jack's own line", () => {
    const { cells } = layoutCheck(at, on, { cuts, now });
    const last = 6 + roomToGrow(now);
    const found = (column: string) => `INDEX(${column},MATCH(C7,${area("I")},0))`;
    const area = (letter: string) => `$${letter}$7:$${letter}$${last}`;
    // The schedule begins at column I: Piece. Six columns on stand Long point, Plumb cut two, Tape ...
    const at6 = (name: string) => found(area("IJKLMNOPQRSTUVWX"[columnAt(columnsOf(jackTable), name)]!));
    const [long, plumb, tape] = [at6("Long point"), at6("Plumb cut"), at6("Tape")];
    const heel = `SQRT(${tape}^2-(${long}*COS(RADIANS(${plumb})))^2)-${long}*SIN(RADIANS(${plumb}))`;
    const where = (formula: string) => ({ content: `=IF(OR(C7="",D7=""),"",${formula})`, format: "0.000" });
    expect(cells[2]!.slice(0, 6)).toEqual([
      { content: "J1", style: "input" },
      { content: 150, style: "input", format: "0.000" },
      where(long),
      where(`RAFTER.JACKFROMTAPE(${plumb}&"°",D7,${heel})`),
      where("F7-E7"),
      null,
    ]);
  });
  it("has six lines for jacks measured later, and under them the median of all that are", () => {
    const { cells, spill, widths, frozenRows } = layoutCheck(own, on, { cuts, now });
    const lines = cells.slice(1).map((line) => line.slice(0, 6));
    const isLine = (line: (typeof lines)[number]) => line[0]?.style === "input";
    expect(lines.map(isLine)).toEqual(lines.map((_, i) => i < 8));
    expect(lines[8]).toEqual([null, null, null, null, null, null]);
    expect(lines[9]).toEqual([
      { content: texts.medianInSheet, style: "label" },
      null,
      null,
      null,
      { content: '=IF(COUNT($E$2:$E$9)=0,"",MEDIAN($E$2:$E$9))', format: "0.000" },
      null,
    ]);
    expect(cells[0]!.slice(0, 5).map((cell) => cell!.style)).toEqual(Array.from({ length: 5 }, () => "heading"));
    expect(cells).toHaveLength(11);
    const formats = columnsOf(jackTable).map(({ format }) => format);
    expect(spill).toEqual({ row: 0, column: 6, rows: 1 + roomToGrow(now), columns: formats.length, formats });
    expect([widths!.slice(0, 6), frozenRows]).toEqual([[72, 138, 88, 188, 72, 28], 1]);
  });
  it.each([own, at])("fits a place, %j", (place) => {
    expect(checkStep({ title: "", blocks: [layoutCheck(place, on, { cuts, now })] }, ["Bid"])).toBeNull();
    expect(
      checkStep({ title: "", blocks: [layoutCheck(place, on, { cuts: [], now: now.slice(0, 2) })] }, ["Bid"]),
    ).toBeNull();
  });
});
