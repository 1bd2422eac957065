import type { IWorksheetData } from "@univerjs/core";
import { mergeWorksheetSnapshotWithDefault } from "@univerjs/core";
import { RemoveDefinedNameMutation, SetDefinedNameMutation } from "@univerjs/engine-formula";
import { InsertSheetMutation, RemoveSheetMutation, SetWorksheetActiveOperation } from "@univerjs/sheets";
import { address } from "../address.ts";
import type { Book } from "../../xlsx/book.ts";
import { cells } from "./cells.ts";
import type { EmbeddedSheet } from "./runningSheet.ts";
import { fillLiveParts, startLiveParts } from "./live/liveParts.ts";
import { ReplaceKeptMutation } from "./workbookTexts.ts";
import { knownNames, nameParams } from "./names.ts";
import { printNames } from "./printSetup.ts";
import { whenCalculated } from "./whenCalculated.ts";
import { sheetData } from "./sheetData.ts";
import { inOneStep } from "./undoStep.ts";

/**
 * Shows a book's sheets in place of those that are there, with what the pane kept in it, as one undo step: undo brings the old ones back.
 *
 * @returns the addresses of cells that come from formulas and have another value here than the file has.
 */
export async function openBook(sheet: EmbeddedSheet, book: Book): Promise<readonly string[]> {
  const { workbook } = sheet;
  const unitId = workbook.getId();
  const old = workbook.getWorkbook().getSheetOrders().slice();
  const made = book.sheets.map(sheetData);
  const first = made.find(({ hidden }) => !hidden) ?? made[0];
  if (!first) throw new Error("A workbook has at least one sheet.");
  await startLiveParts(sheet, book);
  await inOneStep(sheet, (undo) => {
    for (const params of knownNames(sheet).all) undo.do({ id: RemoveDefinedNameMutation.id, params });
    for (const name of book.names ?? []) undo.do({ id: SetDefinedNameMutation.id, params: nameParams(unitId, name) });
    made.forEach((data, i) =>
      undo.do({
        id: InsertSheetMutation.id,
        params: {
          unitId,
          index: old.length + i,
          sheet: mergeWorksheetSnapshotWithDefault(data as Partial<IWorksheetData>),
        },
      }),
    );
    made.forEach(({ id }, i) => {
      const { name, print } = book.sheets[i]!;
      for (const params of printNames(unitId, { id, name }, print)) undo.do({ id: SetDefinedNameMutation.id, params });
    });
    undo.do({ id: SetWorksheetActiveOperation.id, params: { unitId, subUnitId: first.id } });
    for (const subUnitId of old) undo.do({ id: RemoveSheetMutation.id, params: { unitId, subUnitId } });
    undo.do({ id: ReplaceKeptMutation.id, params: { unitId, kept: book.kept ?? {} } });
  });
  made.forEach(({ id }, i) => fillLiveParts(sheet, id, book.sheets[i]!));
  await whenCalculated(sheet);
  return book.sheets.flatMap(({ name, rows }, i) => {
    const worksheet = workbook.getWorkbook().getSheetBySheetId(made[i]!.id);
    if (!worksheet) return [];
    const at = cells(sheet, worksheet);
    return rows.flatMap((row, r) =>
      row.flatMap((cell, c) =>
        !cell ||
        cell.value === null ||
        !(cell.formula ?? cell.shared ?? cell.spilled) ||
        same(cell.value, at.at(r, c).value)
          ? []
          : [address(name, r, c)],
      ),
    );
  });
}

// A result in the last bits of a double may differ between programs; a sum of many, in a few more.
function same(file: number | string | boolean, here: number | string | boolean): boolean {
  if (typeof file === "number" && typeof here === "number")
    return Math.abs(file - here) <= 1e-9 * Math.max(1, Math.abs(file));
  return file === here;
}
