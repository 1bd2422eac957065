import type { Row } from "../../../functions/arguments/roofBlock.ts";
import { fill } from "./fill.ts";
import type { TableToWrite } from "./layoutFill.ts";
import type { PaneState } from "../state/paneState.ts";

/** Writes one table on a new sheet; it hangs on the block that the fields follow, or brings a block along where they follow none. */
export function insert(state: PaneState, table: TableToWrite): Promise<Row | null> {
  return fill(state, { block: state.link.value === null, tables: () => [table], newSheets: true });
}
