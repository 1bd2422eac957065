import type { Area } from "../host.ts";
import { bandRange, batches, type Band } from "./batches.ts";
import { isFormula } from "./isFormula.ts";
import { spilledCells } from "./spilledCells.ts";

/** What stands in one cell, as far as it must be known to write it again. */
export interface Standing {
  /** What to write to get the same cell again: a formula, a number, a logical, text behind an apostrophe, or "". */
  readonly content: string | number | boolean;
  /** The value that is seen. */
  readonly shows: string | number | boolean;
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
    for (const { band, range } of await loaded(context, batch)) {
      const { area, found } = band.of;
      const at = { ...area, row: area.row + band.from, rows: band.rows };
      found.push(...standing(range, await spilledCells(context, range, at)));
    }
  }
  return asked.map(({ found }) => found);
}

/** Loads pieces of areas in one request, and in smaller ones where cells hold so much text that Excel refuses the answer. */
async function loaded<T extends { readonly area: Area }>(
  context: Excel.RequestContext,
  bands: readonly Band<T>[],
): Promise<{ band: Band<T>; range: Excel.Range }[]> {
  const asked = bands.map((band) => ({
    band,
    range: bandRange(context, band).load("formulas,values,valueTypes,numberFormat,hasSpill"),
  }));
  try {
    await context.sync();
    return asked;
  } catch (error) {
    const [first] = bands;
    if ((error as { code?: string }).code !== "ResponsePayloadSizeLimitExceeded" || !first) throw error;
    const half = Math.ceil(first.rows / 2);
    if (bands.length === 1 && half === first.rows) throw error;
    const parts =
      bands.length > 1
        ? [bands.slice(0, 1), bands.slice(1)]
        : [[{ ...first, rows: half }], [{ ...first, from: first.from + half, rows: first.rows - half }]];
    return [...(await loaded(context, parts[0]!)), ...(await loaded(context, parts[1]!))];
  }
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
      return {
        content,
        shows: value as Standing["shows"],
        format: String(range.numberFormat[i]![j]),
        empty: content === "",
        spilled: isSpilled,
        rich,
      };
    }),
  );
}

function again(formula: unknown, value: unknown, type: string): string | number | boolean {
  if (isFormula(formula, value)) return formula;
  // The apostrophe keeps Excel from reading a text such as 6/12 anew; it is not part of the text.
  if (type === "String" || type === "RichValue") return value === "" ? "" : `'${String(value)}`;
  return value as string | number | boolean;
}
