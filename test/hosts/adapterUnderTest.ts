import { Refusal } from "../../src/registry/refusal.ts";
import { worksheetFunction } from "../../src/registry/worksheetFunction.ts";
import { excelFunction } from "../../src/hosts/excel/excelFunction.ts";
import { excelHost } from "../../src/hosts/excel/excelHost.ts";
import { RefusalLog } from "../../src/hosts/excel/refusalLog.ts";
import type { FakeBook } from "./fakeBook.ts";
import type { HostUnderTest } from "./hostUnderTest.ts";

const MESSAGE = "slope: nothing was given. Type a lumber size, such as 2x8.";
const refusing = worksheetFunction({
  name: "REFUSING",
  family: "test",
  summary: "Refuses.",
  parameters: [],
  result: "value",
  returns: "nothing.",
  examples: [
    { cells: [], result: 0 },
    { cells: [], result: 0 },
  ],
  compute: () => new Refusal({ kind: "no size" }, { argument: "slope" }, null),
});

/**
 * The adapter on a workbook of plain data, and the hands of its user.
 *
 * @param shown what a cell shows for a function that Excel calls with the cell's address.
 */
export function adapterUnderTest<Fake extends FakeBook>(
  fake: Fake,
  shown: (run: (...received: unknown[]) => unknown, address: string) => Promise<string>,
): HostUnderTest & { fake: Fake; refusals: RefusalLog } {
  const refusals = new RefusalLog();
  return {
    fake,
    refusals,
    host: excelHost(refusals, async () => "iVBORw0KGgo="),
    calculates: false,
    type: async (sheet, row, column, content) => fake.type(sheet, row, column, content),
    format: async (sheet, row, column, format) => void (fake.sheet(sheet)!.cell(row, column).format = format),
    rename: async (sheet, name) => void (fake.sheet(sheet)!.name = name),
    select: async (row, column, rows, columns) => fake.select(row, column, rows, columns),
    async refuse(sheet, row, column) {
      fake.type(sheet, row, column, "=RAFTER.REFUSING()");
      const address = `${sheet}!${String.fromCharCode(65 + column)}${row + 1}`;
      fake.showAt(sheet, row, column, await shown(excelFunction(refusing, refusals), address));
      return MESSAGE;
    },
    width: async (sheet, column) => (fake.sheet(sheet)!.widths.get(column) ?? 48) / 0.75,
    frozenRows: async (sheet) => fake.sheet(sheet)!.frozenRows,
    bold: async (sheet, row, column) => fake.sheet(sheet)!.peek(row, column).bold,
  };
}
