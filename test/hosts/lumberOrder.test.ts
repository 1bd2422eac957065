import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { functions } from "../../functions/index.ts";
import { excelFunction } from "../../src/hosts/excel/excelFunction.ts";
import { RefusalLog } from "../../src/hosts/excel/refusalLog.ts";
import { answer } from "../../src/hosts/terminal/answer.ts";
import type { Cell } from "../../src/registry/worksheetFunction.ts";
import { FakeError } from "./customFunctionsFake.ts";
import { bundled } from "./embedded/bundled.ts";
import type { Headless } from "./embedded/headless.ts";

// The only functions that answer late, in the three places that call them.
const BLOCK: (string | number)[][] = [
  ["Span", `24'`],
  ["Length", `36'`],
  ["Pitch", 6],
];
const BOARDS = [[144], [192], [240]];
const typed = `{"Span","24'";"Length","36'";"Pitch",6},{144;192;240}`;
const table = async (name: string): Promise<Cell[][]> => {
  const found = await answer(`=RAFTER.${name}(${typed})`, new Map(functions.map((one) => [one.name, one])));
  if (!("value" in found)) throw new Error(found.message);
  return found.value as Cell[][];
};

describe.each(["LUMBERORDER", "STICKPLAN"])("%s", (name) => {
  const definition = functions.find((one) => one.name === name)!;

  it("on the terminal", async () => {
    const rows = await table(name);
    expect(rows.length).toBeGreaterThan(5);
    expect(await answer(`=RAFTER.${name}(${typed},-1)`, new Map([[name, definition]]))).toMatchObject({
      error: "#VALUE!",
      message: expect.stringMatching(/^kerf: /) as string,
    });
  });

  describe("in Excel", () => {
    beforeEach(() => {
      Object.assign(globalThis, {
        CustomFunctions: { Error: FakeError, ErrorCode: { invalidValue: "#VALUE!", notAvailable: "#N/A" } },
      });
    });
    it("gives its rows late, and its refusal as an error with the message", async () => {
      const log = new RefusalLog();
      const run = excelFunction(definition, log);
      // Excel hands over the empty cells of a range that is too large as 0 or "".
      expect(await run([...BLOCK, ["", 0], [0, 0]], BOARDS, null, { functionName: name, address: "Order!A1" })).toEqual(
        await table(name),
      );
      await expect(async () =>
        run(BLOCK, BOARDS, -1, { functionName: name, address: "Order!A1" }),
      ).rejects.toBeInstanceOf(FakeError);
      expect(log.at("Order", 0, 0, "#VALUE!")).toMatch(/^kerf: /);
    });
  });

  describe("in the embedded sheet", () => {
    let t: Headless | undefined;
    afterEach(() => t?.dispose());
    it("spills once it is there, and keeps its refusal for the pane", async () => {
      const { headless, real } = await bundled();
      const sheet = (t = headless(real));
      BLOCK.forEach(([label, value], i) => {
        sheet.type(`A${i + 1}`, label!);
        sheet.type(`B${i + 1}`, value!);
      });
      BOARDS.forEach(([length], i) => sheet.type(`C${i + 1}`, length!));
      sheet.type("E1", `=RAFTER.${name}(A1:B6,C1:C3)`);
      sheet.type("P1", `=RAFTER.${name}(A1:B6,C9:C10)`);
      await sheet.values("E1");
      while (sheet.sheet.late.pending) await new Promise((resolve) => setTimeout(resolve, 20));
      const expected = await table(name);
      expect(await sheet.values(`E1:${name === "LUMBERORDER" ? "L" : "K"}${expected.length}`)).toEqual(expected);
      expect(await sheet.values("P1")).toEqual([["#VALUE!"]]);
      expect(await sheet.host.messageAt("Sheet1", 0, 15)).toMatch(/^boards: no length of board was given/);
    });
  });
});
