import { letterIn } from "../../../functions/arguments/wingColumns.ts";
import type { Area, HostCell } from "../../hosts/host.ts";

/** Most columns that a block has beside that of its main roof. */
export const MOST_WINGS = 8;

/** A block among cells, from the first of them. */
type Place = Omit<Area, "sheet">;

/**
 * A block with the columns of its wings, which are known by their headings, and with the line of the headings.
 *
 * The headings stand over the block, or on its first line. Where a label stands beside them, as a title may, that line is no part of it.
 */
export function withWings(cells: readonly (readonly HostCell[])[], block: Place): Place {
  const { row, column, rows, columns } = block;
  const wings = (at: number) => {
    const values = cells[at]?.slice(column + 2, column + 2 + MOST_WINGS) ?? [];
    const end = values.findIndex(({ value }) => typeof value === "boolean" || letterIn(value) === null);
    return end < 0 ? values.length : end;
  };
  const isHeading = (at: number) => cells[at]?.[column]?.value === "" && wings(at) > 0;
  if (isHeading(row)) return { ...block, columns: Math.max(columns, 2 + wings(row)) };
  const wide = { ...block, columns: Math.max(columns, 2 + (row > 0 ? wings(row - 1) : 0)) };
  return isHeading(row - 1) ? { ...wide, row: row - 1, rows: rows + 1 } : wide;
}
