// Advance widths in ems, on the wide side of the usual sans-serif faces, so that a text never takes more room than it is given.
const WIDTHS: Readonly<Record<string, number>> = {
  " ": 0.33,
  "'": 0.29,
  '"': 0.47,
  "/": 0.35,
  ".": 0.33,
  ",": 0.33,
  ":": 0.35,
  ";": 0.35,
  "-": 0.38,
  "(": 0.4,
  ")": 0.4,
  "@": 1.02,
  "°": 0.51,
  "×": 0.85,
  "·": 0.33,
  "%": 0.97,
  "+": 0.85,
  "=": 0.85,
  i: 0.29,
  j: 0.29,
  l: 0.29,
  f: 0.37,
  t: 0.41,
  r: 0.43,
  s: 0.54,
  c: 0.57,
  z: 0.54,
  k: 0.6,
  m: 0.99,
  w: 0.83,
  I: 0.31,
  J: 0.5,
  M: 0.88,
  W: 1,
  O: 0.8,
  Q: 0.8,
  H: 0.77,
  N: 0.76,
  D: 0.78,
  G: 0.79,
};
const OTHER = 0.67;

/** How much wider bold letters are. */
export const BOLD = 1.08;

/**
 * The room that a text takes along its line, in the unit of its size.
 *
 * @example
 * textWidth("J1", 10) // => 11.7
 */
export function textWidth(text: string, size: number): number {
  let width = 0;
  for (const character of text) width += WIDTHS[character] ?? OTHER;
  return width * size;
}

/**
 * As many letters of a text, from its start, as a width has room for.
 *
 * @example
 * startWithin("J1 left", 10, 20) // => "J1 l"
 */
export function startWithin(text: string, size: number, width: number): string {
  let start = "";
  for (const letter of text) {
    if (textWidth(start + letter, size) > width) break;
    start += letter;
  }
  return start;
}
