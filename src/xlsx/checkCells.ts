import type { Sheet, Workbook } from "hucre";
import { UnreadableFile } from "./unreadableFile.ts";

/** Most cells of a file that are opened: more would stop the page. */
export const MOST_CELLS = 200_000;
/** Limits of the format itself, which some programs pass. */
const MOST_CHARACTERS = { text: 32_767, formula: 8_192 };

/**
 * Refuses a file whose cells pass a limit, before anything is built of them.
 *
 * @throws UnreadableFile, with the limit and the first cell that passes it.
 */
export function checkCells({ sheets }: Workbook): void {
  const count = sheets.reduce((sum, { rows }) => sum + rows.reduce((cells, row) => cells + row.length, 0), 0);
  if (count > MOST_CELLS)
    throw new UnreadableFile(
      `The file has ${count.toLocaleString("en")} cells; ${MOST_CELLS.toLocaleString("en")} at most can be opened here.`,
    );
  for (const sheet of sheets) {
    sheet.rows.forEach((row, i) =>
      row.forEach((value, j) => {
        if (typeof value === "string") check(sheet, i, j, "a text", value, MOST_CHARACTERS.text);
      }),
    );
    for (const [at, { formula }] of sheet.cells ?? []) {
      const [row, column] = at.split(",").map(Number) as [number, number];
      if (formula !== undefined) check(sheet, row, column, "a formula", formula, MOST_CHARACTERS.formula);
    }
  }
}

function check({ name }: Sheet, row: number, column: number, what: string, text: string, most: number): void {
  if (text.length > most)
    throw new UnreadableFile(
      `Row ${row + 1}, column ${column + 1} of the sheet ${name} holds ${what} of ${text.length.toLocaleString("en")} characters; ${most.toLocaleString("en")} at most can be opened here.`,
    );
}
