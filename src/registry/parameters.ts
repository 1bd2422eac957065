import { degrees, type Degrees } from "../measure/degrees.ts";
import type { ReadSize } from "../measure/readSize.ts";
import { hasComma, isBlank } from "./cells.ts";
import { readAngle } from "./readAngle.ts";
import { readChoiceCell } from "./readChoiceCell.ts";
import { readLengthCell, type LengthOptions } from "./readLengthCell.ts";
import { readNumberCell, type NumberBounds } from "./readNumberCell.ts";
import { readPitchCell } from "./readPitchCell.ts";
import { readSizeCell } from "./readSizeCell.ts";
import { refuse } from "./refuse.ts";
import type { Parameter } from "./worksheetFunction.ts";

/** A roof pitch as rise over run. A bare number from 1 to 24 is the rise in 12. */
export function pitch<const N extends string>(name: N, description: string): Parameter<number, N> {
  return { name, description, quantity: "pitch", read: readPitchCell };
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
    read: (cell, reading) => (isBlank(cell) || cell === 0 ? null : readPitchCell(cell, reading)),
  };
}

/** A length in the call's unit. */
export function length<const N extends string>(
  name: N,
  description: string,
  options: LengthOptions = {},
): Parameter<number, N> {
  return { name, description, quantity: "length", read: (cell, reading) => readLengthCell(cell, reading, options) };
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
    read: (cell, reading) => (isBlank(cell) ? null : readLengthCell(cell, reading, options)),
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
    read(cell, reading) {
      if (isBlank(cell) || cell === 0) return degrees(90);
      const value = typeof cell === "string" ? readAngle(cell) : cell;
      if (typeof value === "number" && value > 0 && value < 180) return degrees(value);
      return refuse(reading, { kind: hasComma(cell) ? "decimal comma" : "corner out of range", read: cell });
    },
  };
}

/** A plain number within bounds; `fallback` when blank, required without one. */
export function number<const N extends string>(
  name: N,
  description: string,
  bounds: NumberBounds & { readonly fallback?: number },
): Parameter<number, N> {
  const optional = bounds.fallback !== undefined;
  return {
    name,
    description,
    quantity: "number",
    optional,
    ...(optional ? { defaultText: String(bounds.fallback) } : {}),
    read: (cell, reading) => (optional && isBlank(cell) ? bounds.fallback! : readNumberCell(cell, reading, bounds)),
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
    read: (cell, reading) =>
      fallback !== undefined && isBlank(cell) ? fallback : readChoiceCell(cell, reading, choices),
  };
}

/** A lumber size: nominal such as 2x8, or actual. Its unit counts for the call when it is metric. */
export function size<const N extends string>(name: N, description: string): Parameter<ReadSize, N> {
  return { name, description, quantity: "size", read: readSizeCell };
}
