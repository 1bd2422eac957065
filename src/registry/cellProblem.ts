import type { ReadingProblems } from "../measure/readingProblem.ts";
import type { Kinds } from "../measure/result.ts";
import type { Unit } from "../measure/unit.ts";
import type { Place } from "./refusal.ts";

interface Read {
  /** The raw cell. */
  read: unknown;
}

interface Length {
  /** What may be typed instead, in inches or feet and inches. */
  examples: readonly string[];
}

interface OutsideWords extends Read {
  choices: readonly (string | number)[];
}

/** What a plain number counts, so that an example of it can be given. */
export type Counted = "count" | "pieces" | "spares" | "waste" | "boards" | "price";

/** What was read with the problems of measure. */
type Cells<T> = { [K in keyof T]: T[K] & Read };

interface CellProblems extends Cells<ReadingProblems> {
  "no length": Length;
  "text too long": Read & Length;
  "zero denominator": Read & Length;
  "not a length": Read & Length;
  "length too long": Read & Length & { most: number };
  "date for a length": Read & { value: number };
  "length of 0": Length;
  "length below 0": Read & Length;
  "length not a number": Read & Length;
  /** A length in the other unit than `from` is in. */
  "other unit": Read & { unit: Unit; from: Place | "block" | null };
  "size in other unit": Read & { unit: Unit; from: Place | "block" | null };
  "no pitch": object;
  "no size": object;
  "corner out of range": Read;
  "no number": { example: Counted };
  "number out of range": Read & { from: number; to: number; whole: boolean; example: Counted };
  "no word": { choices: readonly (string | number)[] };
  "no such word": OutsideWords;
  "range for one value": object;
  "no finite result": object;
  "too many arguments": { name: string; most: number; given: number };
  "cell error": { error: string };
  /** Longpoint's own fault. */
  fault: { name: string; thrown: string };

  "no block of labels": Read;
  "value without label": Read & { labels: readonly string[] };
  "unknown label": Read & { labels: readonly string[] };
  "label twice": { label: string };
  "heading twice": { heading: string };
  "heading missing": { heading: string; required: readonly string[] };
  "too many rows": { most: number };
  "no rows": object;
}

/** Why a cell, or a block of cells, cannot be read; `refuse` says where. */
export type CellProblem<K extends keyof CellProblems = keyof CellProblems> = Kinds<CellProblems, K>;
