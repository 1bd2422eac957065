import { bareNumber } from "./bareNumber.ts";
import { cleanText } from "./cleanText.ts";
import { exact } from "./exact.ts";
import { remembered } from "./remembered.ts";
import { Failure, type Result } from "./result.ts";
import type { ReadingProblem } from "./readingProblem.ts";
import type { Unit } from "./unit.ts";

type LengthProblem = ReadingProblem<"text too long" | "decimal comma" | "zero denominator" | "not a length">;

/** A length as typed: a bare number has no unit of its own. */
export interface ReadLength {
  readonly value: number;
  readonly unit: Unit | null;
}

/**
 * Reads a length as people write it: feet and inches, inches, metric, or a bare number.
 *
 * Feet and inches give inches, metric gives millimetres, and a bare number keeps no unit. A dash between two whole numbers parts feet
 * from inches (24-6), before a lone fraction it joins inches (7-5/8). A leading minus makes the whole length negative.
 * Values are exact to the last bit of a double. Never throws; time is bounded whatever the text.
 *
 * @example
 * readLength("9' 4 5/8\"") // => { value: 112.625, unit: "in" }
 * readLength("2.86 m") // => { value: 2860, unit: "mm" }
 * readLength("48") // => { value: 48, unit: null }
 */
export function readLength(text: string): Result<ReadLength, LengthProblem> {
  return readOnce(text);
}

const readOnce = remembered((text): Result<ReadLength, LengthProblem> => {
  const clean = cleanText(text);
  if (clean === null) return new Failure({ kind: "text too long" });
  return signed(clean) ?? new Failure({ kind: whatIsWrong(clean) });
});

type Parser = (text: string) => ReadLength | null;

// Tried in this order. Each looks at a text of at most 64 characters without its sign, and answers null when it is another's.
const PARSERS: readonly Parser[] = [bare, metric, markedFeet, dashedFeet, inches];

function signed(clean: string): ReadLength | null {
  const sign = clean[0] === "-" || clean[0] === "+" ? clean[0] : "";
  const unsigned = clean.slice(sign.length).trimStart();
  for (const parse of PARSERS) {
    const read = parse(unsigned);
    if (read !== null) return sign === "-" && read.value !== 0 ? { value: -read.value, unit: read.unit } : read;
  }
  return null;
}

function bare(text: string): ReadLength | null {
  // One sign is off already.
  const value = /^[-+]/.test(text) ? null : bareNumber(text);
  return value === null ? null : { value, unit: null };
}

function metric(text: string): ReadLength | null {
  const parts = /^(\d+(?:\.\d*)?|\.\d+) ?(mm|cm|m|millimet(?:re|er)s?|centimet(?:re|er)s?|met(?:re|er)s?)\.?$/.exec(
    text,
  );
  if (!parts) return null;
  const power = /^(?:mm|milli)/.test(parts[2]!) ? 0 : parts[2]!.startsWith("c") ? 1 : 3;
  // The decimal point is moved in the text: 1.005 m is 1005 mm, which a product of doubles misses.
  return { value: Number(`${parts[1]}e${power}`), unit: "mm" };
}

function marked(text: string): string {
  return text.replace(/ ?(?:feet|foot|ft)\.?/, "'").replace(/ ?(?:inches|inch|in)\.?$/, '"');
}

function markedFeet(text: string): ReadLength | null {
  const parts = /^([^']+)' ?(?:- ?)?([^']*)$/.exec(marked(text));
  if (!parts) return null;
  const feetAlone = marked(text).endsWith("'");
  return feetAndInches(parts[1]!.trimEnd(), feetAlone ? "0" : parts[2]!);
}

function dashedFeet(text: string): ReadLength | null {
  const parts = /^(\d+) ?- ?(.+)$/.exec(marked(text));
  return parts && !/^\d+ ?\//.test(parts[2]!) ? feetAndInches(parts[1]!, parts[2]!) : null;
}

function inches(text: string): ReadLength | null {
  return feetAndInches("0", marked(text));
}

function feetAndInches(feet: string, inch: string): ReadLength | null {
  const foot = exact(feet);
  const rest = exact(inch.replace(/ ?"$/, ""));
  return foot && rest && { value: foot.mul(12).add(rest).valueOf(), unit: "in" };
}

// Only for a text that was refused already: what would have to be different for it to be a length?
function whatIsWrong(clean: string): LengthProblem["kind"] {
  if (/\d,\d/.test(clean) && signed(clean.replace(/(\d),(?=\d)/g, "$1")) !== null) return "decimal comma";
  if (/\/ ?0/.test(clean) && signed(clean.replace(/\/ ?0+(?!\d)/g, "/1")) !== null) return "zero denominator";
  return "not a length";
}
