import { RefusalLog } from "../../src/hosts/excel/refusalLog.ts";
import { excelFunction } from "../../src/hosts/excel/excelFunction.ts";
import { excelHost } from "../../src/hosts/excel/excelHost.ts";
import type { Host } from "../../src/hosts/host.ts";
import { Refusal } from "../../src/registry/refusal.ts";
import { worksheetFunction } from "../../src/registry/worksheetFunction.ts";
import { ExcelFake } from "./excelFake.ts";
import { FakeError } from "./customFunctionsFake.ts";
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

/** The adapter on the stand-in, with the globals that Excel's page script would bring. */
export function excelUnderTest(): HostUnderTest & { fake: ExcelFake; host: Host; refusals: RefusalLog } {
  const fake = new ExcelFake();
  const refusals = new RefusalLog();
  Object.assign(globalThis, {
    Excel: fake,
    CustomFunctions: { Error: FakeError, ErrorCode: { invalidValue: "#VALUE!" } },
  });
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
      // As Excel calls it: no arguments, then the invocation with the calling cell.
      try {
        excelFunction(refusing, refusals)({ address: `${sheet}!${String.fromCharCode(65 + column)}${row + 1}` });
      } catch (error) {
        fake.showAt(sheet, row, column, (error as FakeError).code);
      }
      return MESSAGE;
    },
    width: async (sheet, column) => (fake.sheet(sheet)!.widths.get(column) ?? 48) / 0.75,
    frozenRows: async (sheet) => fake.sheet(sheet)!.frozenRows,
    bold: async (sheet, row, column) => fake.sheet(sheet)!.peek(row, column).bold,
  };
}
