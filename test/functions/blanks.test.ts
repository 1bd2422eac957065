import { describe, expect, it } from "vitest";
import { readFileSync } from "node:fs";
import { functions } from "../../functions/index.ts";
import { call } from "../../src/registry/call.ts";
import { Refusal } from "../../src/registry/refusal.ts";
import type { Parameter, WorksheetFunction } from "../../src/registry/worksheetFunction.ts";

/** One and the same empty cell, as sheets hand it over: null (Excel on the web, and an argument left out), "" (a formula's), 0 (Excel on the desktop; office-js issue 4702). */
type As0 = "blank" | "refused" | "0 is meant";

/** What the guide says about optional arguments that are given an empty cell. */
const GUIDE = new Map(
  [
    ...readFileSync("functions/GUIDE.md", "utf8").matchAll(
      /^\| `(\w+)` \| [^|]+ \| [^|]+ \| (blank|refused|0 is meant)[^|]*\|$/gm,
    ),
  ].map(([, name, as0]) => [name!, as0 as As0]),
);

const optional = functions.flatMap((definition) =>
  definition.parameters.flatMap((parameter, i) => (parameter.optional ? [{ definition, parameter, i }] : [])),
);

async function answers(definition: WorksheetFunction, i: number, value: unknown): Promise<unknown[]> {
  return Promise.all(
    definition.examples.map(async ({ cells }) => {
      const given = definition.parameters.map((_, k) => (k === i ? value : (cells[k] ?? null)));
      const answer = await call(definition, given as never);
      return answer instanceof Refusal ? "refused" : answer;
    }),
  );
}

describe("an empty cell for an optional argument", () => {
  it.each(optional.map((one) => [`${one.definition.name}, ${one.parameter.name}`, one] as const))(
    "%s: is one and the same from every sheet, or refused",
    async (_, { definition, parameter, i }) => {
      const blank = await answers(definition, i, null);
      expect(await answers(definition, i, "")).toEqual(blank);
      const zero = await answers(definition, i, 0);
      const as0: Record<As0, unknown[]> = {
        blank,
        refused: blank.map(() => "refused"),
        // A saw that takes nothing: a roof's order may be asked for so.
        "0 is meant": zero.map((answer) => (answer === "refused" ? null : answer)),
      };
      expect([parameter.name, zero]).toEqual([parameter.name, as0[GUIDE.get(parameter.name)!]]);
      if (parameter.block) expect(await answers(definition, i, [[0]])).toEqual(as0.refused);
    },
  );
  it("means 0 for the kerf and the trim alone, and the guide has every optional argument", () => {
    const names = new Set(optional.map(({ parameter }: { parameter: Parameter }) => parameter.name));
    expect([...GUIDE.keys()].sort()).toEqual([...names].sort());
    expect([...GUIDE].filter(([, as0]) => as0 === "0 is meant").map(([name]) => name)).toEqual(["kerf", "trim"]);
  });
});
