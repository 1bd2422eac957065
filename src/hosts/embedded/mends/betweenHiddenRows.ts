import type { IMutationInfo, Injector, IRange, Workbook } from "@univerjs/core";
import { IUndoRedoService, IUniverInstanceService, UniverInstanceType } from "@univerjs/core";
import { RemoveRowByRangeCommand } from "@univerjs/sheets";

interface Accessor {
  get: Injector["get"];
}
interface RemoveParams {
  readonly unitId: string;
  readonly subUnitId: string;
  readonly range: IRange;
}
interface Step {
  undoMutations: readonly IMutationInfo[];
  redoMutations: readonly IMutationInfo[];
}

let mended = false;

/**
 * Deletes every stretch of rows between filtered-out ones by itself, the last first, as one step of undo.
 *
 * In 0.25.1 those that a filter hides stay, as they should, but formulas, rules and notes move as if they had gone too.
 */
export function betweenHiddenRows(): void {
  if (mended) return;
  mended = true;
  const remove = RemoveRowByRangeCommand.handler as unknown as (accessor: Accessor, params?: RemoveParams) => boolean;
  (RemoveRowByRangeCommand as unknown as { handler: typeof remove }).handler = (accessor, params) => {
    const worksheet =
      params &&
      accessor
        .get(IUniverInstanceService)
        .getUnit<Workbook>(params.unitId, UniverInstanceType.UNIVER_SHEET)
        ?.getSheetBySheetId(params.subUnitId);
    if (!worksheet) return remove(accessor, params);
    const { range } = params;
    const stretches: [number, number][] = [];
    for (let row = range.endRow; row >= range.startRow; row--) {
      if (worksheet.getRowFiltered(row)) continue;
      const last = stretches.at(-1);
      if (last?.[0] === row + 1) last[0] = row;
      else stretches.push([row, row]);
    }
    const stack = (
      accessor.get(IUndoRedoService) as unknown as { _getUndoStack(unit: string, make: true): Step[] }
    )._getUndoStack(params.unitId, true);
    const steps: Step[] = [];
    for (const [startRow, endRow] of stretches) {
      if (!remove(accessor, { ...params, range: { ...range, startRow, endRow } })) return false;
      steps.push(stack.at(-1)!);
    }
    if (steps.length > 1) {
      stack.splice(-steps.length + 1);
      const [first] = steps as [Step];
      first.undoMutations = [...steps].reverse().flatMap(({ undoMutations }) => undoMutations);
      first.redoMutations = steps.flatMap(({ redoMutations }) => redoMutations);
    }
    return stretches.length > 0;
  };
}
