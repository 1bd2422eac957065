import type { Cell, CellValue, Color, Sheet } from "hucre";
import { dateToSerial } from "hucre";
import { parseCellRef } from "hucre/xlsx";
import type { BookCell } from "./book.ts";
import { fetching } from "./fetching.ts";
import { lookOf } from "./fileLook.ts";
import { typedFormula } from "./storedFormula.ts";

/** The cells of a sheet of a file, by rows. `id` makes shared formulas the sheet's own. */
export function readCells(
  sheet: Sheet,
  id: string,
  since1904: boolean,
  resolve: (color: Color) => string | null,
  left: Set<string>,
): (BookCell | null)[][] {
  const details = sheet.cells ?? new Map<string, Cell>();
  const spilled = spilledCells(sheet, left);
  const rows = sheet.rows.map((row, i) =>
    row.map((value, j): BookCell | null => {
      const cell = details.get(`${i},${j}`);
      notice(cell, left);
      const look = cell?.style && lookOf(cell.style, resolve, left);
      const own = plain(value, since1904);
      const formula = formulaOf(cell, id);
      const outside = formula?.formula && fetching(formula.formula);
      if (outside) left.add(`what ${outside} gets from elsewhere (nothing leaves this page)`);
      const from = own !== null && spilled.has(`${i},${j}`) ? { spilled: true as const } : {};
      return own === null && !formula && !look ? null : { value: own, ...formula, ...from, ...(look && { look }) };
    }),
  );
  return rows.map((row) => row.slice(0, row.findLastIndex((cell) => cell !== null) + 1));
}

function formulaOf(cell: Cell | undefined, id: string): Pick<BookCell, "formula" | "spill" | "shared"> | null {
  if (cell?.formula === undefined) return null;
  const shared =
    cell.formulaType === "shared" && cell.formulaSharedIndex !== undefined
      ? { shared: `${id}-${cell.formulaSharedIndex}` }
      : {};
  if (cell.formula === "") return "shared" in shared ? shared : null;
  const area = cell.formulaType === "array" && cell.formulaRef ? areaOf(cell.formulaRef) : null;
  return {
    formula: typedFormula(cell.formula),
    ...shared,
    ...(area && { spill: { rows: area.rows, columns: area.columns } }),
  };
}

function spilledCells({ rows: there, cells: details }: Sheet, left: Set<string>): Set<string> {
  const spilled = new Set<string>();
  for (const { formulaType, formulaRef, formulaDynamic } of details?.values() ?? []) {
    if (formulaType !== "array" || !formulaRef) continue;
    const { row, column, rows, columns } = areaOf(formulaRef);
    if (!formulaDynamic && rows * columns > 1) left.add("the fixed size of array formulas in braces (they spill here)");
    // A broken file can name a billion cells here: only those that are there count.
    for (let i = row; i < Math.min(row + rows, there.length); i++)
      for (let j = column; j < Math.min(column + columns, there[i]!.length); j++)
        if (i !== row || j !== column) spilled.add(`${i},${j}`);
  }
  return spilled;
}

function areaOf(reference: string): { row: number; column: number; rows: number; columns: number } {
  const [from, to = from] = reference
    .replaceAll("$", "")
    .split(":")
    .map((cell) => parseCellRef(cell)) as [{ row: number; col: number }, { row: number; col: number }?];
  return { row: from.row, column: from.col, rows: to.row - from.row + 1, columns: to.col - from.col + 1 };
}

function notice(cell: Cell | undefined, left: Set<string>): void {
  if (!cell) return;
  if (cell.checkbox) left.add("check boxes (they show TRUE or FALSE)");
  if ((cell.richText?.length ?? 0) > 1) left.add("formats of single words in a cell");
}

/** Days are numbers in a sheet; their format shows them as days. */
function plain(value: CellValue | undefined, since1904: boolean): BookCell["value"] {
  if (value === undefined) return null;
  return value instanceof Date ? dateToSerial(value, since1904) : value;
}
