import { describe, expect, it } from "vitest";
import { footColumns, jackTable } from "../../../functions/jackTable.ts";
import { members } from "../../../functions/members.ts";
import { START_INPUTS, type Inputs } from "../../../src/pane/state/fields.ts";
import type { HangsOn } from "../../../src/pane/writing/layoutFill.ts";
import { columnsOf, roofTables } from "../../../src/pane/writing/roofTables.ts";
import type { SheetTable } from "../../../src/pane/writing/tables.ts";
import { texts } from "../../../src/pane/words/texts.ts";

const roof: Inputs = { ...START_INPUTS, Span: "20'", Length: "30'", Boards: "" };
const place = { sheet: "Own", newSheet: true, row: 0, column: 0, title: null };
const USUAL = `"8' 0"", 10' 0"", 12' 0"", 14' 0"", 16' 0"", 18' 0"", 20' 0"""`;

async function tablesOf(ids: readonly SheetTable["id"][], inputs: Inputs, kerf?: string) {
  const made = await roofTables(new Set(ids), inputs, kerf);
  if (typeof made === "string") throw new Error(made);
  return made;
}
/** The formula of a table on a block whose boards stand in a cell, or that has no row for them. */
async function formulaOf(inputs: Inputs, kerf: string, boards: string | null): Promise<unknown> {
  const [table] = await tablesOf(["order"], inputs, kerf);
  const on: HangsOn = { block: "RoofBlock", cell: (row) => (row === "Boards" ? boards : "Roof!$B$9") };
  return table!.layout(place, on).cells[0]![0]!.content;
}

it("makes the tables that are chosen, each with its title and sheet, in the order in which they are written", async () => {
  const made = await tablesOf(["takeoff", "schedule", "members"], roof);
  expect(made.map(({ title, sheet }) => [title, sheet])).toEqual(
    (["schedule", "members", "takeoff"] as const).map((id) => [texts.tables[id], texts.sheets[id]]),
  );
  expect(await tablesOf([], roof)).toEqual([]);
});

it("gives a table that needs no boards the block alone, whatever the saw cut", async () => {
  const [table] = await tablesOf(["takeoff"], roof, "1/4");
  const { cells } = table!.layout(place, { block: "RoofBlock", cell: () => null });
  expect(cells[0]![0]!.content).toBe("=RAFTER.TAKEOFF(RoofBlock)");
});

describe("the lumber order", () => {
  it.each([
    ["takes its lengths from the block's cell", { ...roof, Boards: "12', 16'" }, "", "$B$7", "$B$7"],
    [
      "takes the usual ones while that cell is empty",
      { ...roof, Boards: " " },
      "",
      "$B$7",
      `IF($B$7="",${USUAL},$B$7)`,
    ],
    ["takes the usual ones where the block has no such row", roof, " ", null, USUAL],
    ["also takes the saw cut that is typed", roof, " 1/4 ", null, `${USUAL},"1/4"`],
  ])("%s", async (_, inputs, kerf, cell, given) =>
    expect(await formulaOf(inputs, kerf, cell)).toBe(`=RAFTER.LUMBERORDER(RoofBlock,${given})`),
  );

  it("is spilled as it comes out with those boards and that saw cut", async () => {
    const rows = async (inputs: Inputs, kerf = "") => {
      const [table] = await tablesOf(["cutting"], inputs, kerf);
      return table!.layout(place, { block: "RoofBlock", cell: () => null }).spill!.rows;
    };
    const usual = await rows(roof);
    expect(await rows({ ...roof, Boards: "30'" })).not.toBe(usual);
    expect(await rows(roof, "3/8")).not.toBe(usual);
  });

  it("says which table cannot be made, and why", async () => {
    expect(await roofTables(new Set(["schedule", "order"]), roof, "12")).toMatch(
      /^Lumber order cannot be made of this roof: kerf: "12" was read/,
    );
  });
});

it("leaves room for the columns that come to the jack schedule with wings, and to no other table", () => {
  expect(columnsOf(jackTable)).toEqual([...jackTable.columns, ...footColumns]);
  expect(footColumns.length).toBeGreaterThan(0);
  expect(columnsOf(members)).toBe(members.columns);
});
