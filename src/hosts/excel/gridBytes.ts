/** What a row of cells weighs in a request that writes its formulas and formats. */
export function gridBytes(
  line: readonly ({ readonly content: string | number | boolean; readonly format: string } | null)[],
): number {
  const of = (cell: (typeof line)[number]) =>
    cell ? JSON.stringify(cell.content).length + JSON.stringify(cell.format).length + 4 : 10;
  return line.reduce((sum, cell) => sum + of(cell), 0);
}
