import { changedSince } from "../changedSince.ts";
import { contents } from "./contents.ts";
import { inExcel } from "./inExcel.ts";
import { putBack, type Undo } from "./putBack.ts";
import { refuseProtected, sheets } from "./sheets.ts";

/** Takes a write back, or names the cells that were edited since and changes nothing. */
export function takeBack(undo: Undo): Promise<readonly string[]> {
  return inExcel(async (context) => {
    const edited = await editedSince(context, undo);
    if (edited.length) return edited;
    await putBack(context, undo);
    return [];
  });
}

async function editedSince(context: Excel.RequestContext, undo: Undo): Promise<string[]> {
  const names = new Map((await sheets(context)).map(({ id, name }) => [id, name]));
  const there = undo.blocks.filter((block) => names.has(undo.sheetIds.get(block)!));
  await refuseProtected(
    context,
    there.map((block) => undo.sheetIds.get(block)!),
  );
  const found = await contents(
    context,
    there.map((block) => ({ ...block.area, sheet: undo.sheetIds.get(block)! })),
  );
  // A spilled value is the formula's doing and counts as empty; whatever else stands in the spill's area is the user's.
  const now = new Map(there.map((block, k) => [block, found[k]!.map((line) => line.map(({ content }) => content))]));
  const made = [];
  for (const id of undo.made) {
    const sheet = names.get(id);
    if (sheet !== undefined) made.push({ sheet, filled: await filledOn(context, id) });
  }
  return changedSince(
    undo.blocks.map((block, k) => {
      const sheet = names.get(undo.sheetIds.get(block)!);
      return { block, after: undo.after[k]!, now: sheet === undefined ? null : { sheet, contents: now.get(block)! } };
    }),
    made,
  );
}

/** All filled cells of a sheet, spilled values aside. */
async function filledOn(context: Excel.RequestContext, sheet: string): Promise<{ row: number; column: number }[]> {
  const used = context.workbook.worksheets
    .getItem(sheet)
    .getUsedRangeOrNullObject(true)
    .load("rowIndex,columnIndex,rowCount,columnCount");
  await context.sync();
  if (used.isNullObject) return [];
  const { rowIndex: row, columnIndex: column, rowCount: rows, columnCount: columns } = used;
  const [lines] = await contents(context, [{ sheet, row, column, rows, columns }]);
  return lines!.flatMap((line, i) =>
    line.flatMap((cell, j) => (cell.empty ? [] : [{ row: row + i, column: column + j }])),
  );
}
