import * as z from "zod/mini";
import type { Result } from "../measure/result.ts";
import type { CellProblem } from "./cellProblem.ts";
import { isBlank } from "./cells.ts";
import type { Reading } from "./reading.ts";
import { CellError } from "./refusal.ts";
import { refuse } from "./refuse.ts";
import type { Input } from "./worksheetFunction.ts";

// The shape that a host hands over for a block: rows of label and value; whatever stands right of them must be empty.
const Row = z.array(z.unknown()).check(z.minLength(2));
const Block = z.array(Row).check(z.minLength(1), z.maxLength(200));

/** How a label is compared: case, blanks and a trailing colon do not count. */
export function plainLabel(text: string): string {
  return text.trim().replace(/:$/, "").trim().replace(/\s+/g, " ").toLowerCase();
}

/**
 * The filled rows of a block of two columns, label and value, by label as the program spells it.
 *
 * Refuses unknown and doubled labels by name, text too long for a label, and what is no block of two columns. Rows whose
 * value is blank are left out, so that their default counts.
 */
export function labelledBlock<L extends string>(
  input: Input,
  reading: Reading,
  labels: readonly L[],
): Result<Map<L, Input>, CellProblem> {
  const block = Block.safeParse(input);
  if (!block.success) return refuse(reading, { kind: "no block of labels", read: input });
  const known = new Map<string, L>(labels.map((label) => [plainLabel(label), label]));
  const values = new Map<L, Input>();
  const seen = new Set<L>();
  for (const [label, value, ...more] of block.data) {
    // An empty cell comes as 0 from some hosts, wherever it stands.
    const error = [label, value].find((cell) => cell instanceof CellError);
    if (error) return error as CellError;
    if (more.some((cell) => !isBlank(cell) && cell !== 0)) return refuse(reading, { kind: "more than two columns" });
    if (isBlank(label) || label === 0) {
      if (isBlank(value) || value === 0) continue;
      return refuse(reading, { kind: "value without label", read: value, labels });
    }
    const spelled = typeof label === "string" && label.length <= 64 ? known.get(plainLabel(label)) : undefined;
    if (spelled === undefined) return refuse(reading, { kind: "unknown label", read: label, labels });
    if (seen.has(spelled)) return refuse(reading, { kind: "label twice", label: spelled });
    seen.add(spelled);
    if (!isBlank(value)) values.set(spelled, value);
  }
  return values;
}
