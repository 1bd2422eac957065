import type { CustomData, Worksheet } from "@univerjs/core";
import type { Origin } from "../../xlsx/book.ts";

/** What of a sheet tells the file's sheet that it comes from. */
const KEY = "longpoint:from";
/** What of a row or a column tells its number there: it goes with the line wherever that goes, and comes back with undo. */
const LINE = "longpoint:line";

type Marks = Record<number, { readonly custom: CustomData }>;

/** The mark of a sheet. It names the sheet, for a copy of it has the mark too and comes from no file. */
export function originMark({ file, sheet, marked }: Origin, id: string): CustomData {
  return { [KEY]: { file, sheet, marked, id } };
}

/** Marks for the rows of a sheet that comes from a file. */
export const rowMarks = (origin: Origin | undefined): Marks => marks(origin?.rows, origin?.marked?.rows);
export const columnMarks = (origin: Origin | undefined): Marks => marks(origin?.columns, origin?.marked?.columns);

function marks(lines: readonly number[] | undefined, marked = 0): Marks {
  const all = lines ?? Array.from({ length: marked }, (_, i) => i);
  return Object.fromEntries(all.flatMap((from, i) => (from >= 0 ? [[i, { custom: { [LINE]: from } }]] : [])));
}

/** Where a sheet and its lines come from; undefined for one that was made here. */
export function originOf(worksheet: Worksheet): Origin | undefined {
  const { custom, rowData, columnData } = worksheet.getConfig();
  const mark = custom?.[KEY] as
    (Required<Pick<Origin, "file" | "sheet" | "marked">> & { readonly id: string }) | undefined;
  if (!mark || mark.id !== worksheet.getSheetId()) return undefined;
  const { file, sheet, marked } = mark;
  const rows = linesOf(rowData, marked.rows);
  const columns = linesOf(columnData, marked.columns);
  return { file, sheet, marked, ...(rows && { rows }), ...(columns && { columns }) };
}

/** For each line up to the last one of the file its number there; null where all are where they were. */
function linesOf(data: unknown, marked: number): readonly number[] | null {
  const lines: number[] = [];
  let count = 0;
  let still = true;
  for (const [key, line] of Object.entries(data as Record<string, { custom?: CustomData | null } | undefined>)) {
    const from = line?.custom?.[LINE] as number | undefined;
    if (from === undefined) continue;
    lines[Number(key)] = from;
    count++;
    still &&= from === Number(key);
  }
  return still && count === marked ? null : Array.from(lines, (from) => from ?? -1);
}
