import { lengthText } from "../measure/lengthText.ts";
import { Refusal } from "../registry/refusal.ts";
import { blockRows } from "./blockCells.ts";
import type { Inputs } from "./fields.ts";
import { spillingTable, type PlannedTable } from "./planFill.ts";
import { report } from "./report.ts";
import { tableNow } from "./tableNow.ts";
import { TABLES, type SheetTable } from "./tables.ts";
import { texts } from "./texts.ts";

/** The chosen tables of a roof, each one call on its block, as they spill now; or why one of them cannot be made. */
export async function roofTables(ids: ReadonlySet<SheetTable["id"]>, inputs: Inputs): Promise<readonly PlannedTable[] | Refusal> {
  const { unit, model } = report(inputs);
  // Lengths on hand as text, each with its unit, for a block that leaves them to the usual ones.
  const usual = (model?.frame.spec.boards ?? []).map((length) => lengthText(length, unit)).join(", ");
  const boards = inputs.Boards.trim() || usual;
  const planned: PlannedTable[] = [];
  for (const { id, functionName, sheet, onTape, boardsToo } of TABLES.filter((table) => ids.has(table.id))) {
    const now = await tableNow(functionName, [blockRows(inputs), ...(boardsToo ? [boards] : [])]);
    if (now instanceof Refusal) return new Refusal(now.error, texts.notNow(texts.tables[id], now.message));
    planned.push(spillingTable({ title: texts.tables[id], sheet }, ({ block, cell }) => `=RAFTER.${functionName}(${[block, ...(boardsToo ? [cell("Boards") ?? `"${usual.replaceAll('"', '""')}"`] : [])].join(",")})`, now, unit === "in" ? onTape : []));
  }
  return planned;
}
