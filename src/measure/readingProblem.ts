import type { Kinds } from "./result.ts";

export interface ReadingProblems {
  "text too long": object;
  "decimal comma": object;
  "zero denominator": object;
  "not a length": object;
  "not a pitch": object;
  "pitch below 1": object;
  "pitch above 24": object;
  "pitch not positive": object;
  /** `most` in degrees. */
  "pitch too steep": { most: number };
  "not a size": object;
  "no such nominal size": object;
  /** The same size, thickness first. */
  "size turned round": { instead: string };
}

/** Why a typed length, pitch or size cannot be read. */
export type ReadingProblem<K extends keyof ReadingProblems = keyof ReadingProblems> = Kinds<ReadingProblems, K>;
