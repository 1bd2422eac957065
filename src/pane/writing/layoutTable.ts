import type { BlockLayout, CellLayout } from "../../hosts/host.ts";
import { columnAt, headingWidth, type Column } from "../../registry/columns.ts";
import type { Table } from "../state/evaluateFunction.ts";
import { relative } from "../state/reference.ts";
import { texts } from "../words/texts.ts";
import { blockAt, firstLine, spilledHeading, type TablePlace } from "./blockAt.ts";

/** A spilling formula with what it spills now, and the columns to show again as read on a tape. */
export interface TableFormula {
  readonly formula: string;
  readonly columns: readonly Column[];
  readonly now: Table;
  readonly onTape: readonly string[];
  /** The cell that says the unit, as the formula will name it; null where none does. */
  readonly unitCell: string | null;
}

/** Lines of a table with what it may yet grow into, headings left out: a longer roof has more pieces. */
export function roomToGrow(now: Table): number {
  const rows = now.length - 1;
  return rows + Math.max(20, rows);
}

/**
 * The cells of one table: its formula spills under a heading row, and beside it stands the tape text of its lengths.
 *
 * The tape column has a formula in every row that the table may yet grow into; it shows nothing where the table has no row. A block
 * turned to millimeters later would make feet of them, so each looks at the unit first.
 */
export function layoutTable(place: TablePlace, { formula, columns, now, onTape, unitCell }: TableFormula): BlockLayout {
  const rows = roomToGrow(now);
  const tapes = onTape.map((name) => columnAt(columns, name));
  const onTapes = tapes.map((at) => texts.onTape(String(columns[at]!.heading)));
  const heading = [
    ...spilledHeading(formula, columns.length),
    ...onTapes.map((content): CellLayout => ({ content, style: "heading" })),
  ];
  const line = (i: number) => [
    ...columns.map(() => null),
    ...tapes.map((at): CellLayout => ({
      content: tapeFormula(relative(firstLine(place) + 1 + i, place.column + at), unitCell),
    })),
  ];
  return blockAt(place, [heading, ...Array.from({ length: tapes.length > 0 ? rows : 0 }, (_, i) => line(i))], {
    spill: { row: 0, column: 0, rows: rows + 1, columns: columns.length, formats: columns.map(({ format }) => format) },
    widths: [...columns.map(({ width }) => width), ...onTapes.map(headingWidth)],
  });
}

/** A length of a table as it is read on a tape; empty where the table has no row, and whole millimeters in a metric roof. */
export function tapeFormula(cell: string, unitCell: string | null): string {
  const tape = `RAFTER.TAPE(${cell})`;
  const text = unitCell === null ? tape : `IF(${unitCell}="mm",ROUND(${cell},0)&" mm",${tape})`;
  return `=IF(${cell}="","",${text})`;
}
