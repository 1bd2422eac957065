import type { Area, HostCell } from "../host.ts";
import { batches } from "./batches.ts";
import { isFormula } from "./isFormula.ts";
import { PLACE } from "./rangeArea.ts";
import { sheetNamed } from "./sheets.ts";

const EMPTY: HostCell = { formula: null, value: "", format: "General" };

/** The cells of an area. Only what the sheet uses is fetched; the rest is empty. */
export async function readCells(
  context: Excel.RequestContext,
  { sheet, row, column, rows, columns }: Area,
): Promise<HostCell[][]> {
  const worksheet = await sheetNamed(context, sheet);
  const cells: HostCell[][] = Array.from({ length: rows }, () => new Array<HostCell>(columns).fill(EMPTY));
  const used = worksheet.getUsedRangeOrNullObject(false).load(PLACE);
  await context.sync();
  if (used.isNullObject) return cells;
  const top = Math.max(row, used.rowIndex);
  const left = Math.max(column, used.columnIndex);
  const bottom = Math.min(row + rows, used.rowIndex + used.rowCount);
  const width = Math.min(column + columns, used.columnIndex + used.columnCount) - left;
  if (width <= 0) return cells;
  if (bottom <= top) return cells;
  const area = { sheet, row: top, column: left, rows: bottom - top, columns: width };
  for (const [band] of batches([{ area }])) {
    const from = top + band!.from;
    const range = worksheet.getRangeByIndexes(from, left, band!.rows, width).load("formulas,values,numberFormat");
    await context.sync();
    for (const [i, line] of range.values.entries())
      for (const [j, value] of line.entries()) {
        const formula: unknown = range.formulas[i]![j];
        cells[from - row + i]![left - column + j] = {
          formula: isFormula(formula, value) ? formula : null,
          value,
          format: String(range.numberFormat[i]![j]),
        };
      }
  }
  return cells;
}
