import { expect, it } from "vitest";
import { jackTable } from "../../../functions/jackTable.ts";
import { textWidth } from "../../../src/drawing/canvas/textWidth.ts";
import { columnAt } from "../../../src/registry/columns.ts";
import { EMPTY_INPUTS, START_INPUTS } from "../../../src/pane/state/fields.ts";
import { layoutTable, roomToGrow } from "../../../src/pane/writing/layoutTable.ts";
import { roofTables } from "../../../src/pane/writing/roofTables.ts";

const { columns } = jackTable;
const now = [columns.map(({ heading }) => heading), columns.map(() => 1)];
const place = { sheet: "Jacks", newSheet: true, row: 0, column: 0, title: null };
const laid = (onTape: readonly string[]) =>
  layoutTable(place, { formula: "=RAFTER.JACKTABLE(RoofBlock)", columns, now, onTape, unitCell: null });

it("gives every column its width, and those on the tape room for their heading", () => {
  const { cells, widths } = laid(["Long point", "Tape"]);
  expect(widths).toHaveLength(cells[0]!.length);
  expect(widths!.slice(0, -2)).toEqual(columns.map(({ width }) => width));
  for (const at of [-2, -1])
    expect(widths!.at(at)).toBeGreaterThan(textWidth(String(cells[0]!.at(at)!.content), 11 / 0.75) * 0.93);
});

it("reads lengths on the tape in every line that the table may grow into, and takes none where there is no tape", () => {
  const { cells } = laid(["Long point"]);
  expect(cells).toHaveLength(1 + roomToGrow(now));
  const letter = String.fromCharCode("A".charCodeAt(0) + columnAt(columns, "Long point"));
  expect(cells.slice(1).every((line, i) => String(line.at(-1)!.content).includes(`${letter}${i + 2}`))).toBe(true);
  expect(laid([]).cells).toHaveLength(1);
});

it("a metric roof has no columns on the tape", async () => {
  const columnsOf = async (inputs: typeof START_INPUTS) => {
    const tables = await roofTables(new Set(["schedule"] as const), inputs);
    if (typeof tables === "string") throw new Error(tables);
    return tables[0]!.layout(place, { block: "RoofBlock", cell: () => null }).cells[0]!.length;
  };
  const metric = { ...EMPTY_INPUTS, Span: "7.2 m", Length: "12 m", Pitch: "6" };
  expect(await columnsOf(metric)).toBeLessThan(await columnsOf(START_INPUTS));
});
