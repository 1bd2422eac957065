import * as z from "zod/mini";
import { ROWS } from "../../../functions/arguments/roofBlock.ts";
import { GRID } from "../../hosts/checkStep.ts";
import type { Area } from "../../hosts/host.ts";
import { EMPTY_INPUTS, type Inputs } from "./fields.ts";
import { MOST_BLOCK } from "./sheetBlock.ts";

/** What the pane keeps in the workbook. */
export interface Remembered {
  readonly inputs: Inputs;
  /** Where the block stands that the fields follow. */
  readonly link: Area | null;
  /** The workbook's name for that block, which the sheet moves with the cells. */
  readonly name: string | null;
  readonly measured: Readonly<Record<string, string>>;
  readonly kerf: string;
}

const upTo = (most: number) => z.int().check(z.gte(0), z.lte(most));
const Kept = z.object({
  // A row that a later version adds is empty in what an earlier one kept.
  inputs: z.partialRecord(z.enum(ROWS), z.string()),
  link: z.nullable(
    z.object({
      sheet: z.string(),
      row: upTo(GRID.rows - 1),
      column: upTo(GRID.columns - 1),
      rows: upTo(MOST_BLOCK.rows),
      columns: upTo(MOST_BLOCK.columns),
    }),
  ),
  name: z._default(z.nullable(z.string()), null),
  measured: z.record(z.string(), z.string()),
  kerf: z._default(z.string(), ""),
});

/** Reads what was kept; null for anything else, whoever wrote it there. */
export function readRemembered(text: string): Remembered | null {
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch {
    return null;
  }
  const kept = Kept.safeParse(data);
  return kept.success ? { ...kept.data, inputs: { ...EMPTY_INPUTS, ...kept.data.inputs } } : null;
}
