import { address } from "./address.ts";
import type { BlockLayout, CellLayout, WriteStep } from "./host.ts";

/** Most rows and columns a sheet has. Excel's limits, kept by both hosts so that a plan fits either. */
export const GRID = { rows: 1_048_576, columns: 16_384 };

/**
 * Why a step cannot be written, in words for people, or null when it can. Looked at before the first cell changes.
 *
 * Both hosts ask here, so that both refuse alike.
 */
export function checkStep(step: WriteStep, sheets: readonly string[]): string | null {
  const there = new Set(sheets.map(fold));
  const made = new Set<string>();
  for (const { newSheet, sheet } of step.blocks) {
    if (!newSheet || made.has(fold(sheet))) continue;
    if (there.has(fold(sheet))) return `There is already a sheet named ${sheet}. Choose another name.`;
    const bad = checkSheetName(sheet);
    if (bad) return bad;
    made.add(fold(sheet));
  }
  for (const block of step.blocks) {
    if (!there.has(fold(block.sheet)) && !made.has(fold(block.sheet))) return `There is no sheet named ${block.sheet}.`;
    const bad = checkBlock(block, made.has(fold(block.sheet)));
    if (bad) return bad;
  }
  return null;
}

// Sheet names that differ in case only are one name, in Excel and so here.
function fold(name: string): string {
  return name.toLowerCase();
}

function checkSheetName(name: string): string | null {
  if (name.trim() === "") return "A sheet needs a name.";
  if (name.length > 31) return `The sheet name ${name} has ${name.length} characters; 31 at most.`;
  if (/[\\/?*[\]:]/.test(name) || name.startsWith("'") || name.endsWith("'"))
    return `The sheet name ${name} may not hold \\ / ? * [ ] : nor begin or end with an apostrophe.`;
  return fold(name) === "history" ? "Excel keeps the sheet name History for itself. Choose another name." : null;
}

function checkBlock(block: BlockLayout, isNew: boolean): string | null {
  const { sheet, row, column, cells, spill } = block;
  const columns = cells[0]?.length ?? 0;
  if (!cells.length || !columns) return `There is nothing to write at ${sheet}.`;
  if (cells.some((line) => line.length !== columns))
    return `The rows for ${address(sheet, row, column)} are not of one width.`;
  const outside =
    !fits(row, column, cells.length, columns) ||
    (spill && !fits(row + spill.row, column + spill.column, spill.rows, spill.columns));
  if (outside) return `The block for ${sheet} runs over the sheet's edge. Start further up or to the left.`;
  if (block.frozenRows && !isNew) return `Rows can be frozen on a new sheet only, and ${sheet} is there already.`;
  for (let i = 0; i < cells.length; i++)
    for (let j = 0; j < columns; j++) {
      const bad = checkCell(cells[i]![j]!);
      if (bad) return `${address(sheet, row + i, column + j)}: ${bad}`;
    }
  return null;
}

function fits(row: number, column: number, rows: number, columns: number): boolean {
  return (
    [row, column, rows, columns].every(Number.isInteger) &&
    row >= 0 &&
    column >= 0 &&
    rows > 0 &&
    columns > 0 &&
    row + rows <= GRID.rows &&
    column + columns <= GRID.columns
  );
}

function checkCell(cell: CellLayout | null): string | null {
  if (!cell) return null;
  const { content } = cell;
  if (typeof content === "number") return Number.isFinite(content) ? null : "not a finite number.";
  const most = content.startsWith("=") ? 8192 : 32767;
  return content.length > most ? `${content.length} characters, where a cell holds ${most} at most.` : null;
}
