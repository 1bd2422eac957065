import type { ICellData } from "@univerjs/core";
import { CellValueType } from "@univerjs/core";
import { SetRangeValuesMutation } from "@univerjs/sheets";
import type { Area } from "../host.ts";
import { cells } from "./cells.ts";
import { findSheet } from "./findSheet.ts";
import type { EmbeddedSheet } from "./runningSheet.ts";
import { inOneStep } from "./undoStep.ts";

/**
 * Puts another text in the place of one, capitals or not, in what was typed into cells: values and formulas. Results and looks stay. One undo step.
 *
 * @returns how many cells changed.
 */
export async function replaceCells(
  sheet: EmbeddedSheet,
  areas: readonly Area[],
  text: string,
  by: string,
): Promise<number> {
  const wanted = new RegExp(text.trim().replace(/[.*+?^${}()|[\]\\/]/g, "\\$&"), "gi");
  if (text.trim() === "") return 0;
  const changed = new Map<string, Record<number, Record<number, ICellData>>>();
  let count = 0;
  for (const { sheet: name, row, column } of areas) {
    const worksheet = findSheet(sheet.workbook, name);
    const at = worksheet && cells(sheet, worksheet);
    // What a spill shows is typed elsewhere.
    if (!at || at.contentAt(row, column) === "") continue;
    const { formula, value } = at.at(row, column);
    const old = formula ?? (typeof value === "boolean" ? "" : String(value));
    const now = old.replace(wanted, () => by);
    if (now === old) continue;
    count++;
    const matrix = changed.get(name) ?? {};
    changed.set(name, matrix);
    (matrix[row] ??= {})[column] = {
      ...contentOf(now, formula !== null, typeof value === "number"),
      si: null,
      p: null,
    };
  }
  await inOneStep(sheet, (undo) => {
    for (const [name, cellValue] of changed) {
      const worksheet = findSheet(sheet.workbook, name)!;
      const place = { unitId: worksheet.getUnitId(), subUnitId: worksheet.getSheetId() };
      undo.do({ id: SetRangeValuesMutation.id, params: { ...place, cellValue } });
    }
  });
  await sheet.calculation.settled();
  return count;
}

/** A formula stays one, a number too where it still is one; a text never becomes either. */
function contentOf(text: string, formula: boolean, number: boolean): Pick<ICellData, "v" | "t" | "f"> {
  if (formula && text.startsWith("=")) return { v: null, t: null, f: text };
  if (text === "") return { v: null, t: null, f: null };
  if (number && text.trim() !== "" && Number.isFinite(Number(text)))
    return { v: Number(text), t: CellValueType.NUMBER, f: null };
  return { v: text, t: CellValueType.STRING, f: null };
}
