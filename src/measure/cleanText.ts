/** No measure that people write is longer; a longer text is refused before any pattern is run on it. */
const LONGEST = 64;

/** From a printable ASCII character to its full-width form. */
const FULL_WIDTH = 0xfee0;

const VULGAR: Readonly<Record<string, string>> = {
  "½": "1/2",
  "⅓": "1/3",
  "⅔": "2/3",
  "¼": "1/4",
  "¾": "3/4",
  "⅕": "1/5",
  "⅖": "2/5",
  "⅗": "3/5",
  "⅘": "4/5",
  "⅙": "1/6",
  "⅚": "5/6",
  "⅐": "1/7",
  "⅛": "1/8",
  "⅜": "3/8",
  "⅝": "5/8",
  "⅞": "7/8",
  "⅑": "1/9",
  "⅒": "1/10",
};

/**
 * A typed measure in plain ASCII: one kind of quote, dash, slash and space, fractions spelled out, lower case.
 *
 * Word processors and phones put typographic characters in place of the typed ones, and East Asian keyboards full-width ones; they mean the same.
 *
 * @returns null when the text is too long to be a measure.
 *
 * @example
 * cleanText(" 9′ 4½″ ") // => "9' 4 1/2\""
 */
export function cleanText(text: string): string | null {
  if (text.length > LONGEST) return null;
  return text
    .replace(/[！-～]/g, (wide) => String.fromCharCode(wide.charCodeAt(0) - FULL_WIDTH))
    .replace(/[½⅓⅔¼¾⅕-⅞⅐⅑⅒]/g, (character) => ` ${VULGAR[character]}`)
    .replace(/[′’‘ʹʼ´`]/g, "'")
    .replace(/[″“”ʺ]|''/g, '"')
    .replace(/[‐-―−]/g, "-")
    .replace(/[⁄∕]/g, "/")
    .replace(/×/g, "x")
    .replace(/\s+/g, " ")
    .trim()
    .toLowerCase();
}
