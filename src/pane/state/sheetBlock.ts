import type { Row } from "../../../functions/arguments/roofBlock.ts";
import type { Area, Host, HostCell } from "../../hosts/host.ts";
import { inputsOf, rowOf } from "./blockCells.ts";
import { EMPTY_INPUTS, type Inputs } from "./fields.ts";
import { findBlock } from "./findBlock.ts";

/** A roof block as it stands in the sheet. */
export interface SheetBlock {
  readonly area: Area;
  readonly inputs: Inputs;
}

/** No block is longer, and a sheet full of data is not read for one. */
const MOST = { rows: 300, columns: 60 };

/** The roof block around the selection, or null. */
export async function blockUnder(host: Host, selection: Area): Promise<SheetBlock | null> {
  const around = await host.blockAround({ ...selection, rows: 1, columns: 1 });
  if (around.columns < 2) return null;
  const row = Math.max(around.row, selection.row - MOST.rows);
  const column = Math.max(around.column, selection.column - MOST.columns / 2);
  const area = {
    ...around,
    row,
    column,
    rows: Math.min(around.row + around.rows - row, 2 * MOST.rows),
    columns: Math.min(around.column + around.columns - column, MOST.columns),
  };
  const cells = await host.read(area);
  const found = findBlock(cells, { row: selection.row - row, column: selection.column - column });
  if (!found) return null;
  const block = cells
    .slice(found.row, found.row + found.rows)
    .map((line) => line.slice(found.column, found.column + 2));
  return {
    area: { sheet: area.sheet, row: row + found.row, column: column + found.column, rows: found.rows, columns: 2 },
    inputs: inputsOf(block),
  };
}

/** The block that stood in an area when it was last seen, as it is now; null where it is gone. */
export async function readAgain(host: Host, area: Area): Promise<SheetBlock | null> {
  if (!(await host.sheets()).includes(area.sheet)) return null;
  const cells = await host.read(area);
  const there = labels(cells);
  return (["Span", "Length", "Pitch"] as const).every((row) => there.has(row))
    ? { area, inputs: inputsOf(cells) }
    : null;
}

/** The rows that a block in the sheet has, each with its line in the block. */
export function labels(cells: readonly (readonly HostCell[])[]): Map<Row, number> {
  return new Map(
    cells.flatMap(([label], i) => {
      const row = label && rowOf(label.value);
      return row ? [[row, i] as const] : [];
    }),
  );
}

/** What the pane shows after its block changed in the sheet: what changed there is taken over, what was typed in the pane since stays. */
export function followed(pane: Inputs, seen: Inputs, now: Inputs): Inputs {
  const changed = Object.keys(EMPTY_INPUTS).filter((row) => seen[row as Row] !== now[row as Row]) as Row[];
  return changed.length === 0 ? pane : { ...pane, ...Object.fromEntries(changed.map((row) => [row, now[row]])) };
}

/** Rows that stand otherwise in the pane than in the sheet. */
export function differing(pane: Inputs, sheet: Inputs): Row[] {
  return (Object.keys(EMPTY_INPUTS) as Row[]).filter((row) => pane[row].trim() !== sheet[row].trim());
}
