/**
 * A formula with nothing in its texts, so that what is looked for is not found there.
 *
 * @example
 * withoutTexts('=A1&"B1 ""C1"""') // => '=A1&""'
 */
export function withoutTexts(formula: string): string {
  return formula.replace(/"(?:[^"]|"")*"/g, '""');
}
