import { LETTERS } from "../../../functions/arguments/wingColumns.ts";
import type { HostCell } from "../../hosts/host.ts";
import { isHeading, rowOf } from "./blockCells.ts";

/** Where a roof block stands inside the cells that were looked at: its first row (of headings, where it has them), the column of its labels, its size. */
export interface FoundBlock {
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
}

/** Labels, values, and a column for each wing. */
export const MOST_COLUMNS = 2 + LETTERS.length;

/**
 * The roof block nearest to a cell among cells that hold other things too, such as a title above it or a bid beside it.
 *
 * A block is a run of known labels one below the other that has Span, Length and Pitch among them. An empty row does not end it,
 * nor do two blocks with one row in both become one.
 */
export function findBlock(
  cells: readonly (readonly HostCell[])[],
  at: { row: number; column: number },
): FoundBlock | null {
  let best: FoundBlock | null = null;
  for (const block of blocksIn(cells)) if (!best || distance(block, at) < distance(best, at)) best = block;
  return best;
}

/** Every roof block among cells. */
export function blocksIn(cells: readonly (readonly HostCell[])[]): FoundBlock[] {
  const labels = Math.max(0, (cells[0]?.length ?? 0) - 1);
  return Array.from({ length: labels }, (_, column) => [...runs(cells, column)]).flat();
}

function* runs(cells: readonly (readonly HostCell[])[], column: number): Generator<FoundBlock> {
  let start = -1;
  let end = -1;
  let seen = new Set<string>();
  const run = (): FoundBlock | null => {
    if (start < 0 || !["Span", "Length", "Pitch"].every((row) => seen.has(row))) return null;
    const headed = isHeading(cells[start - 1]?.slice(column, column + MOST_COLUMNS));
    const row = headed ? start - 1 : start;
    const lines = cells.slice(row, end + 1).map((line) => line.slice(column, column + MOST_COLUMNS));
    return { row, column, rows: lines.length, columns: columnsOf(lines) };
  };
  for (let i = 0; i <= cells.length; i++) {
    const [label, value] = [cells[i]?.[column]?.value ?? "", cells[i]?.[column + 1]?.value ?? ""];
    const row = rowOf(label);
    if (row && !seen.has(row)) {
      if (start < 0) start = i;
      end = i;
      seen.add(row);
    } else if (i === cells.length || row || label !== "" || value !== "") {
      const found = run();
      if (found) yield found;
      [start, end, seen] = row ? [i, i, new Set<string>([row])] : [-1, -1, new Set<string>()];
    }
  }
}

/** How many columns a block has: a heading over it, or a word in its row Wall, says that there is a wing. */
export function columnsOf(lines: readonly (readonly HostCell[])[]): number {
  const says = lines.filter((line, i) => (i === 0 && isHeading(line)) || rowOf(line[0]?.value ?? "") === "Wall");
  const last = (line: readonly HostCell[]) =>
    line.findLastIndex(({ value }, i) => i >= 2 && typeof value === "string" && value !== "");
  return Math.max(2, ...says.map((line) => last(line) + 1));
}

function distance({ row, column, rows, columns }: FoundBlock, at: { row: number; column: number }): number {
  const outside = (value: number, from: number, to: number) => Math.max(from - value, value - to, 0);
  return outside(at.row, row, row + rows - 1) + outside(at.column, column, column + columns - 1);
}
