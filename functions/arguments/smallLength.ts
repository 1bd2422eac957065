import { lengthText } from "../../src/measure/lengthText.ts";
import type { Unit } from "../../src/measure/unit.ts";

/** A length for people, the small ones finer: to the sixty-fourth under an inch, to the tenth under 10 mm. */
export function smallLength(value: number, unit: Unit): string {
  if (unit === "mm" && Math.abs(value) < 10) return `${Number(value.toFixed(1))} mm`;
  return lengthText(value, unit, Math.abs(value) < 1 ? 64 : 16);
}
