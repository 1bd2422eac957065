import type { ICellData, IMutationInfo, Injector } from "@univerjs/core";
import { ICommandService, IUndoRedoService } from "@univerjs/core";
import {
  FormulaDataModel,
  initSheetFormulaData,
  RemoveDefinedNameMutation,
  SetDefinedNameMutation,
  SetFormulaDataMutation,
} from "@univerjs/engine-formula";
import type { IInsertSheetMutationParams, ISetRangeValuesMutationParams } from "@univerjs/sheets";
import {
  InsertSheetMutation,
  InsertSheetUndoMutationFactory,
  RemoveSheetMutation,
  RemoveSheetUndoMutationFactory,
  SetRangeValuesMutation,
  SetRangeValuesUndoMutationFactory,
  SetWorksheetActiveOperation,
  SetWorksheetColumnCountMutation,
  SetWorksheetColumnCountUndoMutationFactory,
  SetWorksheetColWidthMutation,
  SetWorksheetColWidthMutationFactory,
  SetWorksheetRowCountMutation,
  SetWorksheetRowCountUndoMutationFactory,
} from "@univerjs/sheets";
import type { FWorkbook } from "@univerjs/sheets/facade";
import type { EmbeddedSheet } from "./runningSheet.ts";
import { keptIn, ReplaceKeptMutation } from "./workbookTexts.ts";

/**
 * Changes that the user takes back with one undo: done as they come, undone together.
 *
 * The sheet's own commands make an undo step each, and several of them joined cannot be redone when one inserts a sheet.
 */
export class UndoStep {
  readonly #injector: Injector;
  readonly #workbook: FWorkbook;
  readonly #redo: IMutationInfo[] = [];
  readonly #undo: IMutationInfo[] = [];
  #undone = false;

  /** For {@link inOneStep}, which also finishes it. */
  constructor(injector: Injector, workbook: FWorkbook) {
    this.#injector = injector;
    this.#workbook = workbook;
  }

  /** Does one change and notes how to undo it. */
  do(change: IMutationInfo<object>): void {
    if (change.id === RemoveSheetMutation.id) this.#leave((change.params as { subUnitId: string }).subUnitId);
    const undo = this.#inverse(change);
    if (!this.#run(change)) throw new Error(`The sheet did not take a change (${change.id}).`);
    this.#redo.push(change);
    this.#undo.unshift(...undo);
  }

  /**
   * Brings in a sheet. Its cells come a row at a time, with a call between two, for a large sheet would hold up the page; formulas are to be
   * calculated afterwards.
   */
  async bring(params: IInsertSheetMutationParams, between: (cells: number) => Promise<void>): Promise<void> {
    const { unitId, sheet } = params;
    const { cellData, ...empty } = sheet;
    const change = { id: InsertSheetMutation.id, params: { ...params, sheet: { ...empty, cellData: {} } } };
    this.do(change);
    this.#redo[this.#redo.length - 1] = { id: change.id, params };
    const matrix = this.#workbook.getWorkbook().getSheetBySheetId(sheet.id)!.getCellMatrix();
    for (const [row, line] of Object.entries(cellData)) {
      const cells = Object.entries(line as Record<string, ICellData>);
      // A copy, as below.
      for (const [column, cell] of cells) matrix.setValue(Number(row), Number(column), { ...cell });
      await between(cells.length);
    }
    await between(0);
    const model = this.#injector.get(FormulaDataModel);
    const formulaData = initSheetFormulaData(model.getFormulaData(), unitId, sheet.id, matrix);
    this.#injector
      .get(ICommandService)
      .syncExecuteCommand(SetFormulaDataMutation.id, { formulaData }, { onlyLocal: true });
  }

  // The page draws the active sheet, and fails when that one is taken from under it.
  #leave(subUnitId: string): void {
    const sheets = this.#workbook.getWorkbook().getSheetOrders();
    const other = sheets[sheets.indexOf(subUnitId) - 1] ?? sheets[1];
    if (this.#active() === subUnitId && other) this.do(this.#activate(other));
  }

  #active(): string {
    return this.#workbook.getActiveSheet().getSheetId();
  }

  #activate(subUnitId: string): IMutationInfo<object> {
    return { id: SetWorksheetActiveOperation.id, params: { unitId: this.#workbook.getId(), subUnitId } };
  }

  /** Undoes everything done so far, as if it had never been. */
  rollBack(): void {
    for (const change of this.#undo) this.#run(change);
  }

  /** Hands the step to the sheet's undo. */
  finish(): void {
    if (!this.#redo.length) return;
    this.#injector
      .get(IUndoRedoService)
      .pushUndoRedo({ unitID: this.#workbook.getId(), undoMutations: this.#undo, redoMutations: this.#redo });
    ends.set(this.#undo.at(-1)!.params, () => (this.#undone = true));
    ends.set(this.#redo.at(-1)!.params, () => (this.#undone = false));
  }

  /** The user has undone the finished step by the sheet's own undo, and not redone it. */
  get undone(): boolean {
    return this.#undone;
  }

  /** What {@link rollBack} does, to be done in a later step. */
  get changesBack(): readonly IMutationInfo[] {
    return this.#undo;
  }

  #run(change: IMutationInfo<object>): boolean {
    // A copy, for the sheet changes what it is given and the undo list must stay as it is.
    return this.#injector.get(ICommandService).syncExecuteCommand(change.id, structuredClone(change.params)) as boolean;
  }

  #inverse({ id, params }: IMutationInfo<any>): IMutationInfo<object>[] {
    const injector = this.#injector;
    switch (id) {
      case SetRangeValuesMutation.id:
        return [{ id, params: SetRangeValuesUndoMutationFactory(injector, params as ISetRangeValuesMutationParams) }];
      case SetWorksheetColWidthMutation.id:
        return [
          {
            id,
            params: SetWorksheetColWidthMutationFactory(
              params,
              this.#workbook.getWorkbook().getSheetBySheetId(params.subUnitId)!,
            ),
          },
        ];
      case SetWorksheetRowCountMutation.id:
        return [{ id, params: SetWorksheetRowCountUndoMutationFactory(injector, params) }];
      case SetWorksheetColumnCountMutation.id:
        return [{ id, params: SetWorksheetColumnCountUndoMutationFactory(injector, params) }];
      case InsertSheetMutation.id:
        return [
          this.#activate(this.#active()),
          { id: RemoveSheetMutation.id, params: InsertSheetUndoMutationFactory(injector, params) },
        ];
      case RemoveSheetMutation.id:
        return [
          { id: InsertSheetMutation.id, params: structuredClone(RemoveSheetUndoMutationFactory(injector, params)) },
        ];
      case SetWorksheetActiveOperation.id:
        return [this.#activate(this.#active())];
      case SetDefinedNameMutation.id:
        return [{ id: RemoveDefinedNameMutation.id, params }];
      case RemoveDefinedNameMutation.id:
        return [{ id: SetDefinedNameMutation.id, params }];
      case ReplaceKeptMutation.id:
        return [{ id, params: { ...params, kept: keptIn(this.#workbook.getWorkbook()) } }];
      default:
        throw new Error(`No way back is known for the change ${id}.`);
    }
  }
}

/** Does work as one undo step: all of it, or, where it fails or is stopped, nothing of it. */
export async function inOneStep(
  { univer, workbook }: EmbeddedSheet,
  work: (step: UndoStep) => void | Promise<void>,
): Promise<UndoStep> {
  const step = new UndoStep(univer.__getInjector(), workbook);
  try {
    await work(step);
  } catch (stop) {
    step.rollBack();
    throw stop;
  }
  step.finish();
  return step;
}

/** What the last change of an undo or a redo tells its step. */
const ends = new WeakMap<object, () => void>();

/** Lets steps know when the user undoes and redoes them: the sheet does not tell what it undoes, but it runs the very objects that it was handed. */
export function watchUndo(injector: Injector): void {
  injector.get(ICommandService).onCommandExecuted(({ params }) => {
    if (params) ends.get(params)?.();
  });
}
