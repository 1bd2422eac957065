import { changedSince, type Contents } from "../changedSince.ts";
import type { Area } from "../host.ts";
import { contents } from "./contents.ts";
import { inExcel } from "./inExcel.ts";
import { findSought, putBack, type Undo } from "./putBack.ts";
import { areaOn, PLACE } from "./rangeArea.ts";
import { refuseProtected, sheets } from "./sheets.ts";

type Content = Contents[number][number];

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
  const there = await sheets(context);
  findSought(undo, there);
  const names = new Map(there.map(({ id, name }) => [id, name]));
  const blocks = undo.blocks.flatMap((block, k) => {
    const id = undo.sheetIds.get(block);
    const sheet = id === undefined ? undefined : names.get(id);
    return id === undefined || sheet === undefined ? [] : [{ k, block, id, sheet }];
  });
  await refuseProtected(context, [...blocks.map(({ id }) => id), ...undo.made.filter((id) => names.has(id))]);
  const made = undo.made.filter((id) => names.has(id));
  const used = await usedAreas(context, made);
  // A sheet that the step made is looked at as a whole, and so are the blocks on it; of the others, the blocks.
  const areas = [
    ...used.values(),
    ...blocks.filter(({ id }) => !made.includes(id)).map(({ id, block }) => ({ ...block.area, sheet: id })),
  ];
  // A spilled value is the formula's doing and counts as empty; whatever else stands in the spill's area is the user's.
  const found = await contents(context, areas);
  const now = new Map(areas.map((area, i) => [area, found[i]!.map((line) => line.map(({ content }) => content))]));
  const standing = ({ id, block }: (typeof blocks)[number]): Contents => {
    const area = made.includes(id)
      ? used.get(id)
      : areas.find((one) => one.sheet === id && sameCorner(one, block.area));
    return part(area, area && now.get(area), block.area);
  };
  return changedSince(
    blocks.map((one) => {
      const held = standing(one);
      return {
        block: one.block,
        after: undo.begun ? halfWay(undo, one.k, held) : undo.after[one.k]!,
        now: { sheet: one.sheet, contents: held },
      };
    }),
    made.map((id) => ({
      sheet: names.get(id)!,
      filled: filledIn(used.get(id), used.has(id) ? now.get(used.get(id)!)! : []),
    })),
  );
}

function sameCorner(a: Area, b: Area): boolean {
  return a.row === b.row && a.column === b.column && a.rows === b.rows && a.columns === b.columns;
}

/** The area of each sheet that holds anything, by the sheet's id; none for an empty sheet. */
async function usedAreas(context: Excel.RequestContext, ids: readonly string[]): Promise<Map<string, Area>> {
  const asked = ids.map((sheet) => ({
    sheet,
    used: context.workbook.worksheets.getItem(sheet).getUsedRangeOrNullObject(true).load(PLACE),
  }));
  await context.sync();
  return new Map(
    asked.flatMap(({ sheet, used }) => (used.isNullObject ? [] : [[sheet, areaOn(sheet, used)] as const])),
  );
}

/** What stands in a part of an area that was looked at; nothing beside it. */
function part(area: Area | undefined, cells: Contents | undefined, { row, column, rows, columns }: Area): Content[][] {
  return Array.from({ length: rows }, (_, i) =>
    Array.from({ length: columns }, (__, j) =>
      area && cells ? (cells[row + i - area.row]?.[column + j - area.column] ?? "") : "",
    ),
  );
}

function filledIn(area: Area | undefined, cells: Contents): { row: number; column: number }[] {
  return cells.flatMap((line, i) =>
    line.flatMap((content, j) => (content === "" || !area ? [] : [{ row: area.row + i, column: area.column + j }])),
  );
}

/** What a block may hold where an earlier putting back was cut off: what was written, or what stood there before; a formula counts as written, however Excel spells it. */
function halfWay(undo: Undo, k: number, now: Contents): Contents {
  const formula = (content: Content) => typeof content === "string" && content.startsWith("=");
  return now.map((line, i) =>
    line.map((content, j) => {
      const written = undo.after[k]![i]![j]!;
      const before = undo.before[k]?.contents[i]?.[j]?.content ?? "";
      return content === before || (formula(content) && formula(written)) ? content : written;
    }),
  );
}
