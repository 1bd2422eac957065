import type { Worksheet } from "@univerjs/core";
import { RemoveSheetMutation, SetRangeValuesMutation, SetWorksheetColWidthMutation } from "@univerjs/sheets";
import { address } from "../address.ts";
import { cells } from "./cells.ts";
import type { EmbeddedSheet } from "./runningSheet.ts";
import { inOneStep } from "./undoStep.ts";
import type { WriteRecord } from "./write.ts";

/**
 * Puts back what stood before a write, as one undo step, or names the cells that were edited since and changes nothing.
 *
 * Anything else that the user put on a sheet which the write made counts as edited: it would be lost with the sheet.
 */
export async function takeBack(sheet: EmbeddedSheet, record: WriteRecord): Promise<readonly string[]> {
  const { workbook, calculation } = sheet;
  if (record.step.undone) return [];
  const alive = new Map(
    workbook
      .getWorkbook()
      .getSheets()
      .map((s) => [s.getSheetId(), s]),
  );
  const edited = editedSince(sheet, record, alive);
  if (edited.length) return edited;

  await inOneStep(sheet, (undo) => {
    for (const change of record.step.changesBack) {
      const { subUnitId } = change.params as { subUnitId: string };
      const made = record.newSheets.includes(subUnitId);
      if (!alive.has(subUnitId) || (made && change.id !== RemoveSheetMutation.id)) continue;
      // Rows and columns that the write added stay: others may use them by now. A width that the user changed stays too.
      if (change.id === SetRangeValuesMutation.id || change.id === RemoveSheetMutation.id) undo.do(change);
      else if (
        change.id === SetWorksheetColWidthMutation.id &&
        widthAsWritten(record, change.params as WidthChange, alive.get(subUnitId)!)
      )
        undo.do(change);
    }
  });
  await calculation.settled();
  return [];
}

type Sheets = ReadonlyMap<string, Worksheet>;

function editedSince(sheet: EmbeddedSheet, record: WriteRecord, alive: Sheets): string[] {
  const edited = new Set<string>();
  const expected = new Map<string, Set<string>>();
  const readers = new Map([...alive].map(([id, worksheet]) => [id, cells(sheet, worksheet)]));
  const last = new Map(record.cells.map((cell) => [`${cell.sheet}/${cell.row}/${cell.column}`, cell]));
  for (const { sheet: id, row, column, content } of last.values()) {
    const worksheet = alive.get(id);
    if (!worksheet) continue;
    expected.set(id, (expected.get(id) ?? new Set()).add(`${row}/${column}`));
    if (readers.get(id)!.contentAt(row, column) !== content) edited.add(address(worksheet.getName(), row, column));
  }
  for (const id of record.newSheets) {
    const worksheet = alive.get(id);
    if (!worksheet) continue;
    for (const { row, column } of readers.get(id)!.filled())
      if (!expected.get(id)?.has(`${row}/${column}`)) edited.add(address(worksheet.getName(), row, column));
  }
  return [...edited];
}

interface WidthChange {
  readonly subUnitId: string;
  readonly ranges: readonly { readonly startColumn: number }[];
}

function widthAsWritten(record: WriteRecord, { subUnitId, ranges }: WidthChange, worksheet: Worksheet): boolean {
  const column = ranges[0]!.startColumn;
  const written = record.widths.findLast((width) => width.sheet === subUnitId && width.column === column);
  return written?.width === worksheet.getColumnWidth(column);
}
