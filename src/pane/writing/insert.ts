import { fill } from "./fill.ts";
import type { TableToWrite } from "./layoutFill.ts";
import type { FieldPlace } from "../state/fields.ts";
import type { PaneState } from "../state/paneState.ts";

/** Writes one table on a new sheet; it hangs on the block that the fields follow, or brings a block along where they follow none. */
export function insert(state: PaneState, table: TableToWrite): Promise<FieldPlace | null> {
  return fill(state, { block: state.link.value === null, tables: () => [table], newSheets: true });
}
