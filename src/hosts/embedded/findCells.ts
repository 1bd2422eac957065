import type { Area } from "../host.ts";
import { cells } from "./cells.ts";
import type { EmbeddedSheet } from "./runningSheet.ts";

// More are found than anyone goes through; a search for "1" stays quick.
const MOST = 10_000;

/** The cells of all sheets that show a text or hold it in their formula, capitals or not: sheet by sheet, by rows, spilled cells included. */
export function findCells(sheet: EmbeddedSheet, text: string): readonly Area[] {
  const wanted = text.trim().toLowerCase();
  if (!wanted) return [];
  const found: Area[] = [];
  const seen = (value: unknown) => String(value).toLowerCase().includes(wanted);
  for (const worksheet of sheet.workbook.getSheets()) {
    const inner = worksheet.getSheet();
    if (inner.isSheetHidden()) continue;
    const at = cells(sheet, inner);
    const shown = worksheet.getDataRange().getDisplayValues();
    for (const { row, column } of at.shown()) {
      const { formula, value } = at.at(row, column);
      if (!seen(value) && !(formula && seen(formula)) && !seen(shown[row]?.[column] ?? "")) continue;
      found.push({ sheet: inner.getName(), row, column, rows: 1, columns: 1 });
      if (found.length === MOST) return found;
    }
  }
  return found;
}
