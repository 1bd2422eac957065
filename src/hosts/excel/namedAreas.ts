import { areaReference } from "../areaReference.ts";
import type { Area } from "../host.ts";
import { inExcel } from "./inExcel.ts";
import { areaOf, PLACE_IN_SHEET } from "./rangeArea.ts";

/** The names of the whole workbook, each with the area it stands for now; null where that is none, or its cells are gone. */
export function namedAreas(): Promise<ReadonlyMap<string, Area | null>> {
  return inExcel(async (context) => {
    const names = context.workbook.names.load("items/name");
    await context.sync();
    const found = names.items.map((item) => ({
      name: item.name,
      range: item.getRangeOrNullObject().load(PLACE_IN_SHEET),
    }));
    await context.sync();
    return new Map(found.map(({ name, range }) => [name, range.isNullObject ? null : areaOf(range)]));
  });
}

/** Gives an area a name of the whole workbook, or moves that name to it: formulas that use it read the new area. */
export function nameArea(name: string, area: Area): Promise<void> {
  return inExcel(async (context) => {
    const item = context.workbook.names.getItemOrNullObject(name);
    await context.sync();
    const formula = `=${areaReference(area)}`;
    if (item.isNullObject) context.workbook.names.add(name, formula);
    else item.formula = formula;
    await context.sync();
  });
}
