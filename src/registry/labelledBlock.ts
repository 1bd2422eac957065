import { isBlank, shown } from "./cells.ts";
import { CellError, Refusal } from "./refusal.ts";
import type { Input } from "./worksheetFunction.ts";

/** The most rows that are read. */
const MOST = 200;

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
export function labelledBlock(name: string, input: Input, labels: readonly string[]): Map<string, Input> | Refusal | CellError {
  const refuse = (words: string) => new Refusal("#VALUE!", `${name}: ${words}`);
  if (!isBlock(input)) {
    const was = isBlank(input) ? "nothing was given" : `${Array.isArray(input) ? "this block" : shown(input)} is no roof block`;
    return refuse(`${was}. Point to two columns, label and value, of at most ${MOST} rows.`);
  }
  const known = new Map(labels.map((label) => [plainLabel(label), label]));
  const values = new Map<string, Input>();
  const seen = new Set<string>();
  for (const [label, value, ...more] of input) {
    // An empty cell comes as 0 from some hosts, wherever it stands.
    const error = [label, value].find((cell) => cell instanceof CellError);
    if (error) return error as CellError;
    if (more.some((cell) => !isBlank(cell) && cell !== 0)) return refuse(`the block has more than two filled columns. Point to the label and value columns only.`);
    if (isBlank(label) || label === 0) {
      if (isBlank(value) || value === 0) continue;
      return refuse(`the value ${shown(value)} has no label beside it. Type one of: ${labels.join(", ")}.`);
    }
    const spelt = typeof label === "string" && label.length <= 64 ? known.get(plainLabel(label)) : undefined;
    if (spelt === undefined) return refuse(`${shown(label)} is no row of a roof block. The rows are: ${labels.join(", ")}.`);
    if (seen.has(spelt)) return refuse(`${spelt} stands there twice. Keep one of the two rows.`);
    seen.add(spelt);
    if (!isBlank(value)) values.set(spelt, value);
  }
  return values;
}

/** Rows of label and value; whatever stands right of them must be empty. */
function isBlock(input: Input): input is readonly (readonly Input[])[] {
  return Array.isArray(input) && input.length >= 1 && input.length <= MOST && input.every((row) => Array.isArray(row) && row.length >= 2);
}
