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
      ui: {
        openBrowserWindow: (address: string) => void Object.assign(globalThis, { openedElsewhere: address }),
        // As Excel does, it has one dialog at a time and refuses a second one.
        displayDialogAsync(address: string, _: object, done: (result: object) => void) {
          const [given, at] = [globalThis as { dialogRefused?: boolean; dialog?: string }, address];
          if (given.dialogRefused || given.dialog !== undefined)
            return done({ status: "failed", error: { code: 12007 } });
          given.dialog = at;
          done({ status: "succeeded", value: { close: () => delete given.dialog, addEventHandler: () => undefined } });
        },
      },
    },
    AsyncResultStatus: { Failed: "failed", Succeeded: "succeeded" },
    EventType: { DialogEventReceived: "dialogEventReceived" },
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
