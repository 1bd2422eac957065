import { ROWS, type Row } from "../../../functions/arguments/roofBlock.ts";
import type { Area, Host, HostCell } from "../../hosts/host.ts";
import { inputsOf, rowOf } from "./blockCells.ts";
import { EMPTY_INPUTS, type Inputs } from "./fields.ts";
import { blocksIn, findBlock, type FoundBlock } from "./findBlock.ts";
import { MOST_WINGS, withWings } from "./withWings.ts";

/** A roof block as it stands in the sheet. */
export interface SheetBlock {
  readonly area: Area;
  /** The workbook's name for it, once it is followed: the sheet moves that with the cells. */
  readonly name: string | null;
  readonly inputs: Inputs;
  /** The rows that it has, each with its line in the block. */
  readonly lines: ReadonlyMap<Row, number>;
}

/** No block is longer, and a sheet full of data is not read for one. */
export const MOST_BLOCK = { rows: 300, columns: 60 };

/** The roof block around the selection, or null. */
export async function blockUnder(host: Host, selection: Area): Promise<SheetBlock | null> {
  const around = await host.blockAround({ ...selection, rows: 1, columns: 1 });
  if (around.columns < 2) return null;
  const row = Math.max(around.row, selection.row - MOST_BLOCK.rows);
  const column = Math.max(around.column, selection.column - MOST_BLOCK.columns / 2);
  const area = {
    ...around,
    row,
    column,
    rows: Math.min(around.row + around.rows - row, 2 * MOST_BLOCK.rows),
    columns: Math.min(around.column + around.columns - column, MOST_BLOCK.columns),
  };
  const cells = await host.read(area);
  const found = findBlock(cells, { row: selection.row - row, column: selection.column - column });
  return found && blockOf(cells, area, found);
}

/** How much of a workbook is looked through for a block that nobody pointed at. */
const LOOKED_THROUGH = { sheets: 10, rows: 100, columns: 26 };

/** The roof blocks of the first sheet that has any. */
export async function firstBlocks(host: Host): Promise<readonly SheetBlock[]> {
  const { sheets, rows, columns } = LOOKED_THROUGH;
  for (const sheet of (await host.sheets()).slice(0, sheets)) {
    const area = { sheet, row: 0, column: 0, rows, columns };
    const cells = await host.read(area);
    const found = blocksIn(cells);
    if (found.length > 0) return found.map((one) => blockOf(cells, area, one));
  }
  return [];
}

/** A block that was found among cells. */
function blockOf(cells: readonly (readonly HostCell[])[], { sheet, row, column }: Area, found: FoundBlock): SheetBlock {
  const inside = withWings(cells, { ...found, columns: 2 });
  const block = cutOut(cells, inside);
  return {
    area: { ...inside, sheet, row: row + inside.row, column: column + inside.column },
    name: null,
    inputs: inputsOf(block),
    lines: labels(block),
  };
}

function cutOut<T>(cells: readonly (readonly T[])[], { row, column, rows, columns }: Omit<Area, "sheet">): T[][] {
  return cells.slice(row, row + rows).map((line) => line.slice(column, column + columns));
}

/** A followed block as it is now, wherever its cells went; a row that was put below it, or a wing beside it, belongs to it. Null where it is gone. */
export async function readAgain(
  host: Host,
  { area: before, name }: Pick<SheetBlock, "area" | "name">,
): Promise<SheetBlock | null> {
  const area = await placeNow(host, before, name);
  if (!area || area.rows > MOST_BLOCK.rows || area.columns > MOST_BLOCK.columns) return null;
  if (!(await host.sheets()).includes(area.sheet)) return null;
  // With the line above it and the columns beside it: a wing may have come.
  const above = Math.min(area.row, 1);
  const cells = await host.read({
    ...area,
    row: area.row - above,
    rows: area.rows + above + ROWS.length,
    columns: area.columns + MOST_WINGS,
  });
  const rows = area.rows + rowsBelow(cells.slice(above), area.rows);
  const inside = withWings(cells, { row: above, column: 0, rows, columns: area.columns });
  const block = cutOut(cells, inside);
  const there = labels(block);
  if (!(["Span", "Length", "Pitch"] as const).every((row) => there.has(row))) return null;
  const now = { ...area, row: area.row - above + inside.row, rows: inside.rows, columns: inside.columns };
  if (name !== null && (now.rows > area.rows || now.columns > area.columns)) await host.nameArea(name, now);
  return { area: now, name, inputs: inputsOf(block), lines: there };
}

async function placeNow(host: Host, area: Area, name: string | null): Promise<Area | null> {
  const named = name === null ? undefined : (await host.namedAreas()).get(name);
  // A workbook that lost its names still has the block where it stood.
  return named === undefined ? area : named;
}

/** How many lines below a block go on with it: labels that it does not have yet. */
function rowsBelow(cells: readonly (readonly HostCell[])[], rows: number): number {
  const there = labels(cells.slice(0, rows));
  let more = 0;
  for (const [label] of cells.slice(rows)) {
    const row = label && rowOf(label.value);
    if (!row || there.has(row)) break;
    there.set(row, rows + more++);
  }
  return more;
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

/** Rows that a block had a value in before, and has no more. */
export function lostRows(before: SheetBlock, now: SheetBlock): Row[] {
  return [...before.lines.keys()].filter((row) => before.inputs[row] !== "" && !now.lines.has(row));
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
