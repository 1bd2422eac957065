import { FormulaError, isRows, rowsOf, type Scalar, type Value } from "./value.ts";

/**
 * A function of single cells, worked out for every cell of the blocks it is given.
 *
 * One cell, one row and one column stretch to the size of the largest block, as in a sheet; cells beyond a smaller block are #N/A.
 */
export function lift(each: (...cells: Scalar[]) => Scalar, values: readonly Value[]): Value {
  if (!values.some(isRows)) return each(...(values as readonly Scalar[]));
  const blocks = values.map(rowsOf);
  const rows = Math.max(...blocks.map((block) => block.length));
  const columns = Math.max(...blocks.map((block) => block[0]!.length));
  return Array.from({ length: rows }, (_, row) =>
    Array.from({ length: columns }, (_, column) => {
      const cells = blocks.map((block) => {
        const line = block[block.length === 1 ? 0 : row];
        return line?.[line.length === 1 ? 0 : column];
      });
      return cells.includes(undefined)
        ? new FormulaError("#N/A", "The blocks are not of the same size.")
        : each(...(cells as Scalar[]));
    }),
  );
}
