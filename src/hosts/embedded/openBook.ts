import type { IWorksheetData } from "@univerjs/core";
import { mergeWorksheetSnapshotWithDefault } from "@univerjs/core";
import { RemoveDefinedNameMutation, SetDefinedNameMutation } from "@univerjs/engine-formula";
import { RemoveSheetMutation, SetWorksheetActiveOperation } from "@univerjs/sheets";
import { address } from "../address.ts";
import type { Book } from "../../xlsx/book.ts";
import { cells } from "./cells.ts";
import type { EmbeddedSheet } from "./runningSheet.ts";
import { fillLiveParts, liveParts, startLiveParts } from "./live/liveParts.ts";
import { ReplaceKeptMutation } from "./workbookTexts.ts";
import { knownNames, nameParams } from "./names.ts";
import { printNames } from "./printSetup.ts";
import { whenCalculated } from "./whenCalculated.ts";
import { sheetData } from "./sheetData.ts";
import { turns } from "./turns.ts";
import { inOneStep } from "./undoStep.ts";

/** How an opening is followed and stopped. Stopped half-way it leaves the sheets as they were. */
export interface Opening {
  readonly signal?: AbortSignal;
  /** Cells that stand in the sheets, of all. */
  progress?(done: number, of: number): void;
}

/**
 * Shows a book's sheets in place of those that are there, with what the pane kept in it, as one undo step: undo brings the old ones back.
 *
 * @returns the addresses of cells that come from formulas and have another value here than the file has.
 */
export async function openBook(
  sheet: EmbeddedSheet,
  book: Book,
  { signal, progress }: Opening = {},
): Promise<readonly string[]> {
  const { workbook, calculation } = sheet;
  const unitId = workbook.getId();
  const old = workbook.getWorkbook().getSheetOrders().slice();
  const turn = turns(signal);
  await startLiveParts(sheet, book);
  const made: ReturnType<typeof sheetData>[] = [];
  for (const one of book.sheets) {
    made.push(sheetData(one, liveParts(sheet)));
    await turn();
  }
  const first = made.find(({ hidden }) => !hidden) ?? made[0];
  if (!first) throw new Error("A workbook has at least one sheet.");
  const of = book.sheets.reduce((sum, { rows }) => sum + rows.reduce((cells, row) => cells + row.length, 0), 0);
  let done = 0;
  await inOneStep(sheet, async (undo) => {
    for (const params of knownNames(sheet).all) undo.do({ id: RemoveDefinedNameMutation.id, params });
    for (const name of book.names ?? []) undo.do({ id: SetDefinedNameMutation.id, params: nameParams(unitId, name) });
    for (const [i, { cellData, ...data }] of made.entries()) {
      const empty = mergeWorksheetSnapshotWithDefault(data as Partial<IWorksheetData>);
      const params = { unitId, index: old.length + i, sheet: { ...empty, cellData: cellData ?? {} } };
      await undo.bring(params, (cells) => {
        progress?.((done += cells), of);
        return turn();
      });
    }
    made.forEach(({ id }, i) => {
      const { name, print } = book.sheets[i]!;
      for (const params of printNames(unitId, { id, name }, print)) undo.do({ id: SetDefinedNameMutation.id, params });
    });
    undo.do({ id: SetWorksheetActiveOperation.id, params: { unitId, subUnitId: first.id } });
    // The engine looks through every cell that there is whenever a sheet goes.
    for (const subUnitId of old) {
      await turn();
      undo.do({ id: RemoveSheetMutation.id, params: { unitId, subUnitId } });
    }
    undo.do({ id: ReplaceKeptMutation.id, params: { unitId, kept: book.kept ?? {} } });
  });
  made.forEach(({ id }, i) => fillLiveParts(sheet, id, book.sheets[i]!));
  calculation.recalculate(
    made.map(({ id, rowCount = 1, columnCount = 1 }) => ({
      unitId,
      sheetId: id,
      range: { startRow: 0, endRow: rowCount - 1, startColumn: 0, endColumn: columnCount - 1 },
    })),
  );
  await whenCalculated(sheet);
  const others: string[] = [];
  // It is open by now, and there is nothing to stop.
  const rest = turns();
  for (const [i, { name, rows }] of book.sheets.entries()) {
    const worksheet = workbook.getWorkbook().getSheetBySheetId(made[i]!.id);
    if (!worksheet) continue;
    const at = cells(sheet, worksheet);
    for (const [r, row] of rows.entries()) {
      await rest();
      row.forEach((cell, c) => {
        if (!cell || cell.value === null || !(cell.formula ?? cell.shared ?? cell.spilled)) return;
        if (!same(cell.value, at.at(r, c).value)) others.push(address(name, r, c));
      });
    }
  }
  await rest();
  return others;
}

// A result in the last bits of a double may differ between programs; a sum of many, in a few more.
function same(file: number | string | boolean, here: number | string | boolean): boolean {
  if (typeof file === "number" && typeof here === "number")
    return Math.abs(file - here) <= 1e-9 * Math.max(1, Math.abs(file));
  return file === here;
}
