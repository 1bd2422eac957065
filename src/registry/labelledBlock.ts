import * as z from "zod/mini";
import { isBlank, shown } from "./cells.ts";
import { CellError, type Refusal } from "./refusal.ts";
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
export function labelledBlock(
  name: string,
  input: Input,
  labels: readonly string[],
): Map<string, Input> | Refusal | CellError {
  const block = Block.safeParse(input);
  if (!block.success) {
    const was = isBlank(input)
      ? "nothing was given"
      : `${Array.isArray(input) ? "this block" : shown(input)} is no roof block`;
    return refuse(name, `${was}. Point to two columns, label and value, of at most 200 rows.`);
  }
  const known = new Map(labels.map((label) => [plainLabel(label), label]));
  const values = new Map<string, Input>();
  const seen = new Set<string>();
  for (const [label, value, ...more] of block.data) {
    // An empty cell comes as 0 from some hosts, wherever it stands.
    const error = [label, value].find((cell) => cell instanceof CellError);
    if (error) return error as CellError;
    if (more.some((cell) => !isBlank(cell) && cell !== 0))
      return refuse(name, `the block has more than two filled columns. Point to the label and value columns only.`);
    if (isBlank(label) || label === 0) {
      if (isBlank(value) || value === 0) continue;
      return refuse(name, `the value ${shown(value)} has no label beside it. Type one of: ${labels.join(", ")}.`);
    }
    const spelt = typeof label === "string" && label.length <= 64 ? known.get(plainLabel(label)) : undefined;
    if (spelt === undefined)
      return refuse(name, `${shown(label)} is no row of a roof block. The rows are: ${labels.join(", ")}.`);
    if (seen.has(spelt)) return refuse(name, `${spelt} stands there twice. Keep one of the two rows.`);
    seen.add(spelt);
    if (!isBlank(value)) values.set(spelt, value);
  }
  return values;
}
