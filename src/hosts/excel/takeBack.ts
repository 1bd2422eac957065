import { address } from "../address.ts";
import type { Written } from "../host.ts";
import { contents } from "./contents.ts";
import { inExcel } from "./inExcel.ts";
import type { Layer } from "./layers.ts";
import { putBack, type Undo } from "./putBack.ts";
import { refuseProtected, sheetNames } from "./sheets.ts";

/** What belongs to what was handed out; "done" once it was taken back. */
const kept = new WeakMap<Written, Undo | "done">();

/** Keeps what a write needs to be taken back, and gives the write's receipt. */
export function keepUndo(written: Written, undo: Undo): Written {
  kept.set(written, undo);
  return written;
}

/** Takes a write back, or names the cells that were edited since and changes nothing. */
export async function takeBack(written: Written): Promise<readonly string[]> {
  const undo = kept.get(written);
  if (!undo) throw new Error("This write is not known any more and cannot be taken back.");
  if (undo === "done") return [];
  return inExcel(async (context) => {
    const there = await namesThere(context);
    const edited = await editedSince(context, undo, there);
    if (edited.length) return edited;
    await refuseProtected(
      context,
      undo.all.map(({ sheet }) => sheet).filter((sheet) => there.has(sheet.toLowerCase())),
    );
    await putBack(context, undo);
    kept.set(written, "done");
    return [];
  });
}

async function namesThere(context: Excel.RequestContext): Promise<Set<string>> {
  return new Set((await sheetNames(context)).map((name) => name.toLowerCase()));
}

async function editedSince(context: Excel.RequestContext, undo: Undo, there: ReadonlySet<string>): Promise<string[]> {
  const layers = undo.all.filter(({ sheet }) => there.has(sheet.toLowerCase()));
  const now = await contents(context, layers);
  const edited = new Set<string>();
  const written = new Set<string>();
  for (const layer of undo.all) eachPlanned(layer, (i, j) => written.add(at(layer, i, j)));
  for (const [k, layer] of layers.entries()) {
    const after = undo.after[undo.all.indexOf(layer)]!;
    eachPlanned(layer, (i, j) => {
      const cell = now[k]![i]![j]!;
      // A spilled value is the formula's doing and counts as empty; whatever else stands in the spill's area is the user's, but for the cells of the block itself.
      if (cell.content !== after[i]![j]!.content) edited.add(at(layer, i, j));
    });
  }
  for (const { name } of undo.made)
    if (there.has(name.toLowerCase()))
      for (const other of await filledOn(context, name)) if (!written.has(other)) edited.add(other);
  return [...edited];
}

function eachPlanned(layer: Layer, visit: (i: number, j: number) => void): void {
  for (const [i, line] of layer.cells.entries()) for (let j = 0; j < line.length; j++) if (line[j]) visit(i, j);
}

function at({ sheet, row, column }: Layer, i: number, j: number): string {
  return address(sheet, row + i, column + j);
}

/** The addresses of all filled cells of a sheet that the step made, spilled values aside. */
async function filledOn(context: Excel.RequestContext, sheet: string): Promise<string[]> {
  const used = context.workbook.worksheets
    .getItem(sheet)
    .getUsedRangeOrNullObject(true)
    .load("rowIndex,columnIndex,rowCount,columnCount");
  await context.sync();
  if (used.isNullObject) return [];
  const { rowIndex: row, columnIndex: column, rowCount, columnCount } = used;
  const cells = new Array<null[]>(rowCount).fill(new Array<null>(columnCount).fill(null));
  const [lines] = await contents(context, [{ sheet, row, column, cells, spill: false, widths: [], frozenRows: 0 }]);
  return lines!.flatMap((line, i) =>
    line.flatMap((cell, j) => (cell.empty ? [] : [address(sheet, row + i, column + j)])),
  );
}
