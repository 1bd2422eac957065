import { isBlank } from "./cells.ts";
import { plainLabel } from "./labelledBlock.ts";
import type { Result } from "../measure/result.ts";
import type { CellProblem } from "./cellProblem.ts";
import type { Reading } from "./reading.ts";
import { CellError } from "./refusal.ts";
import { refuse } from "./refuse.ts";
import type { Input } from "./worksheetFunction.ts";

/** A filled row of a table: its place in the block from 1, and its cells by heading. */
export interface HeadedRow<H extends string> {
  readonly row: number;
  readonly cells: Readonly<Partial<Record<H, Input>>>;
}

/** The most filled rows that are read. */
const MOST = 2000;

/**
 * The filled rows of a table whose first row holds headings; null where that row holds fewer than two of those asked for, so that the block is something else.
 *
 * Columns may stand in any order, case and blanks do not count, and columns of other headings are passed over, as are the same headings farther down, and rows in which every column asked for is
 * blank or, as some hosts hand over empty cells, 0. Errors in any cell pass through.
 */
export function headedBlock<H extends string>(
  input: Input,
  reading: Reading,
  required: readonly H[],
  optional: readonly H[],
): Result<readonly HeadedRow<H>[] | null, CellProblem> {
  // Array.from: "every" passes over what a sparse array lacks.
  if (!Array.isArray(input) || !Array.from(input).every((row) => Array.isArray(row))) return null;
  const block = input as readonly (readonly Input[])[];
  const error = errorIn(block);
  if (error) return error;
  const first = block.findIndex((row) => row.some((cell) => !isBlank(cell)));
  const known = new Map<string, H>([...required, ...optional].map((heading) => [plainLabel(heading), heading]));
  const headings = (block[first] ?? []).map((cell) =>
    typeof cell === "string" && cell.length <= 64 ? known.get(plainLabel(cell)) : undefined,
  );
  const found = headings.filter((heading) => heading !== undefined);
  if (new Set(found).size < 2) return null;
  const twice = found.find((heading, i) => found.indexOf(heading) < i);
  if (twice !== undefined) return refuse(reading, { kind: "heading twice", heading: twice });
  const missing = required.find((heading) => !found.includes(heading));
  if (missing !== undefined) return refuse(reading, { kind: "heading missing", heading: missing, required });
  const rows: HeadedRow<H>[] = [];
  for (let i = first + 1; i < block.length; i++) {
    const cells: Partial<Record<H, Input>> = {};
    headings.forEach((heading, j) => {
      if (heading !== undefined) cells[heading] = block[i]![j];
    });
    if (Object.values(cells).every((cell) => isBlank(cell) || cell === 0)) continue;
    // Lists stacked under one another bring their headings along.
    if (
      found.every((heading) => typeof cells[heading] === "string" && plainLabel(cells[heading]) === plainLabel(heading))
    )
      continue;
    if (rows.length === MOST) return refuse(reading, { kind: "too many rows", most: MOST });
    rows.push({ row: i + 1, cells });
  }
  return rows.length > 0 ? rows : refuse(reading, { kind: "no rows" });
}

function errorIn(block: readonly (readonly Input[])[]): CellError | null {
  for (const row of block) for (const cell of row) if (cell instanceof CellError) return cell;
  return null;
}
