import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { functions } from "../../functions/index.ts";
import { messageOf } from "../../functions/words/problemText.ts";
import { call } from "../../src/registry/call.ts";
import { CellError, Refusal } from "../../src/registry/refusal.ts";
import { block, cell, numbersOf } from "./hostileCells.ts";

describe("no cell breaks a function: it answers or refuses in words, the same each time, and with no number a sheet cannot show", () => {
  it.each(functions.map((definition) => [definition.name, definition] as const))("%s", async (_, definition) => {
    const cells = fc.tuple(...definition.parameters.map((parameter) => (parameter.block ? block : cell)));
    await fc.assert(
      fc.asyncProperty(cells, async (given) => {
        const answer = await call(definition, given as never);
        expect(numbersOf(answer).filter((value) => !Number.isFinite(value))).toEqual([]);
        if (answer instanceof Refusal) expect(messageOf(answer).length).toBeLessThan(1_000);
        else if (!(answer instanceof CellError)) expect(await call(definition, given as never)).toEqual(answer);
      }),
      { seed: 15, numRuns: definition.asynchronous ? 25 : 120 },
    );
  });
});
