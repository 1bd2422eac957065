import fc from "fast-check";
import { functions } from "../../functions/index.ts";
import { messageOf } from "../../functions/words/problemText.ts";
import { call } from "../../src/registry/call.ts";
import { CellError, Refusal } from "../../src/registry/refusal.ts";
import { block, cell, numbersOf } from "../functions/hostileCells.ts";
import type { Attack } from "./attack.ts";

/** Hostile cells for every function: it answers or refuses in words, and with no number a sheet cannot show. */
export const cells: Attack = {
  name: "hostile cells in every function",
  async run(seed, more) {
    const found: string[] = [];
    let tried = 0;
    for (let round = 0; more() && found.length < 5; round++)
      for (const definition of functions) {
        if (!more()) break;
        const given = fc.sample(
          fc.tuple(...definition.parameters.map((parameter) => (parameter.block ? block : cell))),
          { seed: seed + round, numRuns: definition.asynchronous ? 5 : 50 },
        );
        for (const one of given) {
          tried++;
          const wrong = await fault(definition, one);
          if (wrong) found.push(`seed ${seed + round}, RAFTER.${definition.name}: ${wrong}, ${fc.stringify(one)}`);
        }
      }
    return { tried, found };
  },
};

async function fault(definition: (typeof functions)[number], given: readonly unknown[]): Promise<string | null> {
  try {
    const answer = await call(definition, given as never);
    if (answer instanceof Refusal) return messageOf(answer).length > 1_000 ? "refused at length" : null;
    if (answer instanceof CellError) return null;
    return numbersOf(answer).every(Number.isFinite) ? null : "answered no number";
  } catch (error) {
    return `threw ${String(error)}`;
  }
}
