import type { BlockCells } from "../stepCells.ts";
import { allOrNothing } from "./allOrNothing.ts";
import { contents } from "./contents.ts";
import { inExcel } from "./inExcel.ts";
import { noteMade, type Undo } from "./putBack.ts";
import { areaOn, PLACE } from "./rangeArea.ts";
import { refuseProtected, sheetNamed, sheets } from "./sheets.ts";

/** What a cell shows while its function is under way. */
const UNDER_WAY = new Set<unknown>(["#BUSY!", "#GETTING_DATA"]);

/**
 * Copies a sheet beside itself, looks and widths too, with what the cells show in the place of their formulas. Gives what it takes to undo it.
 *
 * @throws NotPutBack where a part of the copy was left.
 */
export async function copyPlain(sheet: string, name: string): Promise<Undo> {
  const { undo, area, first } = await inExcel((context) => lookFirst(context, sheet, name));
  const sought = [name, first].map((found) => ({ found, sheet: name }));
  return allOrNothing(undo, sought, async (context) => {
    const { worksheets } = context.workbook;
    const from = worksheets.getItem(sheet);
    const copy = from.copy("After", from);
    copy.name = name;
    copy.load("id");
    await context.sync();
    noteMade(undo, name, copy.id);
    if (!area) return;
    const { row, column, rows, columns } = area;
    const place = (one: Excel.Worksheet) => one.getRangeByIndexes(row, column, rows, columns);
    place(copy).copyFrom(place(from), "Values");
    await context.sync();
    const [now] = await contents(context, [area]);
    undo.after = [now!.map((line) => line.map(({ content }) => content))];
  });
}

async function lookFirst(
  context: Excel.RequestContext,
  sheet: string,
  name: string,
): Promise<{ undo: Undo; area: BlockCells["area"] | null; first: string }> {
  const from = await sheetNamed(context, sheet);
  await refuseProtected(context, [sheet]);
  const there = await sheets(context);
  const used = from.getUsedRangeOrNullObject(true).load(PLACE);
  await context.sync();
  const area = used.isNullObject ? null : areaOn(name, used);
  const stands = area ? (await contents(context, [{ ...area, sheet }]))[0]! : [];
  if (stands.some((line) => line.some(({ shows }) => UNDER_WAY.has(shows))))
    throw new Error(`Some cells of ${sheet} are still being worked out. Try again in a moment.`);
  const block = area && {
    area,
    cells: stands.map((line) => line.map(() => ({ content: "", format: "General" }))),
    widths: [],
  };
  return {
    area,
    first: firstName(
      sheet,
      there.map((one) => one.name),
    ),
    undo: {
      blocks: block ? [block] : [],
      // A copy that was cut off has the formulas still.
      before: block ? [{ contents: stands, looks: { styled: [], widths: [] } }] : [],
      sheetIds: new Map(),
      made: [],
      after: [stands.map((line) => line.map(({ shows }) => pasted(shows)))],
      begun: false,
      known: new Set(there.map(({ id }) => id)),
      sought: [],
    },
  };
}

/** The name that Excel gives a copy before it gets its own: Jacks (2), or the next that is free, 31 characters at most. */
function firstName(sheet: string, taken: readonly string[]): string {
  for (let number = 2; ; number++) {
    const end = ` (${number})`;
    const name = sheet.slice(0, 31 - end.length) + end;
    if (!taken.includes(name)) return name;
  }
}

/** What a value is written as once it is pasted: text behind an apostrophe, an error as it shows. */
function pasted(shows: string | number | boolean): string | number | boolean {
  return typeof shows === "string" && shows !== "" && !/^#[A-Z/0!?]+$/.test(shows) ? `'${shows}` : shows;
}
