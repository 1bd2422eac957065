import { halfUp } from "../measure/halfUp.ts";
import { readLength } from "../measure/readLength.ts";
import { Failure } from "../measure/result.ts";
import type { ReadingProblem } from "../measure/readingProblem.ts";
import { MM_PER_INCH, type Unit } from "../measure/unit.ts";
import { isBlank, shown } from "./cells.ts";
import type { Refusal } from "./refusal.ts";
import { COMMA, missing, refuse } from "./refuse.ts";
import type { Input, Reading } from "./worksheetFunction.ts";

/** The largest length that is taken for one: a kilometre in millimetres, 16 miles in inches. */
const LONGEST = 1_000_000;

/** What a length may be, beside positive. */
export interface LengthOptions {
  /** 0 is a value here (overhang, ridge thickness, kerf). */
  readonly zero?: boolean;
  /** Below 0 is a value too (corrections). */
  readonly negative?: boolean;
  /** An example for messages and help, in inches or in feet and inches; see {@link exampleIn}. */
  readonly example?: string;
}

/** Reads a length cell for the argument or row of this name, and lets its text decide or contradict the call's unit. */
export function readLengthCell(
  name: string,
  cell: Input,
  reading: Reading,
  options: LengthOptions = {},
): number | Refusal {
  if (typeof cell === "number") return lengthInRange(name, cell, cell, options, true, reading.unit);
  const example = () => exampleIn(reading.unit, options.example ?? `48 or 9' 4 5/8"`);
  if (isBlank(cell)) return missing(name, `a length, such as ${example()}`);
  if (typeof cell !== "string") return refuse(name, `${shown(cell)} was read, which is no length. Type ${example()}.`);
  const read = readLength(cell);
  if (read instanceof Failure)
    return lengthRefusal(name, read, cell, reading.unit === null ? `${example()} or "2860 mm"` : example());
  if (read.unit !== null) {
    if (reading.unit === null) {
      reading.unit = read.unit;
      reading.unitFrom = name;
    } else if (reading.unit !== read.unit) {
      const [here, there] = read.unit === "in" ? ["feet and inches", "metric"] : ["metric", "feet and inches"];
      return refuse(
        name,
        `${shown(cell)} is ${here}, but ${reading.unitFrom} is ${there}. Type both in the same unit.`,
      );
    }
  }
  return lengthInRange(name, read.value, cell, options, read.unit === null, reading.unit);
}

/** An example that may be typed in this call: in a metric one feet and inches would be refused. */
function exampleIn(unit: Unit | null, example: string): string {
  const read = unit === "mm" ? readLength(example.split(" or ")[0]!) : null;
  return read === null || read instanceof Failure || read.unit === "mm"
    ? example
    : `"${halfUp(read.value * MM_PER_INCH)} mm"`;
}

function lengthInRange(
  name: string,
  value: number,
  cell: Input,
  options: LengthOptions,
  bare: boolean,
  unit: Unit | null,
): number | Refusal {
  const { zero, negative } = options;
  if (value > 0 || (zero && value === 0) || (negative && value < 0)) {
    if (value > LONGEST || value < -LONGEST || value !== value)
      return refuse(
        name,
        `${shown(cell)} was read, which is too long. Type a length under 1,000,000, such as ${exampleIn(unit, options.example ?? "48")}.`,
      );
    if (bare && value >= 43000 && value <= 56000 && Number.isInteger(value))
      return refuse(
        name,
        `${shown(cell)} was read, which is a date that a sheet makes of 24-6. Type 24' 6", or "${value / 1000} m" when it is millimetres.`,
      );
    return value;
  }
  return outOfRange(name, value, cell, exampleIn(unit, options.example ?? "48"));
}

function outOfRange(name: string, value: number, cell: Input, example: string): Refusal {
  if (value === 0) return refuse(name, `0 was read; it must be more than 0. Type a length such as ${example}.`);
  if (value < 0)
    return refuse(name, `${shown(cell)} was read; it must not be negative. Type a length such as ${example}.`);
  return refuse(name, `${shown(cell)} was read, which is no number. Type a length such as ${example}.`);
}

function lengthRefusal(name: string, { problem }: Failure<ReadingProblem>, cell: string, example: string): Refusal {
  const was = `${shown(cell)} was read`;
  switch (problem.kind) {
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
