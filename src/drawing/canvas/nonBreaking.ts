/** A space at which no line breaks. */
export const NO_BREAK = "\u00a0";

/**
 * A text whose lengths stay on one line: 3 1/2" broken behind the 3 is read as 3".
 *
 * @example
 * nonBreaking("seat level, 3 1/2 in").split(" ") // => ["seat", "level,", "3\u00a01/2", "in"]
 */
export function nonBreaking(text: string): string {
  return text.replace(/(\d['"]?) (?=\d|mm)/g, `$1${NO_BREAK}`);
}
