import type { IWorkbookData } from "@univerjs/core";
import type { Book } from "../../xlsx/book.ts";
import { keptData } from "./workbookTexts.ts";
import { nameParams } from "./names.ts";
import { printNames } from "./printSetup.ts";
import { sheetData } from "./sheetData.ts";

const ID = "longpoint";
// Where the sheet's maker keeps names in a workbook's data.
const NAMES = "SHEET_DEFINED_NAME_PLUGIN";

/** A book as a workbook that the embedded sheet starts with. */
export function workbookData({ title, sheets, names = [], kept = {} }: Book): Partial<IWorkbookData> {
  const data = sheets.map((sheet) => sheetData(sheet));
  const all = [
    ...names.map((name) => nameParams(ID, name)),
    ...sheets.flatMap(({ name, print }, i) => printNames(ID, { id: data[i]!.id, name }, print)),
  ];
  const named = Object.fromEntries(all.map((params) => [params.id, params]));
  return {
    id: ID,
    name: title,
    resources: [{ name: NAMES, data: JSON.stringify(named) }],
    custom: keptData(kept),
    sheetOrder: data.map(({ id }) => id),
    sheets: Object.fromEntries(data.map((one) => [one.id, one])),
  };
}
