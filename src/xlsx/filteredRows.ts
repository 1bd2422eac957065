import type { BookSheet } from "./book.ts";

/** A sheet's rows that its filter hides: in the file they are hidden rows like any other, but for standing in a filter that holds something back. */
export function rowsFilteredOut({ filters: [filter] = [], heights = new Map() }: BookSheet): number[] {
  if (!filter || filter.columns.length === 0) return [];
  const { row, rows } = filter.area;
  return [...heights].filter(([at, { hidden }]) => hidden && at > row && at < row + rows).map(([at]) => at);
}
