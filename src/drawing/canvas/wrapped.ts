import { textWidth } from "./textWidth.ts";
import { NO_BREAK, nonBreaking } from "./nonBreaking.ts";

/**
 * A text in lines no wider than a width, every length on one of them; a word that is wider still stands alone.
 *
 * @example
 * wrapped("Hook on the long point", 10, 80) // => ["Hook on the", "long point"]
 */
export function wrapped(text: string, size: number, width: number): string[] {
  const lines: string[] = [];
  for (const word of nonBreaking(text)
    .split(" ")
    .map((one) => one.replaceAll(NO_BREAK, " "))) {
    const longer = lines.length === 0 ? word : `${lines.at(-1)} ${word}`;
    if (lines.length > 0 && textWidth(longer, size) <= width) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}
