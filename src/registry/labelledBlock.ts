import * as z from "zod/mini";
import type { Result } from "../measure/result.ts";
import type { CellProblem } from "./cellProblem.ts";
import { isBlank } from "./cells.ts";
import type { Reading } from "./reading.ts";
import { CellError } from "./refusal.ts";
import { refuse } from "./refuse.ts";
import type { Input } from "./worksheetFunction.ts";

// The shape that a host hands over for a block: rows of a label and its values.
const Row = z.array(z.unknown()).check(z.minLength(2));
const Block = z.array(Row).check(z.minLength(1), z.maxLength(200));

/** A block of labels, each with values beside it. */
export interface LabelledBlock<L extends string> {
  /** What stands over the columns of values, from the first one; empty where the block starts with a label. */
  readonly headings: readonly Input[];
  /** The values beside each label, from the first column; rows without one are left out. */
  readonly rows: ReadonlyMap<L, readonly Input[]>;
}

/** How a label is compared: case, blanks and a trailing colon do not count. */
export function plainLabel(text: string): string {
  return text.trim().replace(/:$/, "").trim().replace(/\s+/g, " ").toLowerCase();
}

/**
 * The filled rows of a block, label and values, by label as the program spells it. A first row of texts without a label is its headings.
 *
 * Refuses unknown and doubled labels by name, text too long for a label, and what is no block. An empty cell comes as 0 from some hosts: right of the first
 * column of values a 0 is blank.
 */
export function labelledBlock<L extends string>(
  input: Input,
  reading: Reading,
  labels: readonly L[],
): Result<LabelledBlock<L>, CellProblem> {
  const block = Block.safeParse(input);
  if (!block.success) return refuse(reading, { kind: "no block of labels", read: input });
  const known = new Map<string, L>(labels.map((label) => [plainLabel(label), label]));
  const rows = new Map<L, readonly Input[]>();
  const seen = new Set<L>();
  let headings: readonly Input[] = [];
  for (const cells of block.data) {
    const error = cells.find((cell) => cell instanceof CellError);
    if (error) return error as CellError;
    const [label, ...read] = cells;
    const values = read.map((cell, i) => (i > 0 && cell === 0 ? undefined : cell));
    const filled = values.filter((cell) => !isBlank(cell));
    if (isBlank(label) || label === 0) {
      const [first] = filled.filter((cell) => cell !== 0);
      if (first === undefined) continue;
      if (seen.size > 0 || headings.length > 0 || filled.some((cell) => typeof cell !== "string" && cell !== 0))
        return refuse(reading, { kind: "value without label", read: first, labels });
      headings = values.map((cell) => (cell === 0 ? undefined : cell));
      continue;
    }
    const spelled = typeof label === "string" && label.length <= 64 ? known.get(plainLabel(label)) : undefined;
    if (spelled === undefined) return refuse(reading, { kind: "unknown label", read: label, labels });
    if (seen.has(spelled)) return refuse(reading, { kind: "label twice", label: spelled });
    seen.add(spelled);
    if (filled.length > 0) rows.set(spelled, values);
  }
  return { headings, rows };
}
