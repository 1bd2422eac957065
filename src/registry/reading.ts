import type { Unit } from "../measure/unit.ts";
import type { Place } from "./refusal.ts";

/** What one call has learned from its arguments so far, and where it reads. */
export interface Reading {
  /** The unit its texts are in, if any said so. */
  unit: Unit | null;
  /** Whose text decided the unit; "block": the other rows of a block. */
  unitFrom: Place | "block" | null;
  argument: string;
  /** Within a block. */
  within?: Omit<Place, "argument"> | undefined;
}

/** A reading that has learned nothing yet. */
export function newReading(argument = "", unit: Unit | null = null): Reading {
  return { unit, unitFrom: null, argument };
}

/** Goes on to another argument. */
export function startOf(reading: Reading, argument: string): Reading {
  reading.argument = argument;
  reading.within = undefined;
  return reading;
}

/** Goes on to a cell of a list. */
export function inCell(reading: Reading, row: number, heading: string): Reading {
  reading.within = { row, heading };
  return reading;
}

/** Where it reads now. */
export function placeOf({ argument, within }: Reading): Place {
  return { argument, ...within };
}
