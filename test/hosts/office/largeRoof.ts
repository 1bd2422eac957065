import { call } from "../../../src/registry/call.ts";
import { Refusal } from "../../../src/registry/refusal.ts";
import { functions } from "../../../functions/index.ts";
import type { WriteStep } from "../../../src/hosts/host.ts";
import { START_INPUTS } from "../../../src/pane/state/fields.ts";
import { blockRows } from "../../../src/pane/state/blockCells.ts";
import { layoutFill } from "../../../src/pane/writing/layoutFill.ts";
import { roofTables } from "../../../src/pane/writing/roofTables.ts";
import type { SheetTable } from "../../../src/pane/writing/tables.ts";
import type { FakeBook } from "../fakeBook.ts";

const INPUTS = {
  ...START_INPUTS,
  Span: "80'",
  Length: "160'",
  Spacing: "12",
  Rafter: "2x12",
  Hip: "2x12",
  Ridge: "2x12",
  Boards: "8' to 66' by 2'",
};
const SIX: ReadonlySet<SheetTable["id"]> = new Set(["schedule", "members", "marks", "takeoff", "cautions", "cutting"]);

/** What the pane writes for a roof of 80' x 160' at 12 in: the block and six tables, each on a sheet of its own. */
export async function largeRoof(): Promise<WriteStep> {
  const tables = await roofTables(SIX, INPUTS);
  if (typeof tables === "string") throw new Error(tables);
  return layoutFill({ inputs: INPUTS, block: null, name: null, unit: "in", tables, at: null, sheets: ["Sheet1"] }).step;
}

/** Spills the tables of the step, as Excel does once the functions have answered. Gives the filled cells. */
export async function calculated(fake: FakeBook, step: WriteStep): Promise<number> {
  let cells = 0;
  for (const { sheet, cells: lines } of step.blocks)
    for (const [i, line] of lines.entries())
      for (const [j, cell] of line.entries()) {
        const name = /^=RAFTER\.(\w+)\(/.exec(String(cell?.content))?.[1];
        const definition = name === "TAPE" ? undefined : functions.find((one) => one.name === name);
        if (!definition) continue;
        const boards = definition.parameters.length > 1 && ["STICKPLAN", "LUMBERORDER"].includes(definition.name);
        const answer = await call(definition, [blockRows(INPUTS), ...(boards ? [INPUTS.Boards] : [])]);
        if (answer instanceof Refusal || !Array.isArray(answer)) throw new Error(`${name} gives no table`);
        const rows = answer as (string | number)[][];
        fake.spill(sheet, i, j, rows);
        cells += rows.length * rows[0]!.length;
      }
  return cells;
}
