import type { WorksheetFunction } from "../../registry/worksheetFunction.ts";
import type { Book } from "../../xlsx/book.ts";
import { bookOf } from "./bookOf.ts";
import { embeddedSheet } from "./embeddedSheet.ts";
import { engineParts } from "./engineParts.ts";
import { whenCalculated } from "./whenCalculated.ts";
import { workbookData } from "./workbookData.ts";

/** A book with every formula's result in its cell, as the embedded sheet calculates it. Runs without a page. */
export async function calculated(book: Book, functions: readonly WorksheetFunction[]): Promise<Book> {
  const sheet = embeddedSheet(engineParts, functions, workbookData(book));
  try {
    const { workbook, calculation } = sheet;
    // Without a page nothing asks for the first calculation.
    calculation.recalculate(
      workbook
        .getWorkbook()
        .getSheets()
        .map((one) => ({
          unitId: workbook.getId(),
          sheetId: one.getSheetId(),
          range: { startRow: 0, endRow: one.getRowCount() - 1, startColumn: 0, endColumn: one.getColumnCount() - 1 },
        })),
    );
    await whenCalculated(sheet);
    return bookOf(sheet, book.title).book;
  } finally {
    sheet.univer.dispose();
  }
}
