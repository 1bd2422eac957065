import { lengthText } from "../../src/measure/lengthText.ts";
import type { Unit } from "../../src/measure/unit.ts";

/**
 * A limit in words, rounded to the side that works: down for the most that may be typed, up for the least.
 *
 * Sixteenths of an inch or whole millimeters; with no unit, four decimals.
 */
export function limitText(value: number, unit: Unit | null, bound: "most" | "least"): string {
  const parts = unit === "in" ? 16 : unit === "mm" ? 1 : 1e4;
  // What misses a whole part by the last bits of a double only is that part.
  const nearest = Math.round(value * parts);
  const whole =
    Math.abs(value * parts - nearest) < 1e-6
      ? nearest
      : bound === "most"
        ? Math.floor(value * parts)
        : Math.ceil(value * parts);
  return unit === null ? String(whole / parts) : lengthText(whole / parts, unit, 16);
}

/** A length that only the exact value will do for: tape text where it is one, else a number of the block's unit. */
export function exactText(value: number, unit: Unit): string {
  const whole = value * (unit === "in" ? 16 : 1);
  return Math.abs(whole - Math.round(whole)) < 1e-9 ? lengthText(value, unit, 16) : String(Number(value.toFixed(8)));
}
