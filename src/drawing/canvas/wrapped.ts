import { textWidth } from "./textWidth.ts";
import { NO_BREAK, nonBreaking } from "./nonBreaking.ts";

/** Letters of the longest word that is left whole where it is wider than its line. */
const LONGEST = 30;

/**
 * A text in lines no wider than a width, every length on one of them; a word that is wider still stands alone, and one that is no word but a row of letters is broken.
 *
 * @example
 * wrapped("Hook on the long point", 10, 80) // => ["Hook on the", "long point"]
 */
export function wrapped(text: string, size: number, width: number): string[] {
  const lines: string[] = [];
  for (const word of nonBreaking(text)
    .split(" ")
    .map((one) => one.replaceAll(NO_BREAK, " "))
    .flatMap((one) => (one.length > LONGEST ? parts(one, size, width) : [one]))) {
    const longer = lines.length === 0 ? word : `${lines.at(-1)} ${word}`;
    if (lines.length > 0 && textWidth(longer, size) <= width) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}

function parts(word: string, size: number, width: number): string[] {
  const found = [""];
  for (const letter of word) {
    const last = found.at(-1)!;
    if (last !== "" && textWidth(last + letter, size) > width) found.push(letter);
    else found[found.length - 1] = last + letter;
  }
  return found;
}
