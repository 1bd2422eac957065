import { address } from "../address.ts";
import { checkStep } from "../checkStep.ts";
import type { WriteStep } from "../host.ts";
import { contents } from "./contents.ts";
import { inExcel } from "./inExcel.ts";
import { layers } from "./layers.ts";
import { sheetNames } from "./sheets.ts";

/** The filled cells that a step would write over, spilled values among them: writing there would block the other spill. */
export async function occupied(step: WriteStep): Promise<readonly string[]> {
  return inExcel(async (context) => {
    const names = await sheetNames(context);
    const bad = checkStep(step, names);
    if (bad) throw new Error(bad);
    const there = new Set(names.map((name) => name.toLowerCase()));
    const old = layers(step).filter(({ sheet }) => there.has(sheet.toLowerCase()));
    const found: { sheet: string; row: number; column: number }[] = [];
    for (const [k, lines] of (await contents(context, old)).entries()) {
      const { sheet, row, column, cells } = old[k]!;
      for (const [i, line] of lines.entries())
        for (const [j, cell] of line.entries())
          if (cells[i]![j] && (!cell.empty || cell.spilled)) found.push({ sheet, row: row + i, column: column + j });
    }
    // By rows, as one reads a sheet; the sheets in the step's order.
    const sheets = [...new Set(old.map(({ sheet }) => sheet))];
    found.sort((a, b) => sheets.indexOf(a.sheet) - sheets.indexOf(b.sheet) || a.row - b.row || a.column - b.column);
    return [...new Set(found.map(({ sheet, row, column }) => address(sheet, row, column)))];
  });
}
