import { address } from "../address.ts";
import type { Area } from "../host.ts";
import { rangeOf } from "./batches.ts";

/**
 * Refuses in words where cells cannot be seen or would swallow what is written: rows or columns that a filter or a hand has hidden, and merged cells.
 *
 * Merged cells can be found from ExcelApi 1.13 on; before that a table over them shows #SPILL!.
 */
export async function refusePlace(context: Excel.RequestContext, areas: readonly Area[]): Promise<void> {
  // One cell in a hidden row is a value that the user hid on purpose, such as a row of the roof block.
  const large = areas.filter(({ rows, columns }) => rows * columns > 1);
  if (!large.length) return;
  const findsMerged = typeof Office !== "undefined" && Office.context?.requirements.isSetSupported("ExcelApi", "1.13");
  const asked = large.map((area) => {
    const range = rangeOf(context, area).load("rowHidden,columnHidden");
    return { area, range, merged: findsMerged ? range.getMergedAreasOrNullObject().load("address") : null };
  });
  await context.sync();
  for (const { area, range, merged } of asked) {
    const at = address(area.sheet, area.row, area.column);
    // null: some of them are.
    if (range.rowHidden !== false)
      throw new Error(
        `Rows are hidden where the table at ${at} would go, by a filter or by hand. Show them (Data, Clear, or Home, Format, Unhide Rows) or choose another place.`,
      );
    if (range.columnHidden !== false)
      throw new Error(
        `Columns are hidden where the table at ${at} would go. Show them (Home, Format, Unhide Columns) or choose another place.`,
      );
    if (merged && !merged.isNullObject)
      throw new Error(
        `The cells ${merged.address} are merged. Take them apart (Home, Merge & Center) or choose another place.`,
      );
  }
}
