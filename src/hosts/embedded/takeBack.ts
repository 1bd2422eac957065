import type { Worksheet } from "@univerjs/core";
import { RemoveSheetMutation, SetRangeValuesMutation, SetWorksheetColWidthMutation } from "@univerjs/sheets";
import { changedSince } from "../changedSince.ts";
import { cells } from "./cells.ts";
import type { EmbeddedSheet } from "./runningSheet.ts";
import { inOneStep } from "./undoStep.ts";
import { contentsOf, type WriteRecord } from "./write.ts";

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
  const edited = changedSince(
    record.blocks.map(({ block, sheetId, after }) => {
      const worksheet = alive.get(sheetId);
      return {
        block,
        after,
        now: worksheet ? { sheet: worksheet.getName(), contents: contentsOf(sheet, worksheet, block) } : null,
      };
    }),
    record.newSheets.flatMap((id) => {
      const worksheet = alive.get(id);
      return worksheet ? [{ sheet: worksheet.getName(), filled: cells(sheet, worksheet).filled() }] : [];
    }),
  );
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

interface WidthChange {
  readonly subUnitId: string;
  readonly ranges: readonly { readonly startColumn: number }[];
}

function widthAsWritten(record: WriteRecord, { subUnitId, ranges }: WidthChange, worksheet: Worksheet): boolean {
  const column = ranges[0]!.startColumn;
  const widths = record.blocks.flatMap(({ block, sheetId }) => (sheetId === subUnitId ? block.widths : []));
  const written = widths.findLast((width) => width.column === column);
  return written?.width === worksheet.getColumnWidth(column);
}
