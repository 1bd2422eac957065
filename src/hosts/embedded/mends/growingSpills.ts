import type { Injector, IRange, Workbook } from "@univerjs/core";
import { ICommandService, IUniverInstanceService, UniverInstanceType } from "@univerjs/core";
import { ErrorType, IFormulaRuntimeService, IFunctionService } from "@univerjs/engine-formula";
import { SetWorksheetColumnCountMutation, SetWorksheetRowCountMutation } from "@univerjs/sheets";
import { address } from "../../address.ts";
import { GRID } from "../../checkStep.ts";
import { meets } from "../areas.ts";
import type { Messages } from "../messages.ts";

type Spills = Record<string, Record<string, Record<string, Record<string, IRange>>>>;

/** The engine's part that puts results into cells, with its two questions about a spill's area. */
interface Runtime {
  readonly currentUnitId: string;
  readonly currentSubUnitId: string;
  readonly currentRow: number;
  readonly currentColumn: number;
  /** The spills of this calculation, by unit, sheet, row and column. */
  getUnitArrayFormula(): Spills;
  /** The results of this calculation. */
  getUnitData(): Record<string, Record<string, { getValue(row: number, column: number): { v?: unknown } | null }>>;
  _checkIfArrayFormulaRangeHasData(unit: string, sheet: string, row: number, column: number, area: IRange): boolean;
  _checkIfArrayFormulaExceeded(rows: number, columns: number, area: IRange): boolean;
}

/**
 * Makes a sheet larger where a spill would pass its edge, and says which cell is in a spill's way.
 *
 * In 0.25.1 a sheet has as many rows and columns as it began with: a table at its edge shows #SPILL!, the sheet's own SEQUENCE #REF!.
 */
export function growingSpills(injector: Injector, messages: Messages): void {
  const runtime = injector.get(IFormulaRuntimeService) as unknown as Runtime;
  const commands = injector.get(ICommandService);
  const sheetOf = (unit: string, sheet: string) =>
    injector
      .get(IUniverInstanceService)
      .getUnit<Workbook>(unit, UniverInstanceType.UNIVER_SHEET)
      ?.getSheetBySheetId(sheet);
  let blocked = false;

  const hasData = runtime._checkIfArrayFormulaRangeHasData.bind(runtime);
  const filled: typeof hasData = (...of) => hasData(...of) || crossesAnother(runtime, ...of);
  runtime._checkIfArrayFormulaRangeHasData = (unit, sheet, row, column, area) => {
    blocked = filled(unit, sheet, row, column, area);
    if (!blocked) return false;
    const first = firstCell(area, (r, c) =>
      filled(unit, sheet, row, column, { startRow: r, endRow: r, startColumn: c, endColumn: c }),
    );
    const [, at] = address(sheetOf(unit, sheet)?.getName() ?? "", first.row, first.column).split(/!(?=[^!]*$)/);
    messages.blocked(
      { unit, sheet, row, column },
      `${at} is in the way. This table needs ${extent(area)}: empty them, or move the formula.`,
    );
    return true;
  };

  runtime._checkIfArrayFormulaExceeded = (_rows, _columns, { endRow, endColumn }) => {
    const { currentUnitId: unitId, currentSubUnitId: subUnitId, currentRow: row, currentColumn: column } = runtime;
    const sheet = sheetOf(unitId, subUnitId);
    // Asked anew, for an earlier spill of the same calculation may have made it larger.
    if (!sheet || blocked) return blocked;
    if (endRow >= GRID.rows || endColumn >= GRID.columns) {
      messages.blocked(
        { unit: unitId, sheet: subUnitId, row, column },
        `This table runs over the edge of the sheet. Move the formula up or to the left.`,
      );
      return true;
    }
    const grow = (id: string, count: object) =>
      commands.syncExecuteCommand(id, { unitId, subUnitId, ...count }, { onlyLocal: true });
    if (endRow >= sheet.getRowCount()) grow(SetWorksheetRowCountMutation.id, { rowCount: endRow + 1 });
    if (endColumn >= sheet.getColumnCount()) grow(SetWorksheetColumnCountMutation.id, { columnCount: endColumn + 1 });
    return false;
  };

  // Those that ask for the sheet's size may fill one of any size.
  for (const [, executor] of injector.get(IFunctionService).getExecutors())
    if (executor.needsSheetRowColumnCount) {
      const set = executor.setSheetRowColumnCount.bind(executor);
      executor.setSheetRowColumnCount = () => set(GRID.rows, GRID.columns);
    }
}

/** Two spills that come in one calculation: the engine asks about those of earlier ones only, and writes one over the other. */
function crossesAnother(runtime: Runtime, unit: string, sheet: string, row: number, column: number, area: IRange) {
  const results = runtime.getUnitData()[unit]?.[sheet];
  return Object.entries(runtime.getUnitArrayFormula()[unit]?.[sheet] ?? {}).some(([r, line]) =>
    Object.entries(line).some(
      ([c, other]) =>
        !(Number(r) === row && Number(c) === column) &&
        meets(other, area) &&
        results?.getValue(Number(r), Number(c))?.v !== ErrorType.SPILL,
    ),
  );
}

function firstCell(area: IRange, isIt: (row: number, column: number) => boolean): { row: number; column: number } {
  for (let row = area.startRow; row <= area.endRow; row++)
    for (let column = area.startColumn; column <= area.endColumn; column++)
      if (isIt(row, column)) return { row, column };
  return { row: area.startRow, column: area.startColumn };
}

function extent({ startRow, endRow, startColumn, endColumn }: IRange): string {
  const a1 = (row: number, column: number) => address("S", row, column).slice(2);
  return `the cells ${a1(startRow, startColumn)}:${a1(endRow, endColumn)}`;
}
