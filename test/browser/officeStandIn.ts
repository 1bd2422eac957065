import { FakeError } from "../hosts/customFunctionsFake.ts";
import { ExcelFake } from "../hosts/excelFake.ts";

// In the place of Office.js: the strict stand-in for Excel, with the globals that the pane's page expects of it.
const fake = new ExcelFake();
const associated = new Map<string, (...given: unknown[]) => unknown>();
Object.assign(globalThis, {
  fake,
  associated,
  Excel: fake,
  Office: {
    HostType: { Excel: "Excel" },
    context: {
      requirements: { isSetSupported: () => true },
      ui: { openBrowserWindow: (address: string) => void Object.assign(globalThis, { openedElsewhere: address }) },
    },
    onReady: async (ready: (info: { host: string }) => void) => ready({ host: "Excel" }),
  },
  CustomFunctions: {
    Error: FakeError,
    ErrorCode: {
      invalidValue: "#VALUE!",
      notAvailable: "#N/A",
      divisionByZero: "#DIV/0!",
      invalidNumber: "#NUM!",
      nullReference: "#NULL!",
    },
    associate(id: string, run: (...given: unknown[]) => unknown) {
      if (associated.has(id)) throw new Error(`${id} is given twice`);
      associated.set(id, run);
    },
  },
});

export type { ExcelFake };
