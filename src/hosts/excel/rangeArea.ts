import type { Area } from "../host.ts";

/** What must be loaded of a range to know where it is. */
export const PLACE = "rowIndex,columnIndex,rowCount,columnCount";

/** The same with the range's sheet. */
export const PLACE_IN_SHEET = `${PLACE},worksheet/name`;

/** Where a loaded range is, on the sheet that is named for it. */
export function areaOn(sheet: string, { rowIndex, columnIndex, rowCount, columnCount }: Excel.Range): Area {
  return { sheet, row: rowIndex, column: columnIndex, rows: rowCount, columns: columnCount };
}

/** Where a range is that was loaded with its sheet. */
export function areaOf(range: Excel.Range): Area {
  return areaOn(range.worksheet.name, range);
}
