import Fraction from "fraction.js";

const WRITTEN = /^(?:(?:\d+(?: ?- ?| ))?\d+ ?\/ ?\d*[1-9]\d*|\d+(?:\.\d*)?|\.\d+)$/;

/**
 * A written number as an exact fraction: whole, decimal, fraction, or whole and fraction with a space or dash between.
 *
 * It is read from its text and never from a double, so that 24.1 feet are 289.2 inches and not the nearest sum of doubles.
 *
 * @returns null when the text is no such number (a sign and a zero denominator included).
 *
 * @example
 * exact("7-3/16").valueOf() // => 7.1875
 * exact("24.1").mul(12).valueOf() // => 289.2
 */
export function exact(text: string): Fraction | null {
  return WRITTEN.test(text)
    ? new Fraction(text.replace(/ ?([-/]) ?/g, (_, mark: string) => (mark === "/" ? "/" : " ")))
    : null;
}
