import { ROWS, type BlockRow, type Row } from "../../../functions/arguments/roofBlock.ts";
import { WING_ROWS } from "../../../functions/arguments/wingRows.ts";
import type { Area, Host, HostCell } from "../../hosts/host.ts";
import { inputsOf, isHeading, rowOf } from "./blockCells.ts";
import { inputAt, type FieldPlace, type Inputs, type WingInputs } from "./fields.ts";
import { blocksIn, findBlock, MOST_COLUMNS, type FoundBlock } from "./findBlock.ts";

/** A roof block as it stands in the sheet. */
export interface SheetBlock {
  readonly area: Area;
  /** The workbook's name for it, once it is followed: the sheet moves that with the cells. */
  readonly name: string | null;
  readonly inputs: Inputs;
  /** The rows that it has, each with its line in the block. */
  readonly lines: ReadonlyMap<BlockRow, number>;
}

/** No block is longer, and a sheet full of data is not read for one. */
export const MOST = { rows: 300, columns: 60 };

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
  return blockIn(area, cells, found, null);
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
    if (found.length > 0) return found.map((one) => blockIn(area, cells, one, null));
  }
  return [];
}

/**
 * The block that stood in an area when it was last seen, as it is now, wherever its cells went by their name, with what was added below or
 * beside it; null where it is gone.
 */
export async function readAgain(host: Host, before: Area, name: string | null = null): Promise<SheetBlock | null> {
  const area = await placeNow(host, before, name);
  if (!area || area.rows > MOST.rows || area.columns > MOST.columns) return null;
  if (!(await host.sheets()).includes(area.sheet)) return null;
  // Headings may have come over it.
  const above = Math.min(area.row, 1);
  // Rows that were just written are below what the name holds.
  const rows = above + Math.max(area.rows, before.rows) + WING_ROWS.length;
  const wide = { ...area, row: area.row - above, rows, columns: MOST_COLUMNS };
  const cells = await host.read(wide);
  const found = findBlock(
    cells.map((line, i) => (i < above && !isHeading(line) ? line.map(() => EMPTY) : line)),
    { row: above, column: 0 },
  );
  if (found?.column !== 0 || found.row > above + area.rows) return null;
  const now = blockIn(wide, cells, found, name);
  if (name !== null && (now.area.rows > area.rows || now.area.columns > area.columns))
    await host.nameArea(name, now.area);
  return now;
}

async function placeNow(host: Host, area: Area, name: string | null): Promise<Area | null> {
  const named = name === null ? undefined : (await host.namedAreas()).get(name);
  // A workbook that lost its names still has the block where it stood.
  return named === undefined ? area : named;
}

const EMPTY: HostCell = { formula: null, value: "", format: "General" };

function blockIn(
  area: Area,
  cells: readonly (readonly HostCell[])[],
  found: FoundBlock,
  name: string | null,
): SheetBlock {
  const { row, column, rows, columns } = found;
  const lines = cells.slice(row, row + rows).map((line) => line.slice(column, column + columns));
  return {
    area: { sheet: area.sheet, row: area.row + row, column: area.column + column, rows, columns },
    name,
    inputs: inputsOf(lines),
    lines: labels(lines),
  };
}

/** The rows that a block in the sheet has, each with its line in the block. */
export function labels(cells: readonly (readonly HostCell[])[]): Map<BlockRow, number> {
  return new Map(
    cells.flatMap(([label], i) => {
      const row = label && rowOf(label.value);
      return row ? [[row, i] as const] : [];
    }),
  );
}

/** Rows of the main roof that a block had a value in before, and has no more. */
export function lostRows(before: SheetBlock, now: SheetBlock): Row[] {
  return ROWS.filter((row) => before.lines.has(row) && before.inputs[row] !== "" && !now.lines.has(row));
}

/** What the pane shows after its block changed in the sheet: what changed there is taken over, what was typed in the pane since stays. */
export function followed(pane: Inputs, seen: Inputs, now: Inputs): Inputs {
  const changed = ROWS.filter((row) => seen[row] !== now[row]);
  const wings = wingsFollowed(pane.wings, seen.wings, now.wings);
  return changed.length === 0 && wings === pane.wings
    ? pane
    : { ...pane, ...Object.fromEntries(changed.map((row) => [row, now[row]])), wings };
}

function wingsFollowed(pane: Inputs["wings"], seen: Inputs["wings"], now: Inputs["wings"]): readonly WingInputs[] {
  if (JSON.stringify(seen) === JSON.stringify(now)) return pane;
  const of = (wings: Inputs["wings"], letter: string) => wings.find((wing) => wing.letter === letter);
  const there = now.map((wing): WingInputs => {
    const [before, own] = [of(seen, wing.letter), of(pane, wing.letter)];
    if (!before || !own) return wing;
    const kept = WING_ROWS.filter((row) => before[row] === wing[row]);
    return { ...wing, ...Object.fromEntries(kept.map((row) => [row, own[row]])) };
  });
  const own = pane.filter(({ letter }) => !of(seen, letter) && !of(now, letter));
  return [...there, ...own].sort((a, b) => (a.letter < b.letter ? -1 : 1));
}

/** Places that stand otherwise in the pane than in the sheet; a wing that only one of them has counts by its Wall. */
export function differing(pane: Inputs, sheet: Inputs): FieldPlace[] {
  const letters = [...new Set([...pane.wings, ...sheet.wings].map(({ letter }) => letter))].sort();
  const has = (inputs: Inputs, wing: string) => inputs.wings.some(({ letter }) => letter === wing);
  return [
    ...ROWS.map((row): FieldPlace => ({ row })),
    ...letters.flatMap((wing) => WING_ROWS.map((row): FieldPlace => ({ row, wing }))),
  ].filter((place) => {
    const { row, wing } = place;
    if (wing !== undefined && row === "Wall" && has(pane, wing) !== has(sheet, wing)) return true;
    return inputAt(pane, place).trim() !== inputAt(sheet, place).trim();
  });
}
