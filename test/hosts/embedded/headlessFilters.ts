import type { IAutoFilter } from "@univerjs/sheets-filter";
import {
  RemoveSheetFilterCommand,
  SetSheetFilterRangeCommand,
  SetSheetsFilterCriteriaCommand,
  SheetsFilterService,
  UniverSheetsFilterPlugin,
} from "@univerjs/sheets-filter";
import { ICommandService } from "@univerjs/core";
import { startPlugins } from "../../../src/hosts/embedded/live/startPlugins.ts";
import { exactFilters, knownFilterChanges } from "../../../src/hosts/embedded/mends/exactFilters.ts";
import type { EmbeddedSheet } from "../../../src/hosts/embedded/runningSheet.ts";

export interface HeadlessFilters {
  set(a1: string): void;
  /** Lets some values of a column through. */
  only(column: number, ...values: string[]): void;
  remove(): void;
  /** Its first row and column and its last, the columns by which it filters, and the rows that it hides. */
  now(): { area: number[]; columns: number[]; hidden: number[] } | null;
}

/** Filters in a sheet without a page, and what a user does with them. */
export async function startFilters(sheet: EmbeddedSheet): Promise<HeadlessFilters> {
  const injector = sheet.univer.__getInjector();
  const commands = injector.get(ICommandService);
  const worksheet = sheet.workbook.getActiveSheet();
  knownFilterChanges();
  await startPlugins(sheet, [[UniverSheetsFilterPlugin]], SetSheetFilterRangeCommand.id);
  exactFilters(injector);
  const at = { unitId: "book", subUnitId: worksheet.getSheetId() };
  const model = () => injector.get(SheetsFilterService).getFilterModel(at.unitId, at.subUnitId);
  return {
    set: (a1: string) =>
      commands.syncExecuteCommand(SetSheetFilterRangeCommand.id, { ...at, range: worksheet.getRange(a1).getRange() }),
    only: (col: number, ...filters: string[]) =>
      commands.syncExecuteCommand(SetSheetsFilterCriteriaCommand.id, {
        ...at,
        col,
        criteria: { colId: col, filters: { filters } },
      }),
    remove: () => commands.syncExecuteCommand(RemoveSheetFilterCommand.id, at),
    now() {
      const its = model()?.serialize();
      if (!its) return null;
      const { startRow, endRow, startColumn, endColumn } = its.ref;
      return {
        area: [startRow, startColumn, endRow, endColumn],
        columns: ((its as IAutoFilter).filterColumns ?? []).map(({ colId }) => colId),
        hidden: [...(its.cachedFilteredOut ?? [])].sort((a, b) => a - b),
      };
    },
  };
}
