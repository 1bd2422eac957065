import { lengthText } from "../../src/measure/lengthText.ts";
import type { AnyProblem } from "../../src/measure/result.ts";
import type { Unit } from "../../src/measure/unit.ts";
import { limitText } from "./limitText.ts";

/** A problem in two parts: what is wrong, and what to do about it. Each is sentences without the last full stop. */
export type Wording = readonly [wrong: string, instead?: string];

/** Words for every kind of a union, so that none can be forgotten. */
export type Words<P extends AnyProblem> = {
  readonly [K in P["kind"]]: (problem: Extract<P, { readonly kind: K }>, say: Say) => Wording;
};

/** How a problem's figures are said, in the unit of what was read. */
export interface Say {
  readonly unit: Unit | null;
  length(value: number): string;
  /** A limit, rounded to the side that works. */
  least(value: number): string;
  most(value: number): string;
  /** Text to be typed: in quotes in a formula. */
  typed(text: string): string;
  /** Several values to be typed: in braces in a formula. */
  block(values: readonly number[]): string;
}

/** @param where a formula, or a field that takes text as it is. */
export function sayIn(unit: Unit | null, where: "formula" | "field"): Say {
  const formula = where === "formula";
  return {
    unit,
    length: (value) => (unit === null ? figure(value, 4) : lengthText(value, unit, 16)),
    least: (value) => limitText(value, unit, "least"),
    most: (value) => limitText(value, unit, "most"),
    typed: (text) => (formula ? `"${text}"` : text),
    block: (values) => (formula ? `{${values.join(",")}}` : values.join(", ")),
  };
}

/** A number without more decimals than help. */
export function figure(value: number, decimals = 3): string {
  return String(Number(value.toFixed(decimals)));
}
