import type { IWorkbookData } from "@univerjs/core";
import type { Book } from "../../xlsx/book.ts";
import { sheetData } from "./sheetData.ts";

/** A book as a workbook that the embedded sheet starts with. */
export function workbookData({ title, sheets }: Book): Partial<IWorkbookData> {
  const data = sheets.map(sheetData);
  return { id: "longpoint", name: title, sheetOrder: data.map(({ id }) => id), sheets: Object.fromEntries(data.map((one) => [one.id, one])) };
}
