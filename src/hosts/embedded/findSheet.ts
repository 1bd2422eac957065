import type { Worksheet } from "@univerjs/core";
import type { FWorkbook } from "@univerjs/sheets/facade";

/** The sheet of that name, capitals or not (a workbook never has two such names), or null. */
export function findSheet(workbook: FWorkbook, name: string): Worksheet | null {
  const sheets = workbook.getWorkbook().getSheets();
  return (
    sheets.find((sheet) => sheet.getName() === name) ??
    sheets.find((sheet) => sheet.getName().toLowerCase() === name.toLowerCase()) ??
    null
  );
}
