import { readLength } from "../measure/readLength.ts";
import { Failure, type Result } from "../measure/result.ts";
import type { CellProblem } from "./cellProblem.ts";
import { isBlank } from "./cells.ts";
import { placeOf, type Reading } from "./reading.ts";
import { refuse } from "./refuse.ts";
import type { Input } from "./worksheetFunction.ts";

/** The largest length that is taken for one: a kilometre in millimeters, 16 miles in inches. */
const LONGEST = 1_000_000;

/** What a length may be, beside positive. */
export interface LengthOptions {
  /** 0 is a value here (overhang, ridge thickness, kerf). */
  readonly zero?: boolean;
  /** Below 0 is a value too (corrections). */
  readonly negative?: boolean;
  /** What may be typed, for messages: in inches, or in feet and inches. */
  readonly example?: string | readonly string[];
}

/** Reads a length cell, and lets its text decide or contradict the call's unit. */
export function readLengthCell(
  cell: Input,
  reading: Reading,
  options: LengthOptions = {},
): Result<number, CellProblem> {
  if (typeof cell === "number") return inRange(cell, cell, options, true, reading);
  if (isBlank(cell)) return refuse(reading, { kind: "no length", examples: examplesOf(options) });
  if (typeof cell !== "string")
    return refuse(reading, { kind: "not a length", read: cell, examples: examplesOf(options) });
  const read = readLength(cell);
  if (read instanceof Failure) {
    const { kind } = read.problem;
    return refuse(
      reading,
      kind === "decimal comma" ? { kind, read: cell } : { kind, read: cell, examples: examplesOf(options) },
    );
  }
  if (read.unit !== null) {
    if (reading.unit === null) {
      reading.unit = read.unit;
      reading.unitFrom = placeOf(reading);
    } else if (reading.unit !== read.unit)
      return refuse(reading, { kind: "other unit", read: cell, unit: read.unit, from: reading.unitFrom });
  }
  return inRange(read.value, cell, options, read.unit === null, reading);
}

function examplesOf({ example = ["48", `9' 4 5/8"`] }: LengthOptions): string[] {
  return [example].flat();
}

function inRange(
  value: number,
  cell: Input,
  { zero, negative, example = "48" }: LengthOptions,
  bare: boolean,
  reading: Reading,
): Result<number, CellProblem> {
  if (value > 0 || (zero && value === 0) || (negative && value < 0)) {
    if (value > LONGEST || value < -LONGEST)
      return refuse(reading, { kind: "length too long", read: cell, most: LONGEST, examples: [example].flat() });
    if (bare && value >= 43000 && value <= 56000 && Number.isInteger(value))
      return refuse(reading, { kind: "date for a length", read: cell, value });
    return value;
  }
  const kind = value === 0 ? "length of 0" : value < 0 ? "length below 0" : "length not a number";
  return refuse(reading, { kind, read: cell, examples: [example].flat() });
}
