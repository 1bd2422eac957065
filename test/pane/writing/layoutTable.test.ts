import { expect, it } from "vitest";
import { jackTable } from "../../../functions/jackTable.ts";
import { textWidth } from "../../../src/drawing/canvas/textWidth.ts";
import { columnAt } from "../../../src/registry/columns.ts";
import { EMPTY_INPUTS, START_INPUTS } from "../../../src/pane/state/fields.ts";
import { layoutTable, roomToGrow, tapeFormula } from "../../../src/pane/writing/layoutTable.ts";
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

it.each([
  [1, 20],
  [4, 23],
  [21, 40],
  [31, 60],
])("of %i lines, headings counted, it may grow to %i", (lines, most) =>
  expect(roomToGrow(Array.from({ length: lines }, () => [1]))).toBe(most),
);

it("spills its columns in their formats, and heads the tapes beside them", () => {
  const under = { sheet: "Bid", newSheet: false, row: 4, column: 2, title: "Jacks" };
  const table = { columns: columns.slice(0, 6), now, onTape: ["Long point"], unitCell: "$B$9" };
  const { cells, spill } = layoutTable(under, { ...table, formula: "=A()" });
  expect(cells[1]!.map((cell) => cell!.content)).toEqual(["=A()", "", "", "", "", "", "Long point, on tape"]);
  expect(cells[1]!.at(-1)!.style).toBe("heading");
  // The long points stand in the sixth column, H, under a title and the headings.
  expect(cells[2]).toEqual([...Array.from({ length: 6 }, () => null), { content: tapeFormula("H7", "$B$9") }]);
  const formats = columns.slice(0, 6).map(({ format }) => format);
  expect(spill).toEqual({ row: 1, column: 0, rows: 1 + roomToGrow(now), columns: 6, formats });
  expect(new Set(formats).size).toBeGreaterThan(1);
});

it("reads a length on the tape whatever the unit where no cell says it", () =>
  expect(tapeFormula("F2", null)).toBe('=IF(F2="","",RAFTER.TAPE(F2))'));

it("a metric roof has no columns on the tape", async () => {
  const columnsOf = async (inputs: typeof START_INPUTS) => {
    const tables = await roofTables(new Set(["schedule"] as const), inputs);
    if (typeof tables === "string") throw new Error(tables);
    return tables[0]!.layout(place, { block: "RoofBlock", cell: () => null }).cells[0]!.length;
  };
  const metric = { ...EMPTY_INPUTS, Span: "7.2 m", Length: "12 m", Pitch: "6" };
  expect(await columnsOf(metric)).toBeLessThan(await columnsOf(START_INPUTS));
});
