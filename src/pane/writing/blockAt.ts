import type { BlockLayout, CellLayout } from "../../hosts/host.ts";

/** Where a table goes. */
export interface TablePlace {
  readonly sheet: string;
  readonly newSheet: boolean;
  /** The corner: the title where there is one, else the first line. */
  readonly row: number;
  readonly column: number;
  /** Stands above the lines; none on a sheet of the table's own, whose name says it. */
  readonly title: string | null;
}

type Line = readonly (CellLayout | null)[];

/** The row of the sheet in which the lines of a table begin. */
export function firstLine({ row, title }: TablePlace): number {
  return title === null ? row : row + 1;
}

/** Lines of cells at a place, all of one width and under their title; `spill` counts from the first line. A heading row on a new sheet stays in view. */
export function blockAt(
  place: TablePlace,
  lines: readonly Line[],
  { spill, widths }: { spill: NonNullable<BlockLayout["spill"]>; widths: NonNullable<BlockLayout["widths"]> },
): BlockLayout {
  const { sheet, newSheet, row, column, title } = place;
  const columns = Math.max(...lines.map(({ length }) => length));
  const full = (line: Line): Line => [...line, ...Array.from({ length: columns - line.length }, () => null)];
  const top = firstLine(place) - row;
  return {
    sheet,
    newSheet,
    row,
    column,
    cells: [...(title === null ? [] : [full([{ content: title, style: "title" }])]), ...lines.map(full)],
    spill: { ...spill, row: spill.row + top },
    widths,
    ...(newSheet && spill.row === 0 ? { frozenRows: 1 } : {}),
  };
}

/** The headings that a formula spills: it stands in the first cell, and the cells beside it are made ready. */
export function spilledHeading(formula: string, columns: number): CellLayout[] {
  return Array.from({ length: columns }, (_, j) => ({
    content: j === 0 ? formula : "",
    style: "heading",
    format: "General",
  }));
}
