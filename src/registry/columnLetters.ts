/**
 * A column's number by its letters, from 0.
 *
 * @example
 * columnOf("AA") // => 26
 */
export function columnOf(letters: string): number {
  return [...letters.toUpperCase()].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;
}

/**
 * A column's letters.
 *
 * @example
 * lettersOf(26) // => "AA"
 */
export function lettersOf(column: number): string {
  let letters = "";
  for (let n = column + 1; n > 0; n = Math.floor((n - 1) / 26))
    letters = String.fromCharCode(65 + ((n - 1) % 26)) + letters;
  return letters;
}
