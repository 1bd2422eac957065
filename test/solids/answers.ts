import { messageOf } from "../../functions/words/problemText.ts";
import { functions } from "../../functions/index.ts";
import { call } from "../../src/registry/call.ts";
import type { Answer } from "../../src/registry/call.ts";
import { CellError, Refusal } from "../../src/registry/refusal.ts";

const byName = new Map(functions.map((definition) => [definition.name, definition]));

/** What a cell with this function would show. */
export async function asked(name: string, ...cells: readonly unknown[]): Promise<Answer> {
  const definition = byName.get(name);
  if (!definition) throw new Error(`There is no worksheet function ${name}.`);
  return call(definition, cells);
}

/** The number a function answers with; a refusal fails the test with its own words. */
export async function answered(name: string, ...cells: readonly unknown[]): Promise<number> {
  const answer = await asked(name, ...cells);
  if (typeof answer === "number") return answer;
  throw new Error(
    `${name}(${cells.map(String).join(", ")}): ${answer instanceof Refusal ? messageOf(answer) : answer instanceof CellError ? answer.error : "no number"}`,
  );
}

/** The rows a function spills, headings first. */
export async function spilled(
  name: string,
  ...cells: readonly unknown[]
): Promise<readonly (readonly (string | number | boolean)[])[]> {
  const answer = await asked(name, ...cells);
  if (Array.isArray(answer)) return answer as readonly (readonly (string | number | boolean)[])[];
  throw new Error(`${name}: ${answer instanceof Refusal ? messageOf(answer) : "no rows"}`);
}
