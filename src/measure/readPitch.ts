import type Fraction from "fraction.js";
import { cleanText } from "./cleanText.ts";
import { exact } from "./exact.ts";
import { pitchFromNumber } from "./pitchFromNumber.ts";
import { remembered } from "./remembered.ts";
import { Failure, type Result } from "./result.ts";
import type { ReadingProblem } from "./readingProblem.ts";

/** No slope may reach this angle: past it a rafter is a wall, and lengths grow out of all bounds. */
const STEEPEST_DEGREES = 85;
const STEEPEST = Math.tan((STEEPEST_DEGREES * Math.PI) / 180);

type PitchProblem = ReadingProblem<
  "decimal comma" | "not a pitch" | "pitch below 1" | "pitch above 24" | "pitch not positive" | "pitch too steep"
>;

/**
 * Rise over run of a pitch as people write it: 6/12, 6:12, 6 in 12, 26.57 deg, 26.57°, 50 %, or the rise in 12 alone.
 *
 * Rise and run may be decimals or mixed fractions. A lone number follows the rule of a bare number (1 to 24).
 *
 * @example
 * readPitch("6-1/2 in 12") // => 6.5 / 12
 * readPitch("50 %") // => 0.5
 */
export function readPitch(text: string): Result<number, PitchProblem> {
  return readOnce(text);
}

const readOnce = remembered((text): Result<number, PitchProblem> => {
  const clean = cleanText(text);
  if (clean === null) return new Failure({ kind: "not a pitch" });
  const negative = clean.startsWith("-");
  const unsigned = clean.replace(/^[-+] ?/, "");
  const slope = read(unsigned);
  if (slope === null) {
    const comma = /\d,\d/.test(unsigned) && read(unsigned.replace(/(\d),(?=\d)/g, "$1.")) !== null;
    return new Failure({ kind: comma ? "decimal comma" : "not a pitch" });
  }
  if (typeof slope !== "number") return pitchFromNumber(negative ? -slope.lone : slope.lone);
  if (negative || slope === 0) return new Failure({ kind: "pitch not positive" });
  return slope < STEEPEST ? slope : new Failure({ kind: "pitch too steep", most: STEEPEST_DEGREES });
});

type Parser = (text: string) => number | { readonly lone: number } | null;

// Tried in this order. A lone mixed number stands before a ratio, for 6 1/2 has a slash too.
const PARSERS: readonly Parser[] = [lone, degrees, percent, ratio];

function read(text: string): number | { readonly lone: number } | null {
  for (const parse of PARSERS) {
    const slope = parse(text);
    if (slope !== null) return slope;
  }
  return null;
}

function lone(text: string): { readonly lone: number } | null {
  const number = /^\d+ ?\//.test(text) ? null : exact(text);
  return number && { lone: number.valueOf() };
}

function degrees(text: string): number | null {
  const angle = before(text, / ?(?:°|º|deg\.?|degrees?)$/)?.valueOf();
  if (angle === undefined) return null;
  return angle < STEEPEST_DEGREES ? Math.tan((angle * Math.PI) / 180) : Infinity;
}

function percent(text: string): number | null {
  return (
    before(text, / ?(?:%|per ?cent)$/)
      ?.div(100)
      .valueOf() ?? null
  );
}

function before(text: string, ending: RegExp): Fraction | null {
  const number = text.replace(ending, "");
  return number === text ? null : exact(number);
}

function ratio(text: string): number | null {
  // 6/12/26 is a date, not half an inch in 26.
  if (/^\d+ ?\/ ?\d+ ?\//.test(text)) return null;
  const parts = /^([^:i]+?)(?:in|:)([^:i]+)$/.exec(text) ?? /^(.+)\/([^/]+)$/.exec(text);
  if (!parts) return null;
  const [rise, run] = [parts[1]!, parts[2]!].map((part) => exact(part.trim().replace(/ ?"$/, "")));
  if (!rise || !run || run.valueOf() === 0) return null;
  return rise.div(run).valueOf();
}
