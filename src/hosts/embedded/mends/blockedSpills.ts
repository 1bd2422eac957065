import type { Injector, IRange } from "@univerjs/core";
import { ErrorType, FormulaDataModel } from "@univerjs/engine-formula";

/** By row and column. */
type Cells<T> = Record<string, Record<string, T>>;

/**
 * Lets a spill that is blocked hold its own cell only.
 *
 * In 0.25.1 the engine clears no cell of a spill that moves or goes where another's area lies, though that one is blocked and has nothing
 * there: with two blocked tables whose areas cross, a row put in above them left a #SPILL! behind in a cell without a formula.
 */
export function blockedSpills(injector: Injector): void {
  const model = injector.get(FormulaDataModel);
  const update = model.updateArrayFormulaCellData.bind(model);
  model.updateArrayFormulaCellData = (unit, sheet, cells) => {
    const bySheet = model.getArrayFormulaRange()[unit] as Record<string, Cells<IRange>> | undefined;
    const areas = bySheet?.[sheet];
    const values = model.getArrayFormulaCellData()[unit]?.[sheet] as Cells<{ v?: unknown } | null> | undefined;
    if (!bySheet || !areas || !values) return update(unit, sheet, cells);
    bySheet[sheet] = Object.fromEntries(
      Object.entries(areas).map(([row, line]) => [
        row,
        Object.fromEntries(
          Object.entries(line).map(([column, area]) => [
            column,
            values[row]?.[column]?.v === ErrorType.SPILL
              ? { ...area, endRow: area.startRow, endColumn: area.startColumn }
              : area,
          ]),
        ),
      ]),
    );
    try {
      return update(unit, sheet, cells);
    } finally {
      bySheet[sheet] = areas;
    }
  };
}
