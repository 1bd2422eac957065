import { isFormula } from "./isFormula.ts";
import { PLACE } from "./rangeArea.ts";

/** Where a range stands: its first row and column in the sheet, and its size. */
interface Place {
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
}

/** Most formulas that are asked for their spills before anything else: a table's own stands in its first row. */
const MOST_FORMULAS = 64;
/** Most parts of a range that are asked in one request. */
const MOST_PARTS = 250;

/**
 * Which cells of a range show a value that a formula elsewhere spilled, as "row,column" within the range.
 *
 * Formulas in the range are asked what they fill. What is left is halved until a part has no spill, or a corner that knows its own: a question for each spill,
 * not for each cell. Every object is let go of at once, or the client would write each down twice.
 *
 * @param at where the range is; `hasSpill` and `formulas` of it are loaded.
 */
export async function spilledCells(
  context: Excel.RequestContext,
  range: Excel.Range,
  at: Place,
): Promise<ReadonlySet<string>> {
  const spilled = new Set<string>();
  // false: not one cell of the range takes part in a spill; null: some do.
  if (range.hasSpill === false) return spilled;
  let open: Place[] = [{ row: 0, column: 0, rows: at.rows, columns: at.columns }];
  const spills = formulasIn(range).map(([i, j]) =>
    asPlace(range.getCell(i, j).untrack().getSpillingToRangeOrNullObject()),
  );
  if (spills.length) await context.sync();
  for (const found of spills) {
    const spill = placeIn(at, found);
    if (!spill) continue;
    mark(spilled, at, spill);
    open = open.flatMap((part) => without(part, spill));
  }
  while (open.length) {
    const asked = open.splice(0, MOST_PARTS).map((part) => {
      const corner = range.getCell(part.row, part.column).untrack();
      return {
        part,
        whole: corner
          .getResizedRange(part.rows - 1, part.columns - 1)
          .untrack()
          .load("hasSpill"),
        found: asPlace(corner.getSpillParentOrNullObject().untrack().getSpillingToRangeOrNullObject()),
      };
    });
    await context.sync();
    for (const { part, whole, found } of asked) {
      if (whole.hasSpill === false) continue;
      const spill = placeIn(at, found);
      if (spill) mark(spilled, at, spill);
      open.push(...(spill ? without(part, spill) : halves(part)));
    }
  }
  return spilled;
}

/** Queues the question where a range is. */
function asPlace(range: Excel.Range): Excel.Range {
  return range.untrack().load(PLACE);
}

/** Where a range is, counted from another's corner; null where there is none. */
function placeIn({ row, column }: Place, range: Excel.Range): Place | null {
  if (range.isNullObject) return null;
  const { rowIndex, columnIndex, rowCount: rows, columnCount: columns } = range;
  return { row: rowIndex - row, column: columnIndex - column, rows, columns };
}

/** Notes the cells of a spill that lie in an area; not the first, which has the formula. */
function mark(spilled: Set<string>, { rows, columns }: Place, spill: Place): void {
  for (let i = Math.max(0, spill.row); i < Math.min(rows, spill.row + spill.rows); i++)
    for (let j = Math.max(0, spill.column); j < Math.min(columns, spill.column + spill.columns); j++)
      if (i !== spill.row || j !== spill.column) spilled.add(`${i},${j}`);
}

/** Cells with a formula. The spilled cells of a formula may show it too, beside or below: those are not asked. */
function formulasIn({ formulas, values }: Excel.Range): [number, number][] {
  const found: [number, number][] = [];
  const shown = (i: number, j: number): unknown => (formulas as unknown[][])[i]?.[j];
  for (const [i, line] of (formulas as unknown[][]).entries())
    for (const [j, formula] of line.entries()) {
      if (!isFormula(formula, values[i]![j])) continue;
      if (formula === shown(i - 1, j) || formula === shown(i, j - 1)) continue;
      if (found.push([i, j]) === MOST_FORMULAS) return found;
    }
  return found;
}

/** What is left of an area when another is taken out of it: nothing, or up to four areas. */
function without(part: Place, out: Place): Place[] {
  const top = Math.max(part.row, out.row);
  const left = Math.max(part.column, out.column);
  const bottom = Math.min(part.row + part.rows, out.row + out.rows);
  const right = Math.min(part.column + part.columns, out.column + out.columns);
  if (top >= bottom || left >= right) return [part];
  const { row, column, rows, columns } = part;
  return [
    { row, column, rows: top - row, columns },
    { row: bottom, column, rows: row + rows - bottom, columns },
    { row: top, column, rows: bottom - top, columns: left - column },
    { row: top, column: right, rows: bottom - top, columns: column + columns - right },
  ].filter((area) => area.rows > 0 && area.columns > 0);
}

function halves({ row, column, rows, columns }: Place): Place[] {
  // One cell that takes part in a spill knows its parent; if it does not, there is nothing left to ask.
  if (rows * columns === 1) return [];
  const [down, across] = [Math.ceil(rows / 2), Math.ceil(columns / 2)];
  return rows > columns
    ? [
        { row, column, rows: down, columns },
        { row: row + down, column, rows: rows - down, columns },
      ]
    : [
        { row, column, rows, columns: across },
        { row, column: column + across, rows, columns: columns - across },
      ];
}
