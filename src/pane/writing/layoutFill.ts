import type { BlockRow } from "../../../functions/arguments/roofBlock.ts";
import type { Unit } from "../../measure/unit.ts";
import type { Area, BlockLayout, CellLayout, WriteStep } from "../../hosts/host.ts";
import { blockLayout, blockRows } from "../state/blockCells.ts";
import type { Inputs } from "../state/fields.ts";
import { freeSheetName } from "./freeSheetName.ts";
import type { TablePlace } from "./blockAt.ts";
import { layoutTable, type TableFormula } from "./layoutTable.ts";
import { areaReference, reference } from "../state/reference.ts";
import { texts } from "../words/texts.ts";

/** What a table hangs on, as a formula on its sheet names it. */
export interface HangsOn {
  readonly block: string;
  /** The cell that holds the value of a row of the block; null where the block does not have that row. */
  cell(row: BlockRow): string | null;
}

/** A table to write: its name, the sheet it gets where it stands alone, and its cells for a place. */
export interface TableToWrite {
  readonly title: string;
  readonly sheet: string;
  layout(place: TablePlace, on: HangsOn): BlockLayout;
}

/** What is to be written, and where. */
export interface FillRequest {
  /** The block to write; null where the tables hang on one that stands in the sheet already. */
  readonly inputs: Inputs | null;
  /** The block in the sheet, and on which of its lines each row stands: not null where `inputs` is. */
  readonly block: { readonly area: Area; readonly lines: ReadonlyMap<BlockRow, number> } | null;
  /** The workbook's name for that block, or for the one to write; null where it has none. */
  readonly name: string | null;
  readonly unit: Unit;
  readonly tables: readonly TableToWrite[];
  /** A cell to start from, or null for new sheets. */
  readonly at: Pick<Area, "sheet" | "row" | "column"> | null;
  /** Names of the sheets that are there. */
  readonly sheets: readonly string[];
}

/** A step to write, and where the block is that its tables hang on. */
export interface FillLayout {
  readonly step: WriteStep;
  readonly block: Area;
}

/** A table that is one call on the block. */
export function spillingTable(
  name: Pick<TableToWrite, "title" | "sheet">,
  { formula, ...shown }: Omit<TableFormula, "formula" | "unitCell"> & { readonly formula: (on: HangsOn) => string },
): TableToWrite {
  return {
    ...name,
    layout: (place, on) => layoutTable(place, { ...shown, formula: formula(on), unitCell: on.cell("Unit") }),
  };
}

/**
 * Lays the chosen tables out: side by side from a cell, because every one of them may grow downwards, or each on a sheet of its own.
 *
 * Everything but the block is a live formula on the block.
 */
export function layoutFill({ inputs, block, name, unit, tables, at, sheets }: FillRequest): FillLayout {
  const names = [...sheets];
  const nameFor = (wish: string) => {
    const free = freeSheetName(wish, names);
    names.push(free);
    return free;
  };
  const blocks: BlockLayout[] = [];
  let column = at?.column ?? 0;
  let hung = block;
  if (inputs) {
    const written = layoutBlock(inputs, unit, {
      sheet: at?.sheet ?? nameFor(texts.roofSheet),
      newSheet: !at,
      row: at?.row ?? 0,
      column,
    });
    blocks.push(written.layout);
    const lines = blockRows({ ...inputs, Unit: unit }).map(([row], i) => [row as BlockRow, i] as const);
    hung = { area: written.area, lines: new Map(lines) };
    column += written.area.columns + 1;
  }
  const { area, lines } = hung!;
  const { sheet: from, row: top, column: left } = area;
  for (const table of tables) {
    const sheet = at?.sheet ?? nameFor(table.sheet);
    const on = {
      block: name ?? areaReference(area, sheet),
      cell: (row: BlockRow) => (lines.has(row) ? reference(from, top + lines.get(row)!, left + 1, sheet) : null),
    };
    const layout = table.layout(
      at
        ? { sheet, newSheet: false, row: at.row, column, title: table.title }
        : { sheet, newSheet: true, row: 0, column: 0, title: null },
      on,
    );
    blocks.push(layout);
    column += layout.cells[0]!.length + 1;
  }
  const titles = [...(inputs ? [texts.roofBlock] : []), ...tables.map(({ title }) => title)];
  return { step: { title: texts.together(titles), blocks }, block: area };
}

/** The roof block under a title, with the caution that goes wherever the numbers go. */
function layoutBlock(
  inputs: Inputs,
  unit: Unit,
  place: Pick<BlockLayout, "sheet" | "newSheet" | "row" | "column">,
): { layout: BlockLayout; area: Area } {
  const lines = blockLayout(inputs, unit);
  const columns = lines[0]!.length;
  const rest = Array.from({ length: columns - 1 }, () => null);
  const cells: (CellLayout | null)[][] = [
    [{ content: texts.roofBlock, style: "title" }, ...rest],
    ...lines,
    [null, ...rest],
    [{ content: texts.cautionInSheet, style: "note" }, ...rest],
  ];
  return {
    layout: { ...place, cells, widths: [112, ...rest.map(() => 120)] },
    area: { sheet: place.sheet, row: place.row + 1, column: place.column, rows: lines.length, columns },
  };
}
