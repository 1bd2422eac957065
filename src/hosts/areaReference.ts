import { address } from "./address.ts";
import type { Area } from "./host.ts";

/**
 * An area as a name of the workbook holds it.
 *
 * @example
 * areaReference({ sheet: "Roof", row: 3, column: 0, rows: 15, columns: 2 }) // => "Roof!$A$4:$B$18"
 */
export function areaReference({ sheet, row, column, rows, columns }: Area): string {
  const fixed = (at: string) => at.replace(/([A-Z]+)(\d+)$/, "$$$1$$$2");
  const end = fixed(address(sheet, row + rows - 1, column + columns - 1));
  return `${fixed(address(sheet, row, column))}:${end.slice(end.lastIndexOf("!") + 1)}`;
}
