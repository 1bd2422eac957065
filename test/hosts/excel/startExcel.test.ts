import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { functions } from "../../../functions/index.ts";
import { startExcel } from "../../../src/hosts/excel/startExcel.ts";
import { excelMetadata } from "../../../src/registry/excelMetadata.ts";
import { FakeError } from "../customFunctionsFake.ts";

const INVOCATION = { functionName: "ANY", address: "Sheet1!A1" };
const associated = new Map<string, (...cells: unknown[]) => unknown>();
const open = vi.fn();
const office = (host: string | null) => ({
  onReady: (ready: (info: { host: string | null }) => void) => Promise.resolve(ready({ host })),
  HostType: { Excel: "Excel" },
});

beforeEach(() => {
  associated.clear();
  open.mockReset();
  vi.stubGlobal("CustomFunctions", {
    Error: FakeError,
    ErrorCode: {},
    associate: (id: string, run: (...cells: unknown[]) => unknown) => associated.set(id, run),
  });
  vi.stubGlobal("Office", office("Excel"));
});
afterEach(() => void vi.unstubAllGlobals());

describe("startExcel", () => {
  it("associates every id of functions.json, and nothing else", () => {
    startExcel(functions, open);
    expect([...associated.keys()].sort()).toEqual(
      excelMetadata(functions, "https://example.org")
        .functions.map(({ id }) => id)
        .sort(),
    );
    // 48 in level offset at 6 in 12, less half of a 1 1/2 in hip across the corner: (48 - 0.75 sqrt 2 + 0.75) sqrt(1.25).
    expect(associated.get("JACKLEN")!(6, 48, 1.5, 1.5, null, null, INVOCATION)).toBeCloseTo(
      (48 - 0.75 * Math.SQRT2 + 0.75) * Math.sqrt(1.25),
      9,
    );
    expect(() => associated.get("JACKLEN")!(0.25, 48, 1.5, 1.5, null, null, INVOCATION)).toThrow(FakeError);
  });
  it("opens the pane where there is a workbook", () => {
    startExcel(functions, open);
    expect(open).toHaveBeenCalledOnce();
  });
  it.each<[string, () => unknown]>([
    ["outside Excel", () => vi.stubGlobal("Office", office(null))],
    ["in another program", () => vi.stubGlobal("Office", office("Word"))],
    ["without Office.js", () => vi.stubGlobal("Office", undefined)],
  ])("has the functions but no pane %s", (_, stub) => {
    stub();
    startExcel(functions, open);
    expect([associated.size, open.mock.calls.length]).toEqual([functions.length, 0]);
  });
  it("calls nothing where there are no functions to give", () => {
    vi.stubGlobal("CustomFunctions", undefined);
    startExcel(functions, open);
    expect(associated.size).toBe(0);
  });
});
