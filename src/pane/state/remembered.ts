import * as z from "zod/mini";
import { ROWS } from "../../../functions/arguments/roofBlock.ts";
import { LETTERS } from "../../../functions/arguments/wingColumns.ts";
import { WING_ROWS } from "../../../functions/arguments/wingRows.ts";
import { GRID } from "../../hosts/checkStep.ts";
import type { Area } from "../../hosts/host.ts";
import { EMPTY_INPUTS, emptyWing, type Inputs } from "./fields.ts";
import { MOST } from "./sheetBlock.ts";

/** Under which key of a workbook the pane keeps what it does. */
export const PANE = "pane";

/** What the pane keeps in the workbook. */
export interface Remembered {
  readonly inputs: Inputs;
  /** Where the block stands that the fields follow. */
  readonly link: Area | null;
  /** The workbook's name for that block, which the sheet moves with the cells. */
  readonly name: string | null;
  /** What the block said when it was last seen, where the fields say otherwise: those were typed in the pane and stay. */
  readonly seen?: Inputs;
  readonly measured: Readonly<Record<string, string>>;
  readonly kerf: string;
}

const upTo = (most: number) => z.int().check(z.gte(0), z.lte(most));
// A row that a later version adds is empty in what an earlier one kept.
const rows = z.partialRecord(z.enum(ROWS), z.string());
// By letter.
const wings = z._default(z.partialRecord(z.enum(LETTERS), z.partialRecord(z.enum(WING_ROWS), z.string())), {});
const Kept = z.object({
  inputs: rows,
  wings,
  seen: z.optional(z.object({ inputs: rows, wings })),
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
  const { wings: own, seen, ...rest } = kept.data;
  return { ...rest, inputs: inputsFrom({ inputs: rest.inputs, wings: own }), ...(seen && { seen: inputsFrom(seen) }) };
}

function inputsFrom({ inputs, wings: kept }: NonNullable<z.infer<typeof Kept>["seen"]>): Inputs {
  const own = LETTERS.flatMap((letter) => (kept[letter] ? [{ ...emptyWing(letter), ...kept[letter] }] : []));
  return { ...EMPTY_INPUTS, ...inputs, wings: own };
}

/** What is kept, as text; `readRemembered` reads it. */
export function rememberedText({ inputs, seen, ...more }: Remembered): string {
  return JSON.stringify({ ...byLetter(inputs), ...more, ...(seen && { seen: byLetter(seen) }) });
}

/** A roof and its kerf alone, as text; `readRemembered` reads it too. */
export const roofText = ({ inputs, kerf }: Pick<Remembered, "inputs" | "kerf">): string =>
  rememberedText({ inputs, kerf, link: null, name: null, measured: {} });

function byLetter({ wings: all, ...inputs }: Inputs) {
  return { inputs, wings: Object.fromEntries(all.map(({ letter, ...own }) => [letter, own])) };
}
