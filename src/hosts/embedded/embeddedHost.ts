import { ICommandService } from "@univerjs/core";
import type { IRange, Worksheet } from "@univerjs/core";
import {
  ERROR_TYPE_SET,
  IActiveDirtyManagerService,
  SetFormulaCalculationResultMutation,
} from "@univerjs/engine-formula";
import {
  InsertSheetMutation,
  RemoveSheetMutation,
  SetWorksheetNameMutation,
  SheetsSelectionsService,
} from "@univerjs/sheets";
import type { FWorksheet } from "@univerjs/sheets/facade";
import { address } from "../address.ts";
import { checkStep } from "../checkStep.ts";
import type { Area, Host, HostCell, WriteStep, Written } from "../host.ts";
import { blockAround } from "./blockAround.ts";
import { cells } from "./cells.ts";
import type { EmbeddedSheet } from "./runningSheet.ts";
import { findSheet } from "./findSheet.ts";
import { keptData, keptIn, ReplaceKeptMutation } from "./workbookTexts.ts";
import { plannedCells } from "./plannedCells.ts";
import { takeBack } from "./takeBack.ts";
import type { WriteRecord } from "./write.ts";
import { write } from "./write.ts";

/** The embedded sheet as a host of the pane. */
export function embeddedHost(sheet: EmbeddedSheet): Host {
  const { univer, workbook, calculation } = sheet;
  const injector = univer.__getInjector();
  const records = new WeakMap<Written, WriteRecord>();
  const named = (name: string): Worksheet => {
    const found = findSheet(workbook, name);
    if (!found) throw new Error(`There is no sheet named ${name}.`);
    return found;
  };
  const names = () => workbook.getSheets().map((s) => s.getSheetName());
  const selected = (): Area => {
    const range = injector.get(SheetsSelectionsService).getCurrentLastSelection()?.range;
    return areaOf(
      workbook.getActiveSheet().getSheet(),
      range ?? { startRow: 0, endRow: 0, startColumn: 0, endColumn: 0 },
    );
  };

  return {
    selection: async () => selected(),
    onSelection(listener) {
      const subscription = injector
        .get(SheetsSelectionsService)
        .selectionChanged$.subscribe((selections) => selections?.length && listener(selected()));
      return () => subscription.unsubscribe();
    },
    onChange(listener) {
      // All that a formula may hang on (cells, rows, columns and sheets that come, go or move), new results, and the names of the sheets.
      const dirty = injector.get(IActiveDirtyManagerService);
      const others = new Set<string>([
        SetFormulaCalculationResultMutation.id,
        InsertSheetMutation.id,
        RemoveSheetMutation.id,
        SetWorksheetNameMutation.id,
      ]);
      const listening = injector
        .get(ICommandService)
        .onCommandExecuted((command) => void ((dirty.get(command.id) || others.has(command.id)) && listener()));
      return () => listening.dispose();
    },
    sheets: async () => names(),
    async read(area) {
      await calculation.settled();
      const at = cells(sheet, named(area.sheet));
      return Array.from({ length: area.rows }, (_, i) =>
        Array.from({ length: area.columns }, (_, j): HostCell => at.at(area.row + i, area.column + j)),
      );
    },
    async blockAround(area) {
      await calculation.settled();
      const worksheet = named(area.sheet);
      const at = cells(sheet, worksheet);
      const edges = blockAround(
        { top: area.row, left: area.column, bottom: area.row + area.rows - 1, right: area.column + area.columns - 1 },
        (row, column) => !at.emptyAt(row, column),
      );
      return areaOf(worksheet, {
        startRow: edges.top,
        endRow: edges.bottom,
        startColumn: edges.left,
        endColumn: edges.right,
      });
    },
    async write(step, options) {
      const record = await write(sheet, step, options);
      const written: Written = { title: step.title, areas: record.areas };
      records.set(written, record);
      return written;
    },
    async occupied(step) {
      await calculation.settled();
      return occupied(sheet, step, names());
    },
    async takeBack(written) {
      const record = records.get(written);
      if (!record) return [];
      // Gone at once: a second press before the sheet has calculated would take what the first put back for edits.
      records.delete(written);
      const keep = () => void records.set(written, record);
      const edited = await takeBack(sheet, record).catch((fault: unknown) => {
        keep();
        throw fault;
      });
      if (edited.length) keep();
      return edited;
    },
    async messageAt(name, row, column) {
      await calculation.settled();
      return messageAt(sheet, name, row, column);
    },
    show: async (area) => show(sheet, workbook.getSheetBySheetId(named(area.sheet).getSheetId())!, area),
    async remember(key, text) {
      workbook.setCustomMetadata({ ...workbook.getCustomMetadata(), ...keptData({ [key]: text }) });
    },
    recall: async (key) => new Map(Object.entries(keptIn(workbook.getWorkbook()))).get(key) ?? null,
    onOtherWorkbook(listener) {
      const listening = injector
        .get(ICommandService)
        .onCommandExecuted(({ id }) => void (id === ReplaceKeptMutation.id && listener()));
      return () => listening.dispose();
    },
  };
}

function messageAt(sheet: EmbeddedSheet, name: string, row: number, column: number): string | null {
  const worksheet = findSheet(sheet.workbook, name);
  if (!worksheet) return null;
  const { formula, value } = cells(sheet, worksheet).at(row, column);
  if (formula === null || !ERROR_TYPE_SET.has(value as never)) return null;
  return sheet.messages.at({ unit: sheet.workbook.getId(), sheet: worksheet.getSheetId(), row, column });
}

/** What a sheet can do besides when it is on a page. */
type OnPage = FWorksheet & { getVisibleRange?(): IRange | null; scrollToCell?(row: number, column: number): void };

function show({ workbook }: EmbeddedSheet, worksheet: OnPage, area: Area): void {
  const turned = worksheet.getSheetId() !== workbook.getActiveSheet().getSheetId();
  if (turned) workbook.setActiveSheet(worksheet);
  worksheet.setActiveRange(worksheet.getRange(area.row, area.column, area.rows, area.columns));
  // What is seen already does not jump; a sheet just turned to has not been drawn yet and cannot tell.
  const seen = turned ? null : worksheet.getVisibleRange?.();
  if (!seen || !holds(seen, area)) worksheet.scrollToCell?.(area.row, area.column);
}

function holds({ startRow, endRow, startColumn, endColumn }: IRange, { row, column }: Area): boolean {
  return row >= startRow && row <= endRow && column >= startColumn && column <= endColumn;
}

function occupied(sheet: EmbeddedSheet, step: WriteStep, names: readonly string[]): readonly string[] {
  const wrong = checkStep(step, names);
  if (wrong) throw new Error(wrong);
  const filled = new Set<string>();
  for (const block of step.blocks) {
    const worksheet = findSheet(sheet.workbook, block.sheet);
    if (!worksheet) continue;
    const at = cells(sheet, worksheet);
    for (const { row, column } of plannedCells(block))
      if (!at.emptyAt(row, column)) filled.add(address(worksheet.getName(), row, column));
  }
  return [...filled];
}

function areaOf(worksheet: Worksheet, { startRow, endRow, startColumn, endColumn }: IRange): Area {
  return {
    sheet: worksheet.getName(),
    row: startRow,
    column: startColumn,
    rows: endRow - startRow + 1,
    columns: endColumn - startColumn + 1,
  };
}
