/**
 * What stands before a reference to cells of a sheet. Always quoted, which any name may be.
 *
 * @example
 * sheetPrefix("Bob's bid") // => "'Bob''s bid'!"
 */
export const sheetPrefix = (sheet: string): string => `'${sheet.replaceAll("'", "''")}'!`;
