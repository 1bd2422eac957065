import { readFileSync } from "node:fs";
import { beforeAll, describe, expect, it, vi } from "vitest";
import { functions } from "../../../functions/index.ts";
import { messageOf } from "../../../functions/words/problemText.ts";
import { excelFunction } from "../../../src/hosts/excel/excelFunction.ts";
import { RefusalLog } from "../../../src/hosts/excel/refusalLog.ts";
import { call } from "../../../src/registry/call.ts";
import { CellError, Refusal } from "../../../src/registry/refusal.ts";
import type { WorksheetFunction } from "../../../src/registry/worksheetFunction.ts";
import { SETS, type OfficeHost, type Outcome } from "./officeHost.ts";
import { office } from "./officeUnderTest.ts";

/** Errors as the runtime of office.js sends them. */
const CODE: Readonly<Record<string, number>> = { "#N/A": 1, "#DIV/0!": 5, "#NUM!": 6, "#VALUE!": 7, "#NULL!": 8 };

let host: OfficeHost;
beforeAll(async () => {
  host = await office();
  for (const definition of functions)
    CustomFunctions.associate(definition.name, excelFunction(definition, new RefusalLog()));
  await vi.waitFor(() => expect(host.functionsReady).toBe(true), 5000);
});

/** Values as a message carries them. */
const wire = (value: unknown): unknown => JSON.parse(JSON.stringify(value ?? null));

async function expected(definition: WorksheetFunction, cells: readonly unknown[]): Promise<Outcome> {
  const answer = await call(definition, wire(cells) as never);
  if (answer instanceof Refusal) return { ok: false, value: messageOf(answer), code: CODE[answer.error] };
  if (answer instanceof CellError) return { ok: false, value: "", code: CODE[answer.error] };
  const value = definition.result === "table" && !Array.isArray(answer) ? [[answer]] : answer;
  return { ok: true, value: wire(value), code: undefined };
}

it("runs with no more of Excel than the manifest asks for: office.js refuses what a set does not have", async () => {
  const asked = [...readFileSync("manifest/manifest.xml", "utf8").matchAll(/<Set Name="(\w+)" MinVersion="([\d.]+)"/g)];
  expect(asked.map(([, name]) => [name, SETS[name as keyof typeof SETS]])).toEqual(
    asked.map(([, name, version]) => [name, version]),
  );
  await expect(
    Excel.run(async (context) => {
      // 1.13
      context.workbook.getSelectedRange().getMergedAreasOrNullObject();
      await context.sync();
    }),
  ).rejects.toMatchObject({ code: "ApiNotFound" });
});

describe("the custom functions runtime of office.js, called by message as Excel calls it", () => {
  // All at once: it sends what is ready no more often than every half second.
  it("gives every worked example as it was computed, and refuses nonsense in the same words", async () => {
    const calls = functions.flatMap((definition) => {
      const all = (of: (i: number) => unknown) => definition.parameters.map((_, i) => of(i));
      return [
        ...definition.examples.map(({ cells }) => all((i) => cells[i] ?? null)),
        all((i) => (definition.parameters[i]!.block ? [["nonsense"]] : "nonsense")),
      ].map((cells) => ({ definition, cells }));
    });
    const came = await Promise.all(
      calls.map(({ definition, cells }) => host.call(definition.name, wire(cells) as unknown[])),
    );
    for (const [i, { definition, cells }] of calls.entries())
      expect([definition.name, cells, came[i]]).toEqual([definition.name, cells, await expected(definition, cells)]);
  });

  it("hands errors in cells on, alone and inside a block", async () => {
    const error = (code: string) => ({ type: "CustomFunctionError", code });
    const [alone, other, block] = await Promise.all([
      host.call("JACKLEN", [error("#N/A"), 48, 1.5, 1.5, null, null]),
      host.call("JACKLEN", [error("#REF!"), 48, 1.5, 1.5, null, null]),
      host.call("JACKTABLE", [
        [
          ["Span", error("#DIV/0!")],
          ["Length", 36],
        ],
      ]),
    ]);
    expect(alone).toEqual({ ok: false, value: "", code: CODE["#N/A"] });
    expect(other).toEqual({ ok: false, value: expect.stringContaining("#REF!"), code: CODE["#VALUE!"] });
    expect(block).toEqual({ ok: false, value: "", code: CODE["#DIV/0!"] });
  });

  // Excel keeps functions.json for up to a day: it may count the parameters of another release.
  it("works with a functions.json that has fewer parameters, or more", async () => {
    const cells = [6, 48, 1.5, 1.5, null, null];
    const [now, fewer, more] = await Promise.all([
      host.call("JACKLEN", cells),
      host.call("JACKLEN", cells.slice(0, 5)),
      host.call("JACKLEN", [...cells, null]),
    ]);
    // 48 in level offset at 6 in 12, less half of a 1 1/2 in hip across the corner.
    expect(now!.value).toBeCloseTo((48 - 0.75 * Math.SQRT2 + 0.75) * Math.sqrt(1.25), 9);
    expect([fewer, more]).toEqual([now, now]);
  });
});
