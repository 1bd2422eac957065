import * as z from "zod/mini";
import { ROWS } from "../../../functions/arguments/roofBlock.ts";
import { LETTERS } from "../../../functions/arguments/wingColumns.ts";
import { WING_ROWS } from "../../../functions/arguments/wingRows.ts";
import { GRID } from "../../hosts/checkStep.ts";
import type { Area } from "../../hosts/host.ts";
import { EMPTY_INPUTS, emptyWing, type Inputs } from "./fields.ts";
import { MOST } from "./sheetBlock.ts";

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
  // By letter.
  wings: z._default(z.partialRecord(z.enum(LETTERS), z.partialRecord(z.enum(WING_ROWS), z.string())), {}),
  link: z.nullable(
    z.object({
      sheet: z.string(),
      row: upTo(GRID.rows - 1),
      column: upTo(GRID.columns - 1),
      rows: upTo(MOST.rows),
      columns: upTo(MOST.columns),
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
  if (!kept.success) return null;
  const { wings, ...rest } = kept.data;
  const own = LETTERS.flatMap((letter) => (wings[letter] ? [{ ...emptyWing(letter), ...wings[letter] }] : []));
  return { ...rest, inputs: { ...EMPTY_INPUTS, ...rest.inputs, wings: own } };
}

/** What is kept, as text; `readRemembered` reads it. */
export function rememberedText({ inputs: { wings, ...inputs }, ...more }: Remembered): string {
  return JSON.stringify({
    inputs,
    wings: Object.fromEntries(wings.map(({ letter, ...rows }) => [letter, rows])),
    ...more,
  });
}
