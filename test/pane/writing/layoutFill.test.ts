import { footColumns } from "../../../functions/jackTable.ts";
import { jackTable } from "../../../functions/jackTable.ts";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { Refusal } from "../../../src/registry/refusal.ts";
import { checkStep } from "../../../src/hosts/checkStep.ts";
import { blockRows } from "../../../src/pane/state/blockCells.ts";
import { START_INPUTS } from "../../../src/pane/state/fields.ts";
import { roofTables } from "../../../src/pane/writing/roofTables.ts";
import { layoutFill, type FillRequest, type TableToWrite } from "../../../src/pane/writing/layoutFill.ts";
import { roomToGrow, tapeFormula } from "../../../src/pane/writing/layoutTable.ts";
import { texts } from "../../../src/pane/words/texts.ts";
import { TABLES } from "../../../src/pane/writing/tables.ts";
import { evaluateFunction, type Table } from "../../../src/pane/state/evaluateFunction.ts";

const rows = blockRows(START_INPUTS);
const now = TABLES.slice(0, 2).map(({ definition }) => evaluateFunction(definition, [rows]) as Table);
const chosen = (await roofTables(new Set(["schedule", "members"]), START_INPUTS)) as TableToWrite[];
const request: FillRequest = {
  inputs: START_INPUTS,
  block: null,
  name: null,
  unit: "in",
  tables: chosen,
  at: null,
  sheets: ["Bid", "Jacks"],
};

describe("layoutFill", () => {
  it("puts the block and every table on a new sheet of a name that is free, and each table hangs on the block", () => {
    const { step, block } = layoutFill(request);
    expect(step.blocks.map(({ sheet, newSheet, frozenRows }) => [sheet, newSheet, frozenRows])).toEqual([
      ["Roof", true, undefined],
      ["Jacks 2", true, 1],
      ["Members", true, 1],
    ]);
    expect(block).toEqual({ sheet: "Roof", row: 1, column: 0, rows: rows.length, columns: 2 });
    const end = 1 + rows.length;
    expect(step.blocks[1]!.cells[0]![0]!.content).toBe(`=RAFTER.JACKTABLE(Roof!$A$2:$B$${end})`);
    expect(step.blocks[2]!.cells[0]![0]!.content).toBe(`=RAFTER.MEMBERS(Roof!$A$2:$B$${end})`);
    // Labels and values of the block: a width for each column, and room for a label of some ten letters.
    expect(step.blocks[0]!.widths).toHaveLength(2);
    for (const width of step.blocks[0]!.widths!) expect(width).toBeGreaterThanOrEqual(100);
    expect(checkStep(step, request.sheets)).toBeNull();
  });

  it("has every table read the block by its name where it has one", () => {
    const { step } = layoutFill({ ...request, name: "RoofBlock" });
    expect(step.blocks.slice(1).map(({ cells }) => cells[0]![0]!.content)).toEqual([
      "=RAFTER.JACKTABLE(RoofBlock)",
      "=RAFTER.MEMBERS(RoofBlock)",
    ]);
  });

  it("puts them side by side from a cell, so that each can grow downwards, on the block in the same sheet", () => {
    const { step } = layoutFill({ ...request, at: { sheet: "Bid", row: 4, column: 2 } });
    const spans = step.blocks.map(({ column, cells }) => [column, column + cells[0]!.length] as const);
    spans.slice(1).forEach(([from], i) => expect(from).toBeGreaterThan(spans[i]![1]));
    expect(step.blocks.every(({ sheet, row, newSheet }) => sheet === "Bid" && row === 4 && !newSheet)).toBe(true);
    expect(step.blocks[1]!.cells[1]![0]!.content).toMatch(/^=RAFTER\.JACKTABLE\(\$C\$6:\$D\$\d+\)$/);
    expect(checkStep(step, request.sheets)).toBeNull();
  });

  it("hangs tables on a block that is there, without writing it again", () => {
    const { step } = layoutFill({
      ...request,
      inputs: null,
      block: { area: { sheet: "Bid 1", row: 4, column: 0, rows: 11, columns: 2 }, lines: new Map() },
    });
    expect(step.blocks.map(({ sheet }) => sheet)).toEqual(["Jacks 2", "Members"]);
    expect(step.blocks[0]!.cells[0]![0]!.content).toBe("=RAFTER.JACKTABLE('Bid 1'!$A$5:$B$15)");
  });

  it("shows lengths on the tape in every row that the table may grow into, and nothing where it has no row", () => {
    const schedule = layoutFill({ ...request, tables: chosen.slice(0, 1) }).step.blocks[1]!;
    // A roof without wings leaves room for the columns that come with them.
    const width = now[0]![0]!.length + footColumns.length;
    expect(schedule.cells.length).toBe(1 + roomToGrow(now[0]!));
    expect(schedule.spill).toMatchObject({ row: 0, column: 0, rows: schedule.cells.length, columns: width });
    const unitCell = `Roof!$B$${1 + rows.length}`;
    expect(schedule.cells[1]!.slice(width).map((cell) => cell!.content)).toEqual(
      ["F2", "H2", "I2"].map((cell) => tapeFormula(cell, unitCell)),
    );
    expect(tapeFormula("F2", unitCell)).toBe(`=IF(F2="","",IF(${unitCell}="mm",ROUND(F2,0)&" mm",RAFTER.TAPE(F2)))`);
    expect(schedule.spill!.formats!.slice(2, 10)).toEqual([...Array.from({ length: 7 }, () => "0.000"), "0.00"]);
  });

  it("gives the lumber order the block's own lengths of board, or the usual ones where the block has none", async () => {
    const [order] = (await roofTables(new Set(["order"]), START_INPUTS)) as TableToWrite[];
    const formula = (layout: ReturnType<typeof layoutFill>) => layout.step.blocks.at(-1)!.cells[0]![0]!.content;
    const line = rows.findIndex(([row]) => row === "Boards") + 2;
    expect(formula(layoutFill({ ...request, tables: [order!] }))).toBe(
      `=RAFTER.LUMBERORDER(Roof!$A$2:$B$${1 + rows.length},Roof!$B$${line})`,
    );
    expect(
      formula(
        layoutFill({
          ...request,
          tables: [order!],
          inputs: null,
          block: { area: { sheet: "Bid", row: 4, column: 0, rows: 3, columns: 2 }, lines: new Map() },
        }),
      ),
    ).toBe(
      `=RAFTER.LUMBERORDER(Bid!$A$5:$B$7,"8' 0"", 10' 0"", 12' 0"", 14' 0"", 16' 0"", 18' 0"", 20' 0"", 22' 0"", 24' 0""")`,
    );
  });

  it("gives the lumber order the kerf that is typed, and the usual lengths for as long as the block's row of boards is empty", async () => {
    const [order] = (await roofTables(
      new Set(["order"]),
      { ...START_INPUTS, Span: "20'", Boards: "" },
      ` 3/32" `,
    )) as TableToWrite[];
    const { step } = layoutFill({
      ...request,
      tables: [order!],
      inputs: null,
      block: { area: { sheet: "Bid", row: 4, column: 0, rows: 4, columns: 2 }, lines: new Map([["Boards", 3]]) },
    });
    expect(step.blocks[0]!.cells[0]![0]!.content).toMatch(
      /^=RAFTER\.LUMBERORDER\(Bid!\$A\$5:\$B\$8,IF\(Bid!\$B\$8="","8' 0"", 10' 0"",.*",Bid!\$B\$8\),"3\/32"""\)$/,
    );
    expect(await roofTables(new Set(["order"]), START_INPUTS, "thin")).toMatch(/kerf: "thin" was read/);
  });

  it("fits any place of a sheet, and no two of its blocks touch the same cell", () => {
    fc.assert(
      fc.property(fc.nat(1000), fc.nat(1000), (row, column) => {
        const { step } = layoutFill({ ...request, at: { sheet: "Bid", row, column } });
        expect(checkStep(step, request.sheets)).toBeNull();
        const taken = step.blocks.flatMap(({ column: from, cells }) => cells[0]!.map((_, j) => from + j));
        expect(new Set(taken).size).toBe(taken.length);
      }),
    );
  });

  it("is named after what it writes, of which the block is the first", () => {
    const title = (more: Partial<FillRequest>) => layoutFill({ ...request, ...more }).step.title;
    const area = { sheet: "Bid", row: 4, column: 0, rows: 11, columns: 2 };
    expect(title({})).toBe(texts.together([texts.roofBlock, "Jack schedule", "All members"]));
    expect(title({ tables: [] })).toBe(texts.roofBlock);
    expect(title({ inputs: null, block: { area, lines: new Map() } })).toBe("Jack schedule, All members");
  });

  it("leaves a column free between what stands side by side, whatever stands first", () => {
    const narrow = (title: string, columns: number): TableToWrite => ({
      title,
      sheet: title,
      layout: (place) => ({ ...place, cells: [Array.from({ length: columns }, () => null)] }),
    });
    const at = { sheet: "Bid", row: 4, column: 2 };
    const tables = [narrow("One", 3), narrow("Two", 1), narrow("Three", 2)];
    const columns = (more: Partial<FillRequest>) =>
      layoutFill({ ...request, at, tables, ...more }).step.blocks.map(({ column }) => column);
    expect(columns({})).toEqual([2, 5, 9, 11]);
    const area = { sheet: "Bid", row: 4, column: 20, rows: 11, columns: 2 };
    expect(columns({ inputs: null, block: { area, lines: new Map() } })).toEqual([2, 6, 8]);
  });

  it("gives each table a sheet of its own, were they called alike", () => {
    const twice = [chosen[1]!, chosen[1]!, chosen[1]!];
    const { step } = layoutFill({ ...request, sheets: ["roof", "Members 2"], tables: twice });
    expect(step.blocks.map(({ sheet }) => sheet)).toEqual(["Roof 2", "Members", "Members 3", "Members 4"]);
  });

  it("tells a table where each row of the block stands, and that there is none", () => {
    const seen: (string | null)[][] = [];
    const table: TableToWrite = {
      title: "One",
      sheet: "One",
      layout: (place, { cell }) => (
        seen.push([cell("Span"), cell("Unit"), cell("Fascia")]),
        { ...place, cells: [[null]] }
      ),
    };
    const { block } = layoutFill({ ...request, tables: [table] });
    layoutFill({ ...request, tables: [table], at: { sheet: "Bid", row: 4, column: 2 } });
    const area = { sheet: "Bid", row: 9, column: 5, rows: 3, columns: 2 };
    layoutFill({ ...request, tables: [table], inputs: null, block: { area, lines: new Map([["Span", 2]]) } });
    expect(seen).toEqual([
      ["Roof!$B$2", `Roof!$B$${1 + block.rows}`, null],
      ["$D$6", `$D$${5 + block.rows}`, null],
      ["Bid!$G$12", null, null],
    ]);
  });

  it("writes the block under its title, and the caution two lines below it", () => {
    const { cells, ...where } = layoutFill({ ...request, tables: [] }).step.blocks[0]!;
    expect(where).toEqual({ sheet: "Roof", newSheet: true, row: 0, column: 0, widths: [112, 120] });
    expect(cells[0]).toEqual([{ content: texts.roofBlock, style: "title" }, null]);
    expect(cells.slice(-2)).toEqual([
      [null, null],
      [{ content: texts.cautionInSheet, style: "note" }, null],
    ]);
    expect(cells).toHaveLength(3 + rows.length);
  });

  it("is refused by the table's function where the roof has none", () => {
    expect(evaluateFunction(jackTable, [[["Span", "24'"]]])).toBeInstanceOf(Refusal);
  });
});
