import type { ICellData, IWorksheetData, Worksheet } from "@univerjs/core";
import { generateRandomId, mergeWorksheetSnapshotWithDefault } from "@univerjs/core";
import {
  InsertSheetMutation,
  SetRangeValuesMutation,
  SetWorksheetColumnCountMutation,
  SetWorksheetColWidthMutation,
  SetWorksheetRowCountMutation,
} from "@univerjs/sheets";
import type { Contents } from "../changedSince.ts";
import type { Host } from "../host.ts";
import { cellsToWrite, type PlacedCell } from "../cellsToWrite.ts";
import type { BlockCells, StepCells } from "../stepCells.ts";
import { cells } from "./cells.ts";
import { cellData } from "./cellStyle.ts";
import { findSheet } from "./findSheet.ts";
import type { EmbeddedSheet } from "./runningSheet.ts";
import { turns } from "./turns.ts";
import { inOneStep, type UndoStep } from "./undoStep.ts";

// Small enough that a key pressed meanwhile is not felt to wait.
const CELLS_AT_ONCE = 5_000;

/** What is kept of a write so that it can be taken back. */
export interface WriteRecord {
  /** Each block with its sheet's id, for the user may rename the sheet, and what stood in it when all was written. */
  readonly blocks: readonly { readonly block: BlockCells; readonly sheetId: string; readonly after: Contents }[];
  readonly newSheets: readonly string[];
  readonly step: UndoStep;
}

/** Writes a plan as one undo step. A stop half-way rolls back what was written. */
export async function write(
  sheet: EmbeddedSheet,
  { newSheets, blocks }: StepCells,
  { signal, progress }: Parameters<Host["write"]>[1] = {},
): Promise<WriteRecord> {
  signal?.throwIfAborted();
  const planned = blocks.map((block) => ({ block, parts: partsOf(cellsToWrite(block)) }));
  const of = planned.reduce((sum, { parts }) => sum + parts.flat().length, 0);
  const made: string[] = [];
  const turn = turns(signal);
  const step = await inOneStep(sheet, async (undo) => {
    for (const one of newSheets) {
      made.push(insertSheet(sheet, undo, one));
      await turn();
    }
    let done = 0;
    for (const { block, parts } of planned) {
      const target = findSheet(sheet.workbook, block.area.sheet)!;
      const at = { unitId: target.getUnitId(), subUnitId: target.getSheetId() };
      makeRoom(undo, target, block);
      for (const part of parts) {
        await turn();
        undo.do({ id: SetRangeValuesMutation.id, params: { ...at, cellValue: matrixOf(part) } });
        done += part.length;
        progress?.(done, of);
        signal?.throwIfAborted();
      }
      await turn();
      setWidths(undo, target, block);
    }
  });
  const written = blocks.map((block) => {
    const target = findSheet(sheet.workbook, block.area.sheet)!;
    return { block, sheetId: target.getSheetId(), after: contentsOf(sheet, target, block) };
  });
  await sheet.calculation.settled();
  return { blocks: written, newSheets: made, step };
}

/** What stands in the cells of a block's area. */
export function contentsOf(sheet: EmbeddedSheet, worksheet: Worksheet, { area }: BlockCells): Contents {
  const at = cells(sheet, worksheet);
  return Array.from({ length: area.rows }, (_, i) =>
    Array.from({ length: area.columns }, (__, j) => at.contentAt(area.row + i, area.column + j)),
  );
}

function partsOf(all: readonly PlacedCell[]): PlacedCell[][] {
  return Array.from({ length: Math.ceil(all.length / CELLS_AT_ONCE) }, (_, k) =>
    all.slice(k * CELLS_AT_ONCE, (k + 1) * CELLS_AT_ONCE),
  );
}

function insertSheet(
  { workbook }: EmbeddedSheet,
  undo: UndoStep,
  { name, frozenRows }: StepCells["newSheets"][number],
): string {
  const id = generateRandomId();
  const data: Partial<IWorksheetData> = {
    id,
    name,
    ...(frozenRows > 0 && { freeze: { startRow: frozenRows, startColumn: -1, xSplit: 0, ySplit: frozenRows } }),
  };
  undo.do({
    id: InsertSheetMutation.id,
    params: {
      unitId: workbook.getId(),
      index: workbook.getSheets().length,
      sheet: mergeWorksheetSnapshotWithDefault(data),
    },
  });
  return id;
}

function makeRoom(undo: UndoStep, target: Worksheet, { area }: BlockCells): void {
  const at = { unitId: target.getUnitId(), subUnitId: target.getSheetId() };
  const rowCount = area.row + area.rows;
  const columnCount = area.column + area.columns;
  if (rowCount > target.getRowCount()) undo.do({ id: SetWorksheetRowCountMutation.id, params: { ...at, rowCount } });
  if (columnCount > target.getColumnCount())
    undo.do({ id: SetWorksheetColumnCountMutation.id, params: { ...at, columnCount } });
}

// One change for all, for the page lays the sheet out anew after each.
function setWidths(undo: UndoStep, target: Worksheet, { widths }: BlockCells): void {
  if (widths.length === 0) return;
  const all = { startRow: 0, endRow: target.getRowCount() - 1 };
  undo.do({
    id: SetWorksheetColWidthMutation.id,
    params: {
      unitId: target.getUnitId(),
      subUnitId: target.getSheetId(),
      ranges: widths.map(({ column }) => ({ ...all, startColumn: column, endColumn: column })),
      colWidth: Object.fromEntries(widths.map(({ column, width }) => [column, width])),
    },
  });
}

function matrixOf(part: readonly PlacedCell[]): Record<number, Record<number, ICellData>> {
  const matrix: Record<number, Record<number, ICellData>> = {};
  for (const { row, column, cell } of part) (matrix[row] ??= {})[column] = cellData(cell);
  return matrix;
}
