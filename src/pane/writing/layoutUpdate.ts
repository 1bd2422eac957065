import { LETTERS, wingHeading } from "../../../functions/arguments/wingColumns.ts";
import type { BlockRow } from "../../../functions/arguments/roofBlock.ts";
import type { Unit } from "../../measure/unit.ts";
import type { Area, BlockLayout, CellLayout, HostCell } from "../../hosts/host.ts";
import { address } from "../../hosts/address.ts";
import { inputsOf, isHeading, lettersOf, valueCell } from "../state/blockCells.ts";
import { inputAt, type FieldPlace, type Inputs } from "../state/fields.ts";
import { MOST_COLUMNS } from "../state/findBlock.ts";
import { differing, labels } from "../state/sheetBlock.ts";
import { texts } from "../words/texts.ts";

/** What has to change in a block of the sheet so that it says what the pane says. */
export interface UpdateLayout {
  readonly blocks: readonly BlockLayout[];
  /** For people: "Bid!B5: 24' becomes 26'". */
  readonly changes: readonly {
    readonly at: string;
    readonly from: string;
    readonly to: string;
    readonly formula: boolean;
  }[];
  /** Places that the block has no cell for, nor room, and that the pane fills. */
  readonly lacking: readonly FieldPlace[];
  /** The block as it is then: with the columns and rows that its wings take. */
  readonly area: Area;
}

/**
 * Only the cells that differ are written; the rest of the block is left as it is.
 *
 * A wing takes an empty column right of the block; rows that the block does not have go below it where the sheet is empty.
 *
 * @param cells the block, and below and beside it the cells into which it may grow.
 */
export function layoutUpdate(
  area: Area,
  cells: readonly (readonly HostCell[])[],
  inputs: Inputs,
  unit: Unit,
): UpdateLayout {
  const block = cells.slice(0, area.rows).map((line) => line.slice(0, area.columns));
  const places = differing(inputs, inputsOf(block));
  const room = new Room(area, cells, block);
  const written = new Map<string, { row: number; column: number; to: string; cell: CellLayout }>();
  const put = (row: number, column: number, to: string, cell: CellLayout) =>
    written.set(`${row} ${column}`, { row, column, to, cell });
  const lacking: FieldPlace[] = [];
  for (const place of places) {
    const { row, wing } = place;
    const text = inputAt(inputs, place).trim();
    const gone = wing !== undefined && inputs.wings.every(({ letter }) => letter !== wing);
    const column = wing === undefined ? 1 : room.column(wing);
    const line = room.line(row, column !== null && text !== "");
    if (gone && room.headed && column !== null) put(0, column, "", { content: "" });
    if (column === null || line === null) {
      // An empty field needs no cell.
      if (text !== "") lacking.push(place);
      continue;
    }
    put(line, column, text, valueCell(row, text, unit));
  }
  for (const { row, column, text } of room.added) put(row, column, text, { content: text, style: "label" });
  for (const { row, text } of room.movedNote()) put(row, 0, text, { content: text, style: "note" });
  const all = [...written.values()].filter(({ row, column, to }) => to !== String(cells[row]?.[column]?.value ?? ""));
  return {
    blocks: all.map(({ row, column, cell }) => ({
      sheet: area.sheet,
      row: area.row + row,
      column: area.column + column,
      cells: [[cell]],
    })),
    changes: all
      .filter(({ to }) => to !== texts.cautionInSheet)
      .map(({ row, column, to }) => {
        const { value = "", formula = null } = cells[row]?.[column] ?? {};
        return {
          at: address(area.sheet, area.row + row, area.column + column),
          from: formula ?? String(value),
          to,
          formula: formula !== null,
        };
      })
      .filter(({ from }) => from !== texts.cautionInSheet),
    lacking,
    area: { ...area, rows: room.rows, columns: room.columns },
  };
}

/** The lines and columns of a block, and where it may still grow. */
class Room {
  readonly headed: boolean;
  rows: number;
  columns: number;
  /** Labels and headings that come to it. */
  readonly added: { row: number; column: number; text: string }[] = [];
  readonly #cells: readonly (readonly HostCell[])[];
  readonly #lines: Map<BlockRow, number>;
  readonly #letters: (string | null)[];
  readonly #before: number;

  constructor(area: Area, cells: readonly (readonly HostCell[])[], block: readonly (readonly HostCell[])[]) {
    this.#cells = cells;
    this.#lines = labels(block);
    this.#letters = lettersOf(block);
    this.headed = isHeading(block[0]);
    this.#before = area.rows;
    this.rows = area.rows;
    this.columns = area.columns;
  }

  /** The column of a wing: its own, or an empty one beside the block; null where there is none. */
  column(wing: string): number | null {
    const known = this.#letters.indexOf(wing);
    if (known >= 0) return known + 2;
    const at = this.headed ? this.columns : 2 + LETTERS.findIndex((letter) => letter === wing);
    if (at >= MOST_COLUMNS || !this.#cells.slice(0, this.rows).every((line) => this.#empty(line[at]))) return null;
    this.#letters[at - 2] = wing;
    this.columns = Math.max(this.columns, at + 1);
    if (this.headed) this.added.push({ row: 0, column: at, text: wingHeading(wing) });
    return at;
  }

  /** The line of a row: its own, or one below the block; null where there is none. */
  line(row: BlockRow, make: boolean): number | null {
    const known = this.#lines.get(row);
    if (known !== undefined) return known;
    // Below a sheet's last row nothing is.
    const isFree = this.#cells[this.rows]?.slice(0, this.columns).every((cell) => this.#empty(cell)) ?? false;
    if (!make || !isFree || !this.#noteHasRoom()) return null;
    const line = this.rows++;
    this.#lines.set(row, line);
    this.added.push({ row: line, column: 0, text: row });
    return line;
  }

  /** The caution that the pane wrote below the block goes down with its end. */
  movedNote(): { row: number; text: string }[] {
    const at = this.#noteAt();
    if (at < 0) return [];
    return [
      ...(at >= this.rows ? [{ row: at, text: "" }] : []),
      { row: at + this.rows - this.#before, text: texts.cautionInSheet },
    ];
  }

  /** Whether the caution below may go down a line more: nothing of the user's is written over for it. */
  #noteHasRoom(): boolean {
    const at = this.#noteAt();
    return at < 0 || this.#empty(this.#cells[at + this.rows + 1 - this.#before]?.[0]);
  }

  #noteAt(): number {
    return this.#cells.findIndex((line, i) => i >= this.#before && line[0]?.value === texts.cautionInSheet);
  }

  #empty(cell: HostCell | undefined): boolean {
    return (cell?.value ?? "") === "" || cell!.value === texts.cautionInSheet;
  }
}
