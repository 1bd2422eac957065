import type { LinearProgram } from "./linearProgram.ts";

/** What every whole plan holds to: so many of each column's pattern, times these whole numbers, add up to so much at least. */
export interface RoundingCut {
  readonly entries: Float64Array;
  readonly least: number;
}

/** Factors are whole multiples of 1 / PARTS, and sums of their sizes less than MOST_SUM: so sums in doubles are exact. */
const PARTS = 2 ** 28;
const MOST_SUM = 2 ** 24;
/** A factor that misses the next whole number by less counts as that number, and what it misses is made good. */
const NEAR = 1e-5;
/** A value that is as close to a whole number is not cut off. */
const WHOLE = 1e-4;
/** By so much a fractional plan must miss a cut. */
const DEEP = 1e-3;
/** A row is taken so many times over, for each gives another cut. */
const TIMES = [1, -1, 2, -2, 3, -3];
/** Entries of cuts that were made from cuts grow; none larger is of use. */
const MOST_ENTRY = 1e4;
const MOST_CUTS = 30;

/**
 * Inequalities that every whole plan meets and the fractional one that the program has come to does not (Gomory 1958, Chvatal 1973), the deepest first.
 *
 * Every row's value is a sum of columns, so for any factors of the rows, sum(a z) = 0 over all variables z, those of rows included. With z = lower + t or upper - t, where t is a
 * whole number from 0 on, that is sum(a t) = b; then sum(floor(a) t) is at most b, and as a whole number at most floor(b). Rows of the basis' inverse are the
 * factors that cut. Variables' bounds must hold for every plan that is of use, and all entries must be whole numbers.
 */
export function* roundingCuts(program: LinearProgram): Generator<void, RoundingCut[]> {
  const found: { cut: RoundingCut; depth: number }[] = [];
  for (let v = 0; v < program.at.length; v++) {
    const value = program.at[v]!;
    if (Math.abs(value - Math.round(value)) < WHOLE || !program.isBasic(v)) continue;
    const row = program.inverseRow(v);
    for (const times of TIMES) {
      const one = cutFrom(program, row, times);
      if (one) found.push(one);
    }
    yield;
  }
  found.sort((a, b) => b.depth - a.depth);
  return found.slice(0, MOST_CUTS).map(({ cut }) => cut);
}

/** @returns null where the cut does not cut, or its numbers are too large to be exact. */
function cutFrom(program: LinearProgram, row: Float64Array, times: number): { cut: RoundingCut; depth: number } | null {
  const { size, at, lower, upper } = program;
  // Whole parts of factors only add rows as they are.
  const factors = row.map((one) => Math.round((one * times - Math.round(one * times)) * PARTS) / PARTS);
  const whole = new Float64Array(at.length);
  let [sum, large, least] = [0, 0, 0];
  for (let v = 0; v < at.length; v++) {
    const factor = program.times(factors, 0, v);
    if (factor === 0) continue;
    const [low, high] = [lower[v]!, upper[v]!];
    const sign = high - at[v]! < at[v]! - low ? -1 : 1;
    const bound = sign < 0 ? high : low;
    const ease = high < Infinity ? NEAR : 0;
    const n = Math.floor(sign * factor + ease);
    const missed = Math.max(0, n - sign * factor);
    sum -= factor * bound;
    if (missed > 0) sum += missed * (high - low);
    large += Math.abs(factor * bound) + missed * (ease > 0 ? high - low : 0);
    whole[v] = n * sign;
    least -= whole[v]! * bound;
  }
  program.steps += 10 * at.length + 2 * program.rows.length;
  if (!(large < MOST_SUM)) return null;
  least -= Math.floor(sum);
  // A row's own variable is a sum of columns.
  const entries = new Float64Array(at.length - size);
  let [value, square] = [0, 0];
  for (let c = 0; c < entries.length; c++) {
    const entry = -(whole[size + c]! + program.times(whole, 0, size + c));
    if (Math.abs(entry) > MOST_ENTRY) return null;
    if (entry === 0) continue;
    entries[c] = entry;
    value += entry * at[size + c]!;
    square += entry * entry;
  }
  const missing = least - value;
  return missing > DEEP && square > 0 ? { cut: { entries, least }, depth: missing / Math.sqrt(square) } : null;
}
