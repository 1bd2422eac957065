import type { Injector } from "@univerjs/core";
import type { FunctionVariantType } from "@univerjs/engine-formula";
import {
  ErrorType,
  FormulaDataModel,
  IFormulaRuntimeService,
  SetFormulaCalculationNotificationMutation,
} from "@univerjs/engine-formula";
import { ICommandService } from "@univerjs/core";
import type { IRange } from "@univerjs/core";
import { SheetPermissionCheckController } from "@univerjs/sheets";
import { TriggerCalculationController } from "@univerjs/sheets-formula";
import { meets } from "./areas.ts";
import type { Calculation } from "./calculation.ts";
import type { Messages } from "./messages.ts";

/** Tells {@link Messages} when a cell's whole formula has its result. The engine has no event for it, so its setter is wrapped. */
export function watchResults(injector: Injector, messages: Messages): void {
  const runtime = injector.get(IFormulaRuntimeService);
  const set = runtime.setRuntimeData.bind(runtime);
  runtime.setRuntimeData = (result: FunctionVariantType) => {
    set(result);
    messages.finished(
      {
        unit: runtime.currentUnitId,
        sheet: runtime.currentSubUnitId,
        row: runtime.currentRow,
        column: runtime.currentColumn,
      },
      endsInError(result),
    );
  };
}

function endsInError(result: FunctionVariantType): boolean {
  if (result.isError()) return true;
  return (
    !result.isReferenceObject() &&
    result.isArray() &&
    (result as unknown as { getFirstCell(): FunctionVariantType }).getFirstCell().isError()
  );
}

/**
 * Keeps the cells that depend on a spill right when it gives up a part of its area.
 *
 * In 0.25.1 they keep their old result when a spill shrinks, is deleted, or turns into one value, an error or #SPILL! (the sheet's own
 * SEQUENCE too). After every calculation the areas are compared with those before, and what was given up is calculated on as changed.
 */
export function watchSpills(injector: Injector, calculation: Calculation): void {
  const model = injector.get(FormulaDataModel);
  let before = areasOf(model);
  injector.get(ICommandService).onCommandExecuted((command) => {
    if (command.id !== SetFormulaCalculationNotificationMutation.id) return;
    if ((command.params as { functionsExecutedState?: number }).functionsExecutedState === undefined) return;
    const now = areasOf(model);
    const givenUp = [...before]
      .filter(([key, area]) => !covers(now.get(key)?.range, area.range))
      .map(([, area]) => area);
    before = now;
    if (givenUp.length) calculation.recalculate([...givenUp, ...waitingFor(givenUp, model)]);
  });
}

/**
 * Lets a formula name any range at once.
 *
 * In 0.25.1 a formula that is typed waits until every cell it names has been asked whether it is protected, those beyond the sheet's edge
 * too: A1:XFD1048576 stops the page for minutes. Nothing is protected here.
 */
export function askNoProtection(injector: Injector): void {
  const check = injector.get(SheetPermissionCheckController) as unknown as { _permissionCheckWithFormula(): boolean };
  check._permissionCheckWithFormula = () => true;
}

/**
 * Lets a sheet end while it calculates.
 *
 * In 0.25.1 a calculation shows its progress after a second, and fails when the sheet has gone by then.
 */
export function endQuietly(injector: Injector): void {
  const trigger = injector.get(TriggerCalculationController) as unknown as {
    _disposed: boolean;
    _startProgress(): void;
  };
  const start = trigger._startProgress.bind(trigger);
  trigger._startProgress = () => {
    if (!trigger._disposed) start();
  };
}

interface SpillArea {
  readonly unitId: string;
  readonly sheetId: string;
  readonly range: IRange;
}

/** The cells of blocked spills that may find room where another was given up. */
function waitingFor(givenUp: readonly SpillArea[], model: FormulaDataModel): SpillArea[] {
  const blocked = areasOf(model, true);
  return [...blocked].flatMap(([key, { unitId, sheetId, range }]) => {
    const [row, column] = key.split("/").slice(-2).map(Number) as [number, number];
    return givenUp.some((area) => area.sheetId === sheetId && meets(area.range, range))
      ? [{ unitId, sheetId, range: { startRow: row, endRow: row, startColumn: column, endColumn: column } }]
      : [];
  });
}

/** What spills cover, by their cell; or what those would cover that are blocked. */
function areasOf(model: FormulaDataModel, blocked = false): Map<string, SpillArea> {
  const areas = new Map<string, SpillArea>();
  const shown = model.getArrayFormulaCellData();
  for (const [unitId, sheets] of Object.entries(model.getArrayFormulaRange()))
    for (const [sheetId, rows] of Object.entries(sheets ?? {}))
      for (const [row, columns] of Object.entries(rows ?? {}))
        for (const [column, range] of Object.entries((columns ?? {}) as Record<string, IRange | null>)) {
          // The engine keeps the area of a spill that is blocked, though nothing of it is shown.
          const isBlocked = shown[unitId]?.[sheetId]?.[Number(row)]?.[Number(column)]?.v === ErrorType.SPILL;
          if (!range || isBlocked !== blocked) continue;
          areas.set(`${unitId}/${sheetId}/${row}/${column}`, { unitId, sheetId, range: { ...range } });
        }
  return areas;
}

function covers(outer: IRange | undefined, inner: IRange): boolean {
  return outer !== undefined && outer.endRow >= inner.endRow && outer.endColumn >= inner.endColumn;
}
