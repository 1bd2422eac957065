import { lettersOf } from "../registry/columnLetters.ts";

/**
 * A cell's address for people, sheet included, as a formula would write it.
 *
 * A sheet name is quoted unless it is a plain word that cannot be read as something else. Rows and columns count from 0.
 *
 * @example
 * address("Jacks", 3, 1) // => "Jacks!B4"
 */
export function address(sheet: string, row: number, column: number): string {
  const plain =
    /^[A-Za-z_][A-Za-z_]*\d{0,2}$/.test(sheet) && !/^[A-Za-z]{1,3}\d+$/.test(sheet) && !/^(r|c|rc)\d*$/i.test(sheet);
  return `${plain ? sheet : `'${sheet.replaceAll("'", "''")}'`}!${lettersOf(column)}${row + 1}`;
}
