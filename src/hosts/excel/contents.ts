import type { Area } from "../host.ts";
import { bandRange, batches } from "./batches.ts";

/** What stands in one cell, as far as it must be known to write it again. */
export interface Standing {
  /** What to write to get the same cell again: a formula, a number, a logical, text behind an apostrophe, or "". */
  readonly content: string | number | boolean;
  readonly format: string;
  readonly empty: boolean;
  /** A value that a formula in another cell spilled here: nothing of the user's own. */
  readonly spilled: boolean;
  /** A linked data type, an entity or a picture in the cell, which no writing can bring back. */
  readonly rich: boolean;
}

/** What stands in the cells of areas, area by area. */
export async function contents(context: Excel.RequestContext, areas: readonly Area[]): Promise<Standing[][][]> {
  const asked = areas.map((area) => ({ area, found: [] as Standing[][] }));
  for (const batch of batches(asked)) {
    const ranges = batch.map((band) =>
      bandRange(context, band).load("formulas,values,valueTypes,numberFormat,hasSpill"),
    );
    await context.sync();
    for (const [k, range] of ranges.entries())
      batch[k]!.of.found.push(...standing(range, await spilledCells(context, range)));
  }
  return asked.map(({ found }) => found);
}

/** What stands in a loaded range. `spilled` holds "row,column" within the range. */
function standing(range: Excel.Range, spilled: ReadonlySet<string>): Standing[][] {
  return range.formulas.map((line: unknown[], i: number) =>
    line.map((formula, j) => {
      const type = range.valueTypes[i]![j]!;
      const value = range.values[i]![j];
      const isSpilled = spilled.has(`${i},${j}`);
      const content = isSpilled ? "" : again(formula, value, type);
      // Entities and pictures read as the error #VALUE! with no formula to it; hardly anyone types that error by hand.
      const rich =
        !isSpilled && !isFormula(formula, value) && (type === "RichValue" || (type === "Error" && value === "#VALUE!"));
      return { content, format: String(range.numberFormat[i]![j]), empty: content === "", spilled: isSpilled, rich };
    }),
  );
}

/** Text that equals its own formula is text that begins with "=". */
export function isFormula(formula: unknown, value: unknown): formula is string {
  return typeof formula === "string" && formula.startsWith("=") && formula !== value;
}

function again(formula: unknown, value: unknown, type: string): string | number | boolean {
  if (isFormula(formula, value)) return formula;
  // The apostrophe keeps Excel from reading a text such as 6/12 anew; it is not part of the text.
  if (type === "String" || type === "RichValue") return value === "" ? "" : `'${String(value)}`;
  return value as string | number | boolean;
}

/** Most cells asked one by one in a request: each has its own calls in it, which weigh more than a cell of a grid. */
const MOST_ASKED = 2_000;

/** Which cells of a loaded range show a value that a formula elsewhere spilled, as "row,column" within the range. */
async function spilledCells(context: Excel.RequestContext, range: Excel.Range): Promise<Set<string>> {
  const spilled = new Set<string>();
  // false: not one cell of the range takes part in a spill; null: some do.
  if (range.hasSpill === false) return spilled;
  const places = range.values.flatMap((line, i) => line.map((_, j) => [i, j] as const));
  for (let from = 0; from < places.length; from += MOST_ASKED) {
    const asked = places.slice(from, from + MOST_ASKED).map(([i, j]) => {
      const cell = range.getCell(i, j).load("address");
      return { at: `${i},${j}`, cell, parent: cell.getSpillParentOrNullObject().load("address") };
    });
    await context.sync();
    for (const { at, cell, parent } of asked)
      if (!parent.isNullObject && parent.address !== cell.address) spilled.add(at);
  }
  return spilled;
}
