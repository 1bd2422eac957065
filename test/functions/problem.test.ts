import { expect, it } from "vitest";
import type { Problem } from "../../functions/problem.ts";
import { refused } from "../../functions/arguments/refused.ts";
import type { Words } from "../../functions/words/words.ts";
import { Failure, type Kinds } from "../../src/measure/result.ts";
import { newReading } from "../../src/registry/reading.ts";
import { refuse } from "../../src/registry/refuse.ts";
import { worksheetFunction, type WorksheetFunction } from "../../src/registry/worksheetFunction.ts";
import type { Note } from "../../src/roof/frame/note.ts";

type Two = Kinds<{ one: { least: number }; two: object }>;
const definition = {
  family: "test",
  summary: "A test.",
  parameters: [],
  result: "value",
  returns: "a value.",
  examples: [
    { cells: [], result: 1 },
    { cells: [], result: 2 },
  ],
} as const;

// The type checker reads this file too: a line below that compiled would be an error there.
it("what the compiler does not take", () => {
  // @ts-expect-error a misspelt kind
  const misspelt: Problem = { kind: "no hipp" };
  // @ts-expect-error a figure left out
  const lacking: Problem = { kind: "ridge fills the run" };
  // @ts-expect-error a note's figure misspelt
  const note: Note = { kind: "last bay", wide: 12 };
  // @ts-expect-error a reader's misspelt kind
  const refusal = refuse(newReading(), { kind: "no lenght" });
  // @ts-expect-error words for one kind left out
  const words: Words<Two> = { one: ({ least }, say) => [say.least(least)] };
  // @ts-expect-error words from a figure that the kind does not have
  const wrong: Words<Two> = { one: ({ most }) => [String(most)], two: () => ["two"] };
  // @ts-expect-error a function that documents no such problem
  const documented = refused("no hipp");
  const unknown = worksheetFunction({
    ...definition,
    name: "UNKNOWN",
    compute: () => new Failure({ kind: "no hipp" }),
  });
  // @ts-expect-error a function that comes to a problem without words
  const listed: readonly WorksheetFunction<Problem>[] = [unknown];
  expect([misspelt, lacking, note, refusal, words, wrong, documented, listed]).toHaveLength(8);
});
