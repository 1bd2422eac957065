import { createInterface } from "node:readline";
import { parseArgs } from "node:util";
import { functions } from "../../../functions/index.ts";
import { answer } from "./answer.ts";
import { answerText } from "./answerText.ts";
import type { Functions } from "./evaluate.ts";
import { printable } from "./printable.ts";
import { helpText } from "./helpText.ts";

/** Formulas of the command line, or one a line from standard input; blank lines are passed over. */
async function* formulas(given: readonly string[]): AsyncGenerator<string> {
  if (given.length > 0) return yield* given;
  if (process.stdin.isTTY) console.error("One formula a line; Ctrl+D ends.");
  for await (const line of createInterface({ input: process.stdin, crlfDelay: Infinity })) {
    const formula = line.replace(/^\uFEFF/, "");
    if (formula.trim() !== "") yield formula;
  }
}

/** Prints every answer in order. True when each formula gave a value. */
async function run(given: readonly string[], json: boolean): Promise<boolean> {
  const byName: Functions = new Map(functions.map((definition) => [definition.name, definition]));
  let whole = true;
  for await (const formula of formulas(given)) {
    const result = await answer(formula, byName);
    if (!process.stdout.write(`${answerText(result, json)}\n`))
      await new Promise<void>((drained) => process.stdout.once("drain", drained));
    if ("error" in result) {
      whole = false;
      if (!json) console.error(printable(`${result.formula}: ${result.message}`));
    }
  }
  return whole;
}

// A reader such as `head` may close the pipe early; that is no fault.
process.stdout.on("error", (error: NodeJS.ErrnoException) => process.exit(error.code === "EPIPE" ? 0 : 1));

try {
  const { values, positionals } = parseArgs({
    allowPositionals: true,
    options: { json: { type: "boolean" }, help: { type: "boolean", short: "h" } },
  });
  if (values.help) console.log(helpText(functions));
  else process.exitCode = (await run(positionals, values.json ?? false)) ? 0 : 1;
} catch (error) {
  console.error(`${printable((error as Error).message)}\nStart a formula with "="; --help says more.`);
  process.exitCode = 1;
}
