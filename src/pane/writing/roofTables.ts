import { footColumns, jackTable } from "../../../functions/jackTable.ts";
import type { Column } from "../../registry/columns.ts";
import type { TableFunction } from "../../registry/worksheetFunction.ts";
import { argumentText } from "../../registry/formulaText.ts";
import { messageOf } from "../../../functions/words/problemText.ts";
import { Failure } from "../../measure/result.ts";
import { blockRows } from "../state/blockCells.ts";
import { boardsOnHand } from "../state/boardsOnHand.ts";
import type { Inputs } from "../state/fields.ts";
import { spillingTable, type HangsOn, type TableToWrite } from "./layoutFill.ts";
import { report } from "../state/report.ts";
import { evaluateFunction } from "../state/evaluateFunction.ts";
import { TABLES, type SheetTable } from "./tables.ts";
import { texts } from "../words/texts.ts";

/** The columns that a table may come to have: the jack schedule has more of them once a roof has wings, and what stands beside it leaves room. */
export function columnsOf(definition: TableFunction): readonly Column[] {
  return definition === jackTable ? [...jackTable.columns, ...footColumns] : definition.columns;
}

/** The chosen tables of a roof, each one call on its block, as they spill now; or why one of them cannot be made. The kerf is as typed. */
export async function roofTables(
  ids: ReadonlySet<SheetTable["id"]>,
  inputs: Inputs,
  kerf = "",
): Promise<readonly TableToWrite[] | string> {
  const read = report(inputs);
  const { unit } = read;
  const { boards, usual } = boardsOnHand(inputs, read);
  // The block's own lengths, and while its row is empty (or it has none) the usual ones.
  const fromBlock = (cell: string | null) =>
    cell === null
      ? argumentText(usual)
      : inputs.Boards.trim() === ""
        ? `IF(${cell}="",${argumentText(usual)},${cell})`
        : cell;
  const cut = kerf.trim();
  const made: TableToWrite[] = [];
  for (const { id, definition, onTape, boardsToo } of TABLES.filter((table) => ids.has(table.id))) {
    const now = await evaluateFunction(definition, [
      blockRows(inputs),
      ...(boardsToo ? [boards, ...(cut === "" ? [] : [cut])] : []),
    ]);
    if (now instanceof Failure) return texts.notNow(texts.tables[id], messageOf(now));
    const formula = ({ block, cell }: HangsOn) =>
      `=RAFTER.${definition.name}(${[block, ...(boardsToo ? [fromBlock(cell("Boards")), ...(cut === "" ? [] : [argumentText(cut)])] : [])].join(",")})`;
    made.push(
      spillingTable(
        { title: texts.tables[id], sheet: texts.sheets[id] },
        { formula, columns: columnsOf(definition), now, onTape: unit === "in" ? onTape : [] },
      ),
    );
  }
  return made;
}
