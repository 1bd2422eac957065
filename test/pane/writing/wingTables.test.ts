import { describe, expect, it } from "vitest";
import type { Area, WriteStep } from "../../../src/hosts/host.ts";
import { emptyWing, START_INPUTS, type Inputs } from "../../../src/pane/state/fields.ts";
import { paneState } from "../../../src/pane/state/paneState.ts";
import { checkCuts, differences } from "../../../src/pane/state/checkCuts.ts";
import { report } from "../../../src/pane/state/report.ts";
import { fill } from "../../../src/pane/writing/fill.ts";
import { layoutFill } from "../../../src/pane/writing/layoutFill.ts";
import { roofTables } from "../../../src/pane/writing/roofTables.ts";
import { TABLES } from "../../../src/pane/writing/tables.ts";
import { sheetHost } from "../sheetHost.ts";

const wing = {
  ...emptyWing("A"),
  Wall: "front",
  "From left corner": "8'",
  "Out from wall": "10'",
  Span: "12'",
  Ends: "hip",
};
const inputs: Inputs = { ...START_INPUTS, Length: "40'", wings: [wing] };

describe("the tables of a roof with a wing", () => {
  it("are all made, on the whole block", async () => {
    const ids = TABLES.filter(({ boardsToo }) => !boardsToo).map(({ id }) => id);
    const made = await roofTables(new Set(ids), inputs);
    if (typeof made === "string") throw new Error(made);
    const { step } = layoutFill({ inputs, block: null, name: null, unit: "in", tables: made, at: null, sheets: [] });
    const [block, ...tables] = step.blocks;
    expect(block!.cells[1]!.map((cell) => cell?.content ?? null)).toEqual([null, "Main roof", "Wing A"]);
    expect(tables).toHaveLength(ids.length);
    for (const { cells } of tables) expect(cells[0]![0]!.content).toMatch(/\(Roof!\$A\$2:\$C\$\d+/);
    // Offered as read on a tape beside the schedule: clear of the three columns that a wing brings.
    const schedule = tables[0]!;
    expect(schedule.spill!.columns).toBe(19);
    expect(schedule.cells[0]!.findIndex((cell) => String(cell?.content).includes("on tape"))).toBe(19);
  });

  it("stand a column clear of the block at a cell", async () => {
    const made = await roofTables(new Set(["members"] as const), inputs);
    if (typeof made === "string") throw new Error(made);
    const at = { sheet: "Bid", row: 2, column: 1 };
    const { step, block } = layoutFill({
      inputs,
      block: null,
      name: null,
      unit: "in",
      tables: made,
      at,
      sheets: ["Bid"],
    });
    expect(block).toMatchObject({ row: 3, column: 1, columns: 3 });
    expect(step.blocks.map(({ column }) => column)).toEqual([1, 5]);
  });

  it("hang on a block that holds the long valley which the pane chose", async () => {
    const steps: WriteStep[] = [];
    const { host } = sheetHost([], {
      sheets: async () => ["Bid", "Roof"],
      read: async ({ rows, columns }: Area) =>
        Array.from({ length: rows }, () =>
          Array.from({ length: columns }, () => ({ formula: null, value: "", format: "General" })),
        ),
      write: async (step) => (
        steps.push(step),
        { title: step.title, areas: [{ sheet: "Roof", row: 0, column: 0, rows: 1, columns: 1 }] }
      ),
    });
    const state = paneState(host);
    state.inputs.value = inputs;
    expect(state.report.value.wings["A"]!.understood["Long valley"]).toBe("left");
    await fill(state, { block: true, tables: () => [], newSheets: true });
    const line = steps[0]!.blocks[0]!.cells.find(([label]) => label?.content === "Long valley")!;
    expect(line.map((cell) => cell?.content ?? null)).toEqual(["Long valley", null, "left"]);
  });
});

describe("a roof with a wing", () => {
  const { model } = report(inputs);
  it("takes corrections for the main roof's jacks only", () => {
    const jacks = model!.pieces.filter(({ member }) => member === "jack");
    expect(jacks.some(({ planes }) => planes[0]!.wing === "A")).toBe(true);
    const { cuts } = checkCuts(model!, Object.fromEntries(jacks.map(({ mark, tape }) => [mark, String(tape! + 0.25)])));
    expect(cuts).toHaveLength(jacks.length);
    expect(differences(cuts, "in").flatMap(({ planes }) => planes.map(({ wing: letter }) => letter))).not.toContain(
      "A",
    );
  });
});
