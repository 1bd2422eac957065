import type { ICommandInfo, IMutationInfo, Injector, Workbook } from "@univerjs/core";
import {
  CommandType,
  DisposableCollection,
  ICommandService,
  IUndoRedoService,
  IUniverInstanceService,
  UniverInstanceType,
} from "@univerjs/core";
import { InsertSheetMutation } from "@univerjs/sheets";
import type { IAutoFilter } from "@univerjs/sheets-filter";
import {
  ClearSheetsFilterCriteriaCommand,
  FILTER_MUTATIONS,
  ReCalcSheetsFilterMutation,
  RemoveSheetFilterCommand,
  RemoveSheetsFilterMutation,
  SetSheetFilterRangeCommand,
  SetSheetsFilterCriteriaCommand,
  SetSheetsFilterCriteriaMutation,
  SetSheetsFilterRangeMutation,
  SheetsFilterService,
  SheetsFilterSyncController,
} from "@univerjs/sheets-filter";
import { betweenHiddenRows } from "./betweenHiddenRows.ts";

/** A filter as it is: its cells, what it lets through, and the rows that it hides. */
type State = IAutoFilter;

interface At {
  readonly unitId: string;
  readonly subUnitId: string;
}

interface SetStateParams extends At {
  readonly state: State | null;
  /** The rows that are hidden stay so, wherever they have gone. */
  readonly keepRows?: true;
}

interface Changes {
  readonly redos: readonly IMutationInfo<object>[];
  readonly undos: readonly IMutationInfo<object>[];
}

type Lines = {
  readonly startRow: number;
  readonly endRow: number;
  readonly startColumn: number;
  readonly endColumn: number;
};
type Handler = (command: any, unitId: string, subUnitId: string) => Changes;

/** The plug-in's part that has filters go with their cells, as it is in 0.25.1. */
interface Controller {
  _disposableCollection: DisposableCollection;
  _registerRefRange(unitId: string, subUnitId: string): void;
  _getExtendRegion(): null;
  _moveCriteria(...of: unknown[]): { newRange: Changes; oldRange: Changes };
  _handleInsertRowCommand: Handler;
  handleInsertColCommand: Handler;
  _handleRemoveRowCommand: Handler;
  handleRemoveColCommand: Handler;
  handleMoveColsCommand: Handler;
  _handleMoveRowsCommand: Handler;
  _handleMoveRangeCommand: Handler;
}

/** The model of a filter, with what is private to it. */
interface Model {
  _worksheet: unknown;
  _dump(state: State): void;
  getRange(): State["ref"];
  getAllFilterColumns(): [number, { _worksheet: unknown }][];
}

const MOVERS = [
  "_handleInsertRowCommand",
  "handleInsertColCommand",
  "_handleRemoveRowCommand",
  "handleRemoveColCommand",
  "handleMoveColsCommand",
  "_handleMoveRowsCommand",
  "_handleMoveRangeCommand",
] as const;
const NOTHING: Changes = { redos: [], undos: [] };

/** Sets a filter as it was at some time. Its id is the plug-in's to whoever draws filters and calculates with them. */
export const SET_FILTER = "longpoint.mutation.set-filter";
const SetFilterStateMutation = {
  id: SET_FILTER,
  type: CommandType.MUTATION,
  handler(accessor: { get: Injector["get"] }, { unitId, subUnitId, state, keepRows }: SetStateParams): boolean {
    const service = accessor.get(SheetsFilterService);
    const hidden = [...(service.getFilterModel(unitId, subUnitId)?.filteredOutRows ?? [])];
    service.removeFilterModel(unitId, subUnitId);
    if (!state) return true;
    const model = service.ensureFilterModel(unitId, subUnitId) as unknown as Model;
    model._dump(structuredClone({ ...state, cachedFilteredOut: keepRows ? hidden : (state.cachedFilteredOut ?? []) }));
    return true;
  },
};

/** To be called before the plug-in starts, which asks once which changes concern filters. */
export function knownFilterChanges(): void {
  FILTER_MUTATIONS.add(SetFilterStateMutation.id);
}

/**
 * Has filters go with their cells, and come back with undo as they were.
 *
 * In 0.25.1 a filter grows by a row whenever a cell below it is set, by a formula that moved too, and no undo knows; it stays where it is when
 * more rows come in above than it has, and on sheets that are not looked at; what it hides is found out anew by undo, though cells have changed
 * since; and a sheet that went and came back is filtered by the cells of before.
 */
export function exactFilters(injector: Injector): void {
  const commands = injector.get(ICommandService);
  const service = injector.get(SheetsFilterService);
  // The plug-in does not hand out its controller; what it offers to others holds it.
  const { _sheetsFilterController: controller } = injector.get(SheetsFilterSyncController) as unknown as {
    readonly _sheetsFilterController: Controller;
  };
  const stateOf = ({ unitId, subUnitId }: At): State | null =>
    service.getFilterModel(unitId, subUnitId)?.serialize() ?? null;
  const setTo = (at: At, state: State | null, keepRows = false): IMutationInfo<object> => ({
    id: SetFilterStateMutation.id,
    params: { ...at, state, ...(keepRows && { keepRows }) },
  });

  commands.registerCommand(SetFilterStateMutation);
  controller._getExtendRegion = () => null;

  const registered = new Map<string, DisposableCollection>();
  const register = controller._registerRefRange.bind(controller);
  controller._registerRefRange = (unitId, subUnitId) => {
    const its = registered.get(subUnitId) ?? new DisposableCollection();
    registered.set(subUnitId, its);
    controller._disposableCollection = its;
    register(unitId, subUnitId);
  };

  const insertRows = controller._handleInsertRowCommand.bind(controller);
  controller._handleInsertRowCommand = (command: { range: Lines }, unitId, subUnitId) => {
    const its = service.getFilterModel(unitId, subUnitId)?.getRange();
    const { startRow, endRow } = command.range;
    if (!its || endRow <= its.endRow || startRow > its.endRow) return insertRows(command, unitId, subUnitId);
    const count = endRow - startRow + 1;
    const range = { ...its, startRow: startRow <= its.startRow ? its.startRow + count : its.startRow };
    const params = { unitId, subUnitId, range: { ...range, endRow: its.endRow + count } };
    return { redos: [{ id: SetSheetsFilterRangeMutation.id, params }], undos: [] };
  };
  const insertColumns = controller.handleInsertColCommand.bind(controller);
  controller.handleInsertColCommand = (inserted: Lines, unitId, subUnitId) => {
    const model = service.getFilterModel(unitId, subUnitId) as unknown as Model | null;
    const its = model?.getRange();
    const { startColumn, endColumn } = inserted;
    if (!model || !its || endColumn <= its.endColumn || startColumn > its.endColumn)
      return insertColumns(inserted, unitId, subUnitId);
    const count = endColumn - startColumn + 1;
    const range = { ...its, startColumn: startColumn <= its.startColumn ? its.startColumn + count : its.startColumn };
    const params = { unitId, subUnitId, range: { ...range, endColumn: its.endColumn + count } };
    const after = model.getAllFilterColumns().filter(([column]) => column >= startColumn);
    const { oldRange, newRange } = controller._moveCriteria(unitId, subUnitId, after, count);
    return {
      redos: [{ id: SetSheetsFilterRangeMutation.id, params }, ...oldRange.redos, ...newRange.redos],
      undos: [],
    };
  };

  // What the plug-in would do one thing after the other, as the state that it comes to.
  for (const name of MOVERS) {
    const move = controller[name].bind(controller);
    controller[name] = (command, unitId, subUnitId) => {
      const at = { unitId, subUnitId };
      const before = stateOf(at);
      if (!before) return NOTHING;
      const { redos } = move(command, unitId, subUnitId);
      if (redos.length === 0) return NOTHING;
      const state = after(before, redos);
      // A column that went hides nothing any more.
      const fewer = state && state.filterColumns!.length < (before.filterColumns?.length ?? 0);
      const anew = fewer || redos.some(({ id }) => id === ReCalcSheetsFilterMutation.id);
      return {
        redos: [setTo(at, state, true), ...(anew ? [{ id: ReCalcSheetsFilterMutation.id, params: at }] : [])],
        undos: [setTo(at, before)],
      };
    };
  }

  const USERS = new Set([
    SetSheetFilterRangeCommand.id,
    RemoveSheetFilterCommand.id,
    SetSheetsFilterCriteriaCommand.id,
    ClearSheetsFilterCriteriaCommand.id,
  ]);
  const undo = injector.get(IUndoRedoService);
  const atOf = (params: unknown): At => {
    const sheet = injector.get(IUniverInstanceService).getCurrentUnitOfType<Workbook>(UniverInstanceType.UNIVER_SHEET)!;
    const { unitId = sheet.getUnitId(), subUnitId = sheet.getActiveSheet().getSheetId() } = (params ??
      {}) as Partial<At>;
    return { unitId, subUnitId };
  };
  let begun: { at: At; state: State | null; top: unknown } | null = null;
  commands.beforeCommandExecuted(({ id, params }) => {
    if (!USERS.has(id)) return;
    const at = atOf(params);
    begun = { at, state: stateOf(at), top: undo.pitchTopUndoElement() };
  });
  commands.onCommandExecuted(({ id, params }: Readonly<ICommandInfo>) => {
    if (USERS.has(id) && begun) {
      const { at, state, top } = begun;
      begun = null;
      const made = undo.pitchTopUndoElement();
      if (!made || made === top) return;
      made.undoMutations = [setTo(at, state)];
      made.redoMutations = [setTo(at, stateOf(at))];
    }
    if (id === SetFilterStateMutation.id) {
      const { unitId, subUnitId } = params as SetStateParams;
      controller._registerRefRange(unitId, subUnitId);
    }
    if (id === InsertSheetMutation.id) {
      const { unitId, sheet } = params as { unitId: string; sheet: { id: string } };
      relink(injector, service, unitId, sheet.id);
    }
  });
  betweenHiddenRows();
}

/** What a filter is once the plug-in's changes are done; the rows that it hides are left out. */
function after({ ref, filterColumns = [] }: State, changes: readonly IMutationInfo<object>[]): State | null {
  let state: { ref: State["ref"]; columns: Map<number, object> } | null = {
    ref,
    columns: new Map(filterColumns.map((column) => [column.colId, column])),
  };
  for (const { id, params } of changes) {
    const { range, col = 0, criteria } = params as { range: State["ref"]; col?: number; criteria?: object | null };
    if (id === RemoveSheetsFilterMutation.id) state = null;
    else if (id === SetSheetsFilterRangeMutation.id) state = { ref: range, columns: state?.columns ?? new Map() };
    else if (id === SetSheetsFilterCriteriaMutation.id && state) {
      if (criteria) state.columns.set(col, { ...criteria, colId: col });
      else state.columns.delete(col);
    }
  }
  return state && ({ ref: { ...state.ref }, filterColumns: [...state.columns.values()] } as State);
}

/** A sheet that came back is another object by the same id. */
function relink(injector: Injector, service: SheetsFilterService, unitId: string, subUnitId: string): void {
  const model = service.getFilterModel(unitId, subUnitId) as unknown as Model | null;
  const worksheet = injector
    .get(IUniverInstanceService)
    .getUnit<Workbook>(unitId, UniverInstanceType.UNIVER_SHEET)
    ?.getSheetBySheetId(subUnitId);
  if (!model || !worksheet) return;
  model._worksheet = worksheet;
  for (const [, column] of model.getAllFilterColumns()) column._worksheet = worksheet;
}
