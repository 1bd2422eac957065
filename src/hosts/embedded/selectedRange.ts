import type { IRange } from "@univerjs/core";
import { SheetsSelectionsService } from "@univerjs/sheets";
import type { EmbeddedSheet } from "./runningSheet.ts";

/** The selection of the active sheet where it holds several cells, else null. Whole rows and columns end where the sheet does. */
export function selectedRange({ univer, workbook }: EmbeddedSheet): IRange | null {
  const range = univer.__getInjector().get(SheetsSelectionsService).getCurrentLastSelection()?.range;
  if (!range) return null;
  const worksheet = workbook.getActiveSheet().getSheet();
  const whole = (edge: number, last: number) => (Number.isFinite(edge) && edge >= 0 ? Math.min(edge, last) : last);
  const startRow = Number.isFinite(range.startRow) ? range.startRow : 0;
  const startColumn = Number.isFinite(range.startColumn) ? range.startColumn : 0;
  const endRow = whole(range.endRow, worksheet.getRowCount() - 1);
  const endColumn = whole(range.endColumn, worksheet.getColumnCount() - 1);
  const merge = worksheet.getMergedCell(startRow, startColumn);
  const single =
    (startRow === endRow && startColumn === endColumn) || (merge?.endRow === endRow && merge.endColumn === endColumn);
  return single ? null : { startRow, startColumn, endRow, endColumn };
}
