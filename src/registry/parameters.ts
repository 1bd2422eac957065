import { degrees, type Degrees } from "../measure/degrees.ts";
import type { ReadSize } from "../measure/readSize.ts";
import { isBlank, shown } from "./cells.ts";
import { readAngle } from "./readAngle.ts";
import { readLengthCell, type LengthOptions } from "./readLengthCell.ts";
import { readPitchCell } from "./readPitchCell.ts";
import { readSizeCell } from "./readSizeCell.ts";
import { COMMA, hasComma, missing, refuse } from "./refuse.ts";
import type { Parameter } from "./worksheetFunction.ts";

/** A roof pitch as rise over run. A bare number from 1 to 24 is the rise in 12. */
export function pitch<const N extends string>(name: N, description: string): Parameter<number, N> {
  return { name, description, quantity: "pitch", read: (cell) => readPitchCell(name, cell) };
}

/** The pitch of the plane around the corner; the same pitch when blank (read as null). */
export function otherPitch(): Parameter<number | null, "otherPitch"> {
  const name = "otherPitch";
  return {
    name,
    description: "Pitch of the plane on the other side of the hip or valley.",
    quantity: "pitch",
    optional: true,
    defaultText: "the same pitch",
    read: (cell) => (isBlank(cell) || cell === 0 ? null : readPitchCell(name, cell)),
  };
}

/** A length in the call's unit. */
export function length<const N extends string>(
  name: N,
  description: string,
  options: LengthOptions = {},
): Parameter<number, N> {
  return {
    name,
    description,
    quantity: "length",
    read: (cell, reading) => readLengthCell(name, cell, reading, options),
  };
}

/** A length that may be left out; read as null then. */
export function optionalLength<const N extends string>(
  name: N,
  description: string,
  defaultText: string,
  options: LengthOptions = {},
): Parameter<number | null, N> {
  return {
    name,
    description,
    quantity: "length",
    optional: true,
    defaultText,
    read: (cell, reading) => (isBlank(cell) ? null : readLengthCell(name, cell, reading, options)),
  };
}

/** The angle between the two plate lines in degrees; 90 when blank or 0. */
export function cornerAngle(): Parameter<Degrees, "corner"> {
  const name = "corner";
  return {
    name,
    description: "Angle between the two plate lines, in degrees.",
    quantity: "angle",
    optional: true,
    defaultText: "90",
    read(cell) {
      if (isBlank(cell) || cell === 0) return degrees(90);
      const value = typeof cell === "string" ? readAngle(cell) : cell;
      if (typeof value === "number" && value > 0 && value < 180) return degrees(value);
      if (hasComma(cell)) return refuse(name, `${shown(cell)} was read. ${COMMA}`);
      return refuse(
        name,
        `${shown(cell)} was read; the angle between two plate lines is more than 0 and less than 180 degrees. Type 90 for a square corner.`,
      );
    },
  };
}

/** A plain number within bounds; `fallback` when blank, required without one. */
export function number<const N extends string>(
  name: N,
  description: string,
  bounds: { from: number; to: number; whole?: boolean; example: string; fallback?: number },
): Parameter<number, N> {
  const optional = bounds.fallback !== undefined;
  return {
    name,
    description,
    quantity: "number",
    optional,
    ...(optional ? { defaultText: String(bounds.fallback) } : {}),
    read(cell) {
      if (isBlank(cell)) return bounds.fallback ?? missing(name, bounds.example);
      const value =
        typeof cell === "string" && cell.length < 32 && /^\s*[-+]?(?:\d+\.?\d*|\.\d+)(?:e[-+]?\d+)?\s*$/i.test(cell)
          ? Number(cell)
          : cell;
      if (
        typeof value === "number" &&
        value >= bounds.from &&
        value <= bounds.to &&
        (!bounds.whole || Number.isInteger(value))
      )
        return value;
      if (hasComma(cell)) return refuse(name, `${shown(cell)} was read. ${COMMA}`);
      const kind = bounds.whole ? "a whole number" : "a number";
      return refuse(
        name,
        `${shown(cell)} was read; it must be ${kind} from ${bounds.from} to ${bounds.to}. Type ${bounds.example}.`,
      );
    },
  };
}

/** One of a few words or numbers, read without regard to case; the first is the default when optional. */
export function choice<T extends string | number, const N extends string>(
  name: N,
  description: string,
  choices: readonly T[],
  fallback?: T,
): Parameter<T, N> {
  return {
    name,
    description,
    quantity: "text",
    optional: fallback !== undefined,
    ...(fallback === undefined ? {} : { defaultText: String(fallback) }),
    read(cell) {
      if (isBlank(cell)) return fallback ?? missing(name, choices.map((c) => JSON.stringify(c)).join(" or "));
      const text = String(cell).slice(0, 64).trim().replace(/\s+/g, " ").toLowerCase();
      return (
        choices.find((c) => String(c).toLowerCase() === text) ??
        refuse(name, `${shown(cell)} was read; it must be one of ${choices.join(", ")}.`)
      );
    },
  };
}

/** A lumber size: nominal such as 2x8, or actual. Its unit counts for the call when it is metric. */
export function size<const N extends string>(name: N, description: string): Parameter<ReadSize, N> {
  return { name, description, quantity: "size", read: (cell, reading) => readSizeCell(name, cell, reading) };
}
