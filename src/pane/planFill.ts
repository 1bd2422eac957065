import type { Row } from "../../functions/roofBlock.ts";
import type { Unit } from "../measure/unit.ts";
import type { Area, BlockPlan, CellPlan, WriteStep } from "../hosts/host.ts";
import type { Cell } from "../registry/worksheetFunction.ts";
import { blockPlan, blockRows } from "./blockCells.ts";
import type { Inputs } from "./fields.ts";
import { freeSheetName } from "./freeSheetName.ts";
import { planTable, tableWidth } from "./planTable.ts";
import { areaReference, reference } from "./reference.ts";
import type { SheetTable } from "./tables.ts";
import { texts } from "./texts.ts";

/** A table to write, with what its function gives now. */
export interface ChosenTable {
  readonly table: SheetTable;
  readonly now: readonly (readonly Cell[])[];
}

/** What is to be written, and where. */
export interface FillRequest {
  /** The block to write; null where the tables hang on one that stands in the sheet already. */
  readonly inputs: Inputs | null;
  /** The block in the sheet, with the row that says its unit, where `inputs` is null. */
  readonly block: { readonly area: Area; readonly unitRow: number | null } | null;
  readonly unit: Unit;
  readonly tables: readonly ChosenTable[];
  /** A cell to start from, or null for new sheets. */
  readonly at: Pick<Area, "sheet" | "row" | "column"> | null;
  /** Names of the sheets that are there. */
  readonly sheets: readonly string[];
}

/** A step to write, and where the block is that its tables hang on. */
export interface FillPlan {
  readonly step: WriteStep;
  readonly block: Area;
}

/**
 * Lays the chosen tables out: side by side from a cell, because every one of them may grow downwards, or each on a sheet of its own.
 *
 * Everything but the block is a live formula on the block.
 */
export function planFill(request: FillRequest): FillPlan {
  const { inputs, unit, tables, at } = request;
  const names = [...request.sheets];
  const nameFor = (wish: string) => {
    const name = freeSheetName(wish, names);
    names.push(name);
    return name;
  };
  const blocks: BlockPlan[] = [];
  let column = at?.column ?? 0;
  let area = request.block?.area ?? null;
  let unitRow = request.block?.unitRow ?? null;
  if (inputs) {
    const sheet = at?.sheet ?? nameFor(texts.roofSheet);
    const plan = planBlock(inputs, unit, { sheet, newSheet: !at, row: at?.row ?? 0, column });
    blocks.push(plan.plan);
    area = plan.area;
    unitRow = area.row + rowsOf(inputs, unit).indexOf("Unit");
    column += 3;
  }
  if (!area) throw new Error("A table needs a block.");
  for (const { table, now } of tables) {
    const sheet = at?.sheet ?? nameFor(table.sheet);
    const formula = `=RAFTER.${table.functionName}(${areaReference(area, sheet)})`;
    const unitCell = unitRow === null ? null : reference(area.sheet, unitRow, area.column + 1, sheet);
    const source = { formula, now, onTape: unit === "in" ? table.onTape : [], unitCell };
    blocks.push(planTable(at ? { sheet, newSheet: false, row: at.row, column, title: texts.tables[table.id] } : { sheet, newSheet: true, row: 0, column: 0, title: null }, source));
    column += tableWidth(source) + 1;
  }
  const titles = [...(inputs ? [texts.roofBlock] : []), ...tables.map(({ table }) => texts.tables[table.id])];
  return { step: { title: titles.join(", "), blocks }, block: area };
}

const rowsOf = (inputs: Inputs, unit: Unit): Row[] => blockRows({ ...inputs, Unit: unit }).map(([row]) => row);

/** The roof block under a title, with the caution that goes wherever the numbers go. */
function planBlock(inputs: Inputs, unit: Unit, place: Pick<BlockPlan, "sheet" | "newSheet" | "row" | "column">): { plan: BlockPlan; area: Area } {
  const lines = blockPlan(inputs, unit);
  const cells: (CellPlan | null)[][] = [
    [{ content: texts.roofBlock, style: "title" }, null],
    ...lines,
    [null, null],
    [{ content: texts.cautionInSheet, style: "note" }, null],
  ];
  return { plan: { ...place, cells, widths: [112, 120] }, area: { sheet: place.sheet, row: place.row + 1, column: place.column, rows: lines.length, columns: 2 } };
}
