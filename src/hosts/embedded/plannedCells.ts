import type { ICellData } from "@univerjs/core";
import type { BlockLayout } from "../host.ts";
import { cellData, emptiedCell } from "./cellStyle.ts";

/** One cell that a block writes, in the sheet's rows and columns. */
export interface PlannedCell {
  readonly row: number;
  readonly column: number;
  readonly data: ICellData;
}

/** Every cell that a block writes, once each: its own cells by rows, then the emptied ones of its spill area. Its holes are not among them. */
export function plannedCells({ row, column, cells, spill }: BlockLayout): PlannedCell[] {
  const planned: PlannedCell[] = [];
  const own = new Set<string>();
  cells.forEach((line, i) =>
    line.forEach((cell, j) => {
      if (!cell) return;
      own.add(`${i}/${j}`);
      const format =
        cell.format ?? (spill && inside(spill, i, j) ? spill.formats?.[j - spill.column] : undefined) ?? undefined;
      planned.push({
        row: row + i,
        column: column + j,
        data: cellData(format === undefined ? cell : { ...cell, format }),
      });
    }),
  );
  if (!spill) return planned;
  for (let i = spill.row; i < spill.row + spill.rows; i++)
    for (let j = spill.column; j < spill.column + spill.columns; j++)
      if (!own.has(`${i}/${j}`))
        planned.push({
          row: row + i,
          column: column + j,
          data: emptiedCell(spill.formats?.[j - spill.column] ?? null),
        });
  return planned;
}

function inside(spill: NonNullable<BlockLayout["spill"]>, row: number, column: number): boolean {
  return (
    row >= spill.row && row < spill.row + spill.rows && column >= spill.column && column < spill.column + spill.columns
  );
}
