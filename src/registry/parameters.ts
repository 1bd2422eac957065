import { cleanText } from "../measure/cleanText.ts";
import { degrees, type Degrees } from "../measure/degrees.ts";
import { halfUp } from "../measure/halfUp.ts";
import { Reason } from "../measure/reason.ts";
import { pitchFromNumber } from "../measure/pitchFromNumber.ts";
import { readLength } from "../measure/readLength.ts";
import { readPitch } from "../measure/readPitch.ts";
import { readSize } from "../measure/readSize.ts";
import { MM_PER_INCH, type Unit } from "../measure/unit.ts";
import { isBlank, shown } from "./cells.ts";
import { type CellError, Refusal } from "./refusal.ts";
import type { Input, Parameter, Reading } from "./worksheetFunction.ts";

type Read<T> = T | Refusal | CellError;

/** The largest length that is taken for one: a kilometre in millimetres, 16 miles in inches. */
const LONGEST = 1_000_000;

function refuse(name: string, words: string): Refusal {
  return new Refusal("#VALUE!", `${name}: ${words}`);
}

function missing(name: string, example: string): Refusal {
  return refuse(name, `nothing was given. Type ${example}.`);
}

/** What to do about a comma, whichever of its two uses was meant. */
const COMMA = "Type a decimal point instead of a decimal comma, and leave out a comma between thousands.";

/** Whether a text of a number was refused for its comma. Looks at the first characters only. */
const hasComma = (cell: Input) => typeof cell === "string" && /\d,\d/.test(cell.slice(0, 64));

/** A roof pitch as rise over run. A bare number from 1 to 24 is the rise in 12. */
export function pitch(name: string, description: string): Parameter<number> {
  return { name, description, quantity: "pitch", read: (cell) => readPitchCell(name, cell) };
}

/** The pitch of the plane around the corner; the same pitch when blank (read as null). */
export function otherPitch(name = "otherPitch", description = "Pitch of the plane on the other side of the hip or valley."): Parameter<number | null> {
  return { name, description, quantity: "pitch", optional: true, defaultText: "the same pitch", read: (cell) => (isBlank(cell) || cell === 0 ? null : readPitchCell(name, cell)) };
}

/** Reads a pitch cell for the argument or row of this name. */
export function readPitchCell(name: string, cell: Input): Read<number> {
  if (typeof cell === "number") {
    const slope = pitchFromNumber(cell);
    return typeof slope === "number" ? slope : pitchRefusal(name, slope, cell);
  }
  if (isBlank(cell)) return missing(name, 'a rise in 12, such as 6, or text such as "6/12"');
  if (typeof cell !== "string") return refuse(name, `${shown(cell)} was read, which is no pitch. Type 6, "6/12" or "26.57°".`);
  const slope = readPitch(cell);
  return typeof slope === "number" ? slope : pitchRefusal(name, slope, cell);
}

function pitchRefusal(name: string, { tag }: Reason, cell: Input): Refusal {
  const was = `${shown(cell)} was read`;
  switch (tag) {
    case "pitch below 1":
      return typeof cell === "number" && cell > 0
        ? refuse(name, `${was}. A sheet makes such a number of 6:12 (a time), of 6/12 without quotes, or of 50%. Type 6, or "6/12" in quotes.`)
        : refuse(name, `${was}; a pitch must rise, and a lone number is the rise in 12, from 1 to 24. Type 6, or a flatter pitch as "1/2 in 12".`);
    case "decimal comma":
      return refuse(name, `${was}. ${COMMA}`);
    case "pitch above 24":
      return refuse(name, `${was}. A sheet makes a large number of 6/12 (a date); degrees need their sign. Type 6, "6/12" or "30°".`);
    case "pitch not positive":
      return refuse(name, `${was}; a pitch must rise. Type 6, "6/12" or "26.57°".`);
    case "pitch too steep":
      return refuse(name, `${was}; a pitch must be under 85 degrees. Type 6, "6/12" or "26.57°".`);
    default:
      return refuse(name, `${was}, which is no pitch. Type 6, "6/12", "6 in 12", "26.57°" or "50%".`);
  }
}

/** What a length may be, beside positive. */
export interface LengthOptions {
  /** 0 is a value here (overhang, ridge thickness, kerf). */
  readonly zero?: boolean;
  /** Below 0 is a value too (corrections). */
  readonly negative?: boolean;
  /** An example for messages and help, in inches or in feet and inches; see {@link exampleIn}. */
  readonly example?: string;
}

/** A length in the call's unit. */
export function length(name: string, description: string, options: LengthOptions = {}): Parameter<number> {
  return { name, description, quantity: "length", read: (cell, reading) => readLengthCell(name, cell, reading, options) };
}

/** A length that may be left out; read as null then. */
export function optionalLength(name: string, description: string, defaultText: string, options: LengthOptions = {}): Parameter<number | null> {
  return { name, description, quantity: "length", optional: true, defaultText, read: (cell, reading) => (isBlank(cell) ? null : readLengthCell(name, cell, reading, options)) };
}

/** Reads a length cell for the argument or row of this name, and lets its text decide or contradict the call's unit. */
export function readLengthCell(name: string, cell: Input, reading: Reading, options: LengthOptions = {}): Read<number> {
  if (typeof cell === "number") return lengthInRange(name, cell, cell, options, true, reading.unit);
  const example = () => exampleIn(reading.unit, options.example ?? `48 or 8' 7 3/16"`);
  if (isBlank(cell)) return missing(name, `a length, such as ${example()}`);
  if (typeof cell !== "string") return refuse(name, `${shown(cell)} was read, which is no length. Type ${example()}.`);
  const read = readLength(cell);
  if (read instanceof Reason) return lengthRefusal(name, read, cell, reading.unit === null ? `${example()} or "2620 mm"` : example());
  if (read.unit !== null) {
    if (reading.unit === null) {
      reading.unit = read.unit;
      reading.unitFrom = name;
    } else if (reading.unit !== read.unit) {
      const [here, there] = read.unit === "in" ? ["feet and inches", "metric"] : ["metric", "feet and inches"];
      return refuse(name, `${shown(cell)} is ${here}, but ${reading.unitFrom} is ${there}. Type both in the same unit.`);
    }
  }
  return lengthInRange(name, read.value, cell, options, read.unit === null, reading.unit);
}

/** An example that may be typed in this call: in a metric one feet and inches would be refused. */
function exampleIn(unit: Unit | null, example: string): string {
  const read = unit === "mm" ? readLength(example.split(" or ")[0]!) : null;
  return read === null || read instanceof Reason || read.unit === "mm" ? example : `"${halfUp(read.value * MM_PER_INCH)} mm"`;
}

function lengthInRange(name: string, value: number, cell: Input, options: LengthOptions, bare: boolean, unit: Unit | null): number | Refusal {
  const { zero, negative } = options;
  if (value > 0 || (zero && value === 0) || (negative && value < 0)) {
    if (value > LONGEST || value < -LONGEST || value !== value) return refuse(name, `${shown(cell)} was read, which is too long. Type a length under 1,000,000, such as ${exampleIn(unit, options.example ?? "48")}.`);
    if (bare && value >= 43000 && value <= 56000 && Number.isInteger(value))
      return refuse(name, `${shown(cell)} was read, which is a date that a sheet makes of 24-6. Type 24' 6", or "${value / 1000} m" when it is millimetres.`);
    return value;
  }
  return outOfRange(name, value, cell, exampleIn(unit, options.example ?? "48"));
}

function outOfRange(name: string, value: number, cell: Input, example: string): Refusal {
  if (value === 0) return refuse(name, `0 was read; it must be more than 0. Type a length such as ${example}.`);
  if (value < 0) return refuse(name, `${shown(cell)} was read; it must not be negative. Type a length such as ${example}.`);
  return refuse(name, `${shown(cell)} was read, which is no number. Type a length such as ${example}.`);
}

function lengthRefusal(name: string, { tag }: Reason, cell: string, example: string): Refusal {
  const was = `${shown(cell)} was read`;
  switch (tag) {
    case "decimal comma":
      return refuse(name, `${was}. ${COMMA}`);
    case "zero denominator":
      return refuse(name, `${was}, a fraction over 0. Type a length such as ${example}.`);
    case "text too long":
      return refuse(name, `${was}, which is far too long for a length. Type ${example}.`);
    default:
      return refuse(name, `${was}, which is no length. Type ${example}.`);
  }
}

/** The angle between the two plate lines in degrees; 90 when blank or 0. */
export function cornerAngle(name = "corner", description = "Angle between the two plate lines, in degrees."): Parameter<Degrees> {
  return {
    name, description, quantity: "angle", optional: true, defaultText: "90",
    read(cell) {
      if (isBlank(cell) || cell === 0) return degrees(90);
      const value = typeof cell === "string" ? readAngle(cell) : cell;
      if (typeof value === "number" && value > 0 && value < 180) return degrees(value);
      if (hasComma(cell)) return refuse(name, `${shown(cell)} was read. ${COMMA}`);
      return refuse(name, `${shown(cell)} was read; the angle between two plate lines is more than 0 and less than 180 degrees. Type 90 for a square corner.`);
    },
  };
}

/** Degrees of a typed angle, with or without its sign; not-a-number for any other text. */
export function readAngle(text: string): number {
  const clean = cleanText(text);
  const parts = clean instanceof Reason ? null : /^(\d{1,3}(?:\.\d{0,15})?) ?(?:°|º|deg\.?|degrees?)?$/.exec(clean);
  return parts ? Number(parts[1]) : NaN;
}

/** A plain number within bounds; `fallback` when blank, required without one. */
export function number(name: string, description: string, bounds: { from: number; to: number; whole?: boolean; example: string; fallback?: number }): Parameter<number> {
  const optional = bounds.fallback !== undefined;
  return {
    name, description, quantity: "number", optional, ...(optional ? { defaultText: String(bounds.fallback) } : {}),
    read(cell) {
      if (isBlank(cell)) return bounds.fallback ?? missing(name, bounds.example);
      const value = typeof cell === "string" && cell.length < 32 && /^\s*[-+]?(?:\d+\.?\d*|\.\d+)(?:e[-+]?\d+)?\s*$/i.test(cell) ? Number(cell) : cell;
      if (typeof value === "number" && value >= bounds.from && value <= bounds.to && (!bounds.whole || Number.isInteger(value))) return value;
      if (hasComma(cell)) return refuse(name, `${shown(cell)} was read. ${COMMA}`);
      const kind = bounds.whole ? "a whole number" : "a number";
      return refuse(name, `${shown(cell)} was read; it must be ${kind} from ${bounds.from} to ${bounds.to}. Type ${bounds.example}.`);
    },
  };
}

/** One of a few words or numbers, read without regard to case; the first is the default when optional. */
export function choice<T extends string | number>(name: string, description: string, choices: readonly T[], fallback?: T): Parameter<T> {
  return {
    name, description, quantity: "text", optional: fallback !== undefined, ...(fallback === undefined ? {} : { defaultText: String(fallback) }),
    read(cell) {
      if (isBlank(cell)) return fallback ?? missing(name, choices.map((c) => JSON.stringify(c)).join(" or "));
      const text = String(cell).slice(0, 64).trim().replace(/\s+/g, " ").toLowerCase();
      return choices.find((c) => String(c).toLowerCase() === text) ?? refuse(name, `${shown(cell)} was read; it must be one of ${choices.join(", ")}.`);
    },
  };
}

/** A lumber size: nominal such as 2x8, or actual. Its unit counts for the call when it is metric. */
export function size(name: string, description: string): Parameter<Exclude<ReturnType<typeof readSize>, Reason>> {
  return { name, description, quantity: "size", read: (cell, reading) => readSizeCell(name, cell, reading) };
}

/** Reads a lumber size for the argument or row of this name. */
export function readSizeCell(name: string, cell: Input, reading: Reading): Read<Exclude<ReturnType<typeof readSize>, Reason>> {
  if (isBlank(cell)) return missing(name, "a lumber size, such as 2x8");
  const read = typeof cell === "string" ? readSize(cell) : null;
  if (read === null) return refuse(name, `${shown(cell)} was read, which is no lumber size. Type 2x8, "1.5 x 7.25" or "38 x 184".`);
  if (read instanceof Reason) {
    if (read.tag === "decimal comma") return refuse(name, `${shown(cell)} was read. ${COMMA}`);
    if (read.tag === "size turned round") return refuse(name, `${shown(cell)} was read; thickness comes first. Type ${read.figures["instead"]}.`);
    return read.tag === "no such nominal size"
      ? refuse(name, `${shown(cell)} is no nominal size of lumber. Type a nominal size such as 2x8, or the actual one with decimals, such as "1.5 x 7.25".`)
      : refuse(name, `${shown(cell)} was read, which is no lumber size. Type 2x8, "1.5 x 7.25" or "38 x 184".`);
  }
  if (reading.unit !== null && reading.unit !== read.unit && !/^\d+x\d+$/.test(read.name)) {
    return refuse(name, `${shown(cell)} is ${read.unit === "mm" ? "millimetres" : "inches"}, but ${reading.unitFrom} is ${reading.unit === "mm" ? "metric" : "feet and inches"}. Type both in the same unit.`);
  }
  if (reading.unit === null && read.unit === "mm") {
    reading.unit = "mm";
    reading.unitFrom = name;
  }
  return read;
}
