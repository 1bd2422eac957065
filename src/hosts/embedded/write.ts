import type { ICellData, IWorksheetData, Worksheet } from "@univerjs/core";
import { generateRandomId, mergeWorksheetSnapshotWithDefault } from "@univerjs/core";
import {
  InsertSheetMutation,
  SetRangeValuesMutation,
  SetWorksheetColumnCountMutation,
  SetWorksheetColWidthMutation,
  SetWorksheetRowCountMutation,
} from "@univerjs/sheets";
import { checkStep } from "../checkStep.ts";
import type { Area, BlockLayout, Host, WriteStep } from "../host.ts";
import { cells } from "./cells.ts";
import type { EmbeddedSheet } from "./runningSheet.ts";
import type { PlannedCell } from "./plannedCells.ts";
import { plannedCells } from "./plannedCells.ts";
import { findSheet } from "./findSheet.ts";
import { inOneStep, type UndoStep } from "./undoStep.ts";

// Small enough that a key pressed meanwhile is not felt to wait.
const CELLS_AT_ONCE = 5_000;

/** What is kept of a write so that it can be taken back. */
export interface WriteRecord {
  readonly areas: readonly Area[];
  readonly newSheets: readonly string[];
  readonly cells: readonly {
    readonly sheet: string;
    readonly row: number;
    readonly column: number;
    readonly content: string;
  }[];
  readonly widths: readonly { readonly sheet: string; readonly column: number; readonly width: number }[];
  readonly step: UndoStep;
}

/** Writes a step as one undo step. A stop half-way rolls back what was written. */
export async function write(
  sheet: EmbeddedSheet,
  step: WriteStep,
  options: Parameters<Host["write"]>[1] = {},
): Promise<WriteRecord> {
  const { workbook } = sheet;
  const wrong = checkStep(
    step,
    workbook.getSheets().map((s) => s.getSheetName()),
  );
  if (wrong) throw new Error(wrong);
  options.signal?.throwIfAborted();
  const blocks = step.blocks.map((block) => ({ block, planned: plannedCells(block) }));
  const of = blocks.reduce((sum, { planned }) => sum + planned.length, 0);
  const record = {
    areas: [] as Area[],
    newSheets: [] as string[],
    cells: [] as WriteRecord["cells"][number][],
    widths: [] as WriteRecord["widths"][number][],
  };
  const undoStep = await inOneStep(sheet, async (undo) => {
    let done = 0;
    for (const { block, planned } of blocks) {
      const target = targetSheet(sheet, undo, block, record.newSheets);
      makeRoom(undo, target, planned);
      for (let i = 0; i < planned.length; i += CELLS_AT_ONCE) {
        if (done > 0 && planned.length > CELLS_AT_ONCE) await new Promise((resolve) => setTimeout(resolve));
        const part = planned.slice(i, i + CELLS_AT_ONCE);
        undo.do({
          id: SetRangeValuesMutation.id,
          params: { unitId: target.getUnitId(), subUnitId: target.getSheetId(), cellValue: matrixOf(part) },
        });
        const now = cells(sheet, target);
        for (const { row, column } of part)
          record.cells.push({ sheet: target.getSheetId(), row, column, content: now.contentAt(row, column) });
        done += part.length;
        options.progress?.(done, of);
        options.signal?.throwIfAborted();
      }
      record.widths.push(...setWidths(undo, target, block));
      record.areas.push(areaOf(block));
    }
  });
  await sheet.calculation.settled();
  return { ...record, step: undoStep };
}

function targetSheet({ workbook }: EmbeddedSheet, undo: UndoStep, block: BlockLayout, newSheets: string[]): Worksheet {
  const there = findSheet(workbook, block.sheet);
  if (there) return there;
  const id = generateRandomId();
  const frozen = block.frozenRows ?? 0;
  const plan: Partial<IWorksheetData> = {
    id,
    name: block.sheet,
    ...(frozen > 0 && { freeze: { startRow: frozen, startColumn: -1, xSplit: 0, ySplit: frozen } }),
  };
  undo.do({
    id: InsertSheetMutation.id,
    params: {
      unitId: workbook.getId(),
      index: workbook.getSheets().length,
      sheet: mergeWorksheetSnapshotWithDefault(plan),
    },
  });
  newSheets.push(id);
  return findSheet(workbook, block.sheet)!;
}

function makeRoom(undo: UndoStep, target: Worksheet, planned: readonly PlannedCell[]): void {
  const at = { unitId: target.getUnitId(), subUnitId: target.getSheetId() };
  const rowCount = planned.reduce((most, { row }) => Math.max(most, row + 1), 0);
  const columnCount = planned.reduce((most, { column }) => Math.max(most, column + 1), 0);
  if (rowCount > target.getRowCount()) undo.do({ id: SetWorksheetRowCountMutation.id, params: { ...at, rowCount } });
  if (columnCount > target.getColumnCount())
    undo.do({ id: SetWorksheetColumnCountMutation.id, params: { ...at, columnCount } });
}

function setWidths(
  undo: UndoStep,
  target: Worksheet,
  { column, widths = [] }: BlockLayout,
): WriteRecord["widths"][number][] {
  const sheet = target.getSheetId();
  return widths.flatMap((width, i) => {
    if (width === null) return [];
    const at = column + i;
    const range = { startRow: 0, endRow: target.getRowCount() - 1, startColumn: at, endColumn: at };
    undo.do({
      id: SetWorksheetColWidthMutation.id,
      params: { unitId: target.getUnitId(), subUnitId: sheet, ranges: [range], colWidth: width },
    });
    return [{ sheet, column: at, width }];
  });
}

function matrixOf(planned: readonly PlannedCell[]): Record<number, Record<number, ICellData>> {
  const matrix: Record<number, Record<number, ICellData>> = {};
  for (const { row, column, data } of planned) (matrix[row] ??= {})[column] = data;
  return matrix;
}

function areaOf({ sheet, row, column, cells: rows, spill }: BlockLayout): Area {
  const top = Math.min(0, spill?.row ?? 0);
  const left = Math.min(0, spill?.column ?? 0);
  const bottom = Math.max(rows.length, spill ? spill.row + spill.rows : 0);
  const right = Math.max(rows[0]?.length ?? 0, spill ? spill.column + spill.columns : 0);
  return { sheet, row: row + top, column: column + left, rows: bottom - top, columns: right - left };
}
