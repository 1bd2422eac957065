import { address } from "../../hosts/address.ts";
import type { Area } from "../../hosts/host.ts";

/** A cell as a formula names it for good, "Roof!$B$4"; without the sheet where the formula stands on the same one. */
export function reference(sheet: string, row: number, column: number, from: string): string {
  const there = address(sheet, row, column).replace(/([A-Z]+)(\d+)$/, "$$$1$$$2");
  return sheet === from ? there.slice(there.lastIndexOf("!") + 1) : there;
}

/** An area as a formula names it for good, "Roof!$A$4:$B$18". */
export function areaReference({ sheet, row, column, rows, columns }: Area, from: string): string {
  return `${reference(sheet, row, column, from)}:${reference(sheet, row + rows - 1, column + columns - 1, sheet)}`;
}

/** A cell as a formula names it when it may move with the formula, "F4". */
export function relative(row: number, column: number): string {
  return address("A", row, column).slice("A!".length);
}

/** An area for people, "Roof!A4:B18". */
export function areaText({ sheet, row, column, rows, columns }: Area): string {
  const end = rows * columns > 1 ? `:${relative(row + rows - 1, column + columns - 1)}` : "";
  return address(sheet, row, column) + end;
}
