import { BooleanNumber, ICommandService, LocaleService, LocaleType, mergeLocales } from "@univerjs/core";
import { SheetsRenderService } from "@univerjs/preset-sheets-core";
import type { IAutoFilter } from "@univerjs/sheets-filter";
import { SheetsFilterService, SmartToggleSheetsFilterCommand, UniverSheetsFilterPlugin } from "@univerjs/sheets-filter";
import words from "@univerjs/sheets-filter/locale/en-US";
import { UniverSheetsFilterUIPlugin } from "@univerjs/sheets-filter-ui";
import "@univerjs/sheets-filter-ui/lib/index.css";
import panelWords from "@univerjs/sheets-filter-ui/locale/en-US";
import type { Filter, FilterColumn } from "../../../xlsx/book.ts";
import { rowsFilteredOut } from "../../../xlsx/filteredRows.ts";
import { areaOf, rangeOf } from "../areas.ts";
import { exactFilters, knownFilterChanges, SET_FILTER } from "../mends/exactFilters.ts";
import type { EmbeddedSheet } from "../runningSheet.ts";
import "./filters.css";
import type { LivePart } from "./livePart.ts";
import { startPlugins } from "./startPlugins.ts";

type Columns = NonNullable<IAutoFilter["filterColumns"]>;

/** Puts filters into a running sheet: one a sheet, with an arrow on each heading. Nothing is sorted, for that moves formulas without their references. */
export async function startFilters(sheet: EmbeddedSheet): Promise<LivePart<Filter>> {
  const injector = sheet.univer.__getInjector();
  injector.get(LocaleService).load({ [LocaleType.EN_US]: mergeLocales(words, panelWords) });
  knownFilterChanges();
  await startPlugins(
    sheet,
    [[UniverSheetsFilterPlugin], [UniverSheetsFilterUIPlugin]],
    SmartToggleSheetsFilterCommand.id,
  );
  exactFilters(injector);
  injector.get(SheetsRenderService).registerSkeletonChangingMutations(SET_FILTER);
  const commands = injector.get(ICommandService);
  const service = injector.get(SheetsFilterService);
  return {
    put(unitId, subUnitId, [filter], book) {
      const worksheet = sheet.workbook.getWorkbook().getSheetBySheetId(subUnitId);
      if (!filter || !worksheet) return;
      const range = rangeOf(filter.area);
      // One of whole columns ends with the sheet here.
      const ref = { ...range, endRow: Math.min(range.endRow, worksheet.getRowCount() - 1) };
      // The rows that the file hides, whatever the criteria would hide now.
      const state = { ref, filterColumns: filter.columns.map(criteriaOf), cachedFilteredOut: rowsFilteredOut(book) };
      commands.syncExecuteCommand(SET_FILTER, { unitId, subUnitId, state }, { onlyLocal: true });
    },
    of(worksheet, left) {
      const model = service.getFilterModel(worksheet.getUnitId(), worksheet.getSheetId());
      if (!model) return [];
      const { ref, filterColumns = [] } = model.serialize();
      return [
        {
          area: areaOf(ref),
          columns: filterColumns.flatMap((one) => {
            const column = columnOf(one);
            if (!column) left.add(`by which colors ${worksheet.getName()} is filtered (what it hides stays hidden)`);
            return column ?? [];
          }),
        },
      ];
    },
  };
}

function criteriaOf({ column, values, blank, conditions, and }: FilterColumn): object {
  if (!conditions) return { colId: column, filters: { ...(blank && { blank }), filters: [...(values ?? [])] } };
  const isNumber = (text: string) => text.trim() !== "" && Number.isFinite(Number(text));
  return {
    colId: column,
    customFilters: {
      ...(and && { and: BooleanNumber.TRUE }),
      customFilters: conditions.map(({ operator, value: val }) => {
        const by = operator ?? (isNumber(val) ? "equal" : undefined);
        return { ...(by && { operator: by }), val };
      }),
    },
  };
}

function columnOf({ colId: column, filters, customFilters }: Columns[number]): FilterColumn | null {
  if (filters)
    return { column, values: (filters.filters ?? []).map(String), ...(filters.blank && { blank: true as const }) };
  if (!customFilters) return null;
  return {
    column,
    conditions: customFilters.customFilters.map(({ operator, val }) => ({
      ...(operator && (operator as string) !== "equal" && { operator }),
      value: String(val),
    })),
    ...(customFilters.and === BooleanNumber.TRUE && { and: true as const }),
  };
}
