import type { BlockLayout, CellLayout } from "../../hosts/host.ts";
import type { Cell } from "../../registry/worksheetFunction.ts";
import { relative } from "../state/reference.ts";
import { FORMATS, kindOf, widthOf } from "./tables.ts";
import { texts } from "../state/texts.ts";

/** Where a table goes and what it is made from. */
export interface TablePlace {
  readonly sheet: string;
  readonly newSheet: boolean;
  /** The corner: the title where there is one, else the first heading. */
  readonly row: number;
  readonly column: number;
  /** Stands above the headings; none on a sheet of the table's own, whose name says it. */
  readonly title: string | null;
}

/** A spilling formula with what it spills now, and the columns to show again as read on a tape. */
export interface TableFormula {
  readonly formula: string;
  readonly now: readonly (readonly Cell[])[];
  readonly onTape: readonly string[];
  /** The cell that says the unit, as the formula will name it; null where none does. */
  readonly unitCell: string | null;
}

/** Rows kept free and made ready below what a table fills now: a longer roof has more pieces. */
export function roomToGrow(rows: number): number {
  return Math.max(20, rows);
}

/**
 * The cells of one table: its formula spills under a heading row, and beside it stands the tape text of its lengths.
 *
 * The tape column has a formula in every row that the table may yet grow into; it shows nothing where the table has no row. A block
 * turned to millimetres later would make feet of them, so each looks at the unit first.
 */
export function layoutTable(
  { sheet, newSheet, row, column, title }: TablePlace,
  { formula, now, onTape, unitCell }: TableFormula,
): BlockLayout {
  const headings = now[0]!;
  const top = title === null ? 0 : 1;
  const rows = now.length - 1 + roomToGrow(now.length - 1);
  const tapes = onTape.map((name) => headings.indexOf(name)).filter((at) => at >= 0);
  const heading: CellLayout[] = [
    { content: formula, style: "heading", format: "General" },
    ...headings.slice(1).map((): CellLayout => ({ content: "", style: "heading", format: "General" })),
    ...tapes.map((at): CellLayout => ({ content: texts.onTape(String(headings[at])), style: "heading" })),
  ];
  const lines =
    tapes.length === 0
      ? []
      : Array.from({ length: rows }, (_, i): (CellLayout | null)[] => [
          ...headings.map(() => null),
          ...tapes.map((at): CellLayout => ({
            content: tapeFormula(relative(row + top + 1 + i, column + at), unitCell),
          })),
        ]);
  const titleLine: (CellLayout | null)[] =
    title === null ? [] : [{ content: title, style: "title" }, ...heading.slice(1).map(() => null)];
  return {
    sheet,
    newSheet,
    row,
    column,
    cells: [...(title === null ? [] : [titleLine]), heading, ...lines],
    spill: {
      row: top,
      column: 0,
      rows: rows + 1,
      columns: headings.length,
      formats: headings.map((name) => FORMATS[kindOf(name)]),
    },
    widths: [...headings.map(widthOf), ...tapes.map(() => 130)],
    ...(newSheet && top === 0 ? { frozenRows: 1 } : {}),
  };
}

/** A length of a table as it is read on a tape; empty where the table has no row, and whole millimetres in a metric roof. */
export function tapeFormula(cell: string, unitCell: string | null): string {
  const tape = `RAFTER.TAPE(${cell})`;
  const text = unitCell === null ? tape : `IF(${unitCell}="mm",ROUND(${cell},0)&" mm",${tape})`;
  return `=IF(${cell}="","",${text})`;
}
