import { ICommandService } from "@univerjs/core";
import type { IRange, Worksheet } from "@univerjs/core";
import { IActiveDirtyManagerService, SetFormulaCalculationResultMutation } from "@univerjs/engine-formula";
import {
  InsertSheetMutation,
  RemoveSheetMutation,
  SetWorksheetNameMutation,
  SheetsSelectionsService,
} from "@univerjs/sheets";
import type { FWorksheet } from "@univerjs/sheets/facade";
import type { Area, Host, HostCell } from "../host.ts";
import { occupiedCells } from "../occupiedCells.ts";
import { Receipts } from "../receipts.ts";
import { stepCells, type StepCells } from "../stepCells.ts";
import { blockAround } from "../blockAround.ts";
import { areaOf } from "./areas.ts";
import { cells, type Cells } from "./cells.ts";
import type { EmbeddedSheet } from "./runningSheet.ts";
import { errorReason } from "./errorReason.ts";
import { findSheet } from "./findSheet.ts";
import { keptData, keptIn, ReplaceKeptMutation } from "./workbookTexts.ts";
import { namedAreas, nameArea } from "./namedAreas.ts";
import { takeBack } from "./takeBack.ts";
import type { WriteRecord } from "./write.ts";
import { write } from "./write.ts";

/** The embedded sheet as a host of the pane. */
export function embeddedHost(sheet: EmbeddedSheet): Host {
  const { univer, workbook, calculation } = sheet;
  const injector = univer.__getInjector();
  const receipts = new Receipts<WriteRecord>();
  const named = (name: string): Worksheet => {
    const found = findSheet(workbook, name);
    if (!found) throw new Error(`There is no sheet named ${name}.`);
    return found;
  };
  const names = () => workbook.getSheets().map((s) => s.getSheetName());
  const selected = (): Area => {
    const range = injector.get(SheetsSelectionsService).getCurrentLastSelection()?.range;
    return {
      sheet: workbook.getActiveSheet().getSheetName(),
      ...areaOf(range ?? { startRow: 0, endRow: 0, startColumn: 0, endColumn: 0 }),
    };
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
      return {
        sheet: worksheet.getName(),
        row: edges.top,
        column: edges.left,
        rows: edges.bottom - edges.top + 1,
        columns: edges.right - edges.left + 1,
      };
    },
    async write(step, options) {
      const toWrite = stepCells(step, names());
      const record = await write(sheet, toWrite, options);
      return receipts.keep({ title: step.title, areas: toWrite.blocks.map(({ area }) => area) }, record);
    },
    async occupied(step) {
      await calculation.settled();
      return occupied(sheet, stepCells(step, names()));
    },
    takeBack: (written) => receipts.takeBack(written, (record) => takeBack(sheet, record)),
    async messageAt(name, row, column) {
      await calculation.settled();
      const worksheet = findSheet(workbook, name);
      return worksheet && errorReason(sheet, worksheet, row, column);
    },
    show: async (area) => show(sheet, workbook.getSheetBySheetId(named(area.sheet).getSheetId())!, area),
    namedAreas: async () => namedAreas(sheet),
    nameArea: async (name, area) => nameArea(sheet, name, area),
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

function occupied(sheet: EmbeddedSheet, { blocks }: StepCells): readonly string[] {
  const readers = new Map<string, Cells>();
  for (const { area } of blocks) {
    const worksheet = findSheet(sheet.workbook, area.sheet);
    if (worksheet) readers.set(area.sheet, cells(sheet, worksheet));
  }
  return occupiedCells(
    blocks,
    ({ area }, i, j) => readers.get(area.sheet)?.emptyAt(area.row + i, area.column + j) === false,
  );
}
