import { dearestOf } from "../model/costOf.ts";
import type { BoardSearch } from "./boardSearch.ts";
import { patternKey } from "./boardSearch.ts";
import { patternProgram } from "./patternProgram.ts";
import { worthOfCopies } from "./worthOfCopies.ts";
import type { Pattern, Problem } from "../model/problem.ts";

/** A reduced cost counts from here, as a part of the dearest board. */
const SMALL = 1e-9;

/** A plan in which boards may be cut in fractions. */
export interface Relaxed {
  readonly cuts: readonly { readonly pattern: Pattern; readonly times: number }[];
  /** What one more of each item would cost. */
  readonly duals: Float64Array;
  /** What one more board of each type would save; 0 where there are enough. */
  readonly scarcity: Float64Array;
  /** Part of the demand is met by no board. */
  readonly short: boolean;
  /** All patterns that were looked at. */
  readonly patterns: readonly Pattern[];
}

/**
 * The linear program over cutting patterns, whose columns are found when they are wanted (Gilmore and Gomory 1961).
 *
 * @param patterns those of a first plan. @param penalty what a piece that is not cut costs. @param out says when to stop, and so does `enough`, given what no fractional plan
 * costs less than, and what the best so far costs: the plan is then not the cheapest.
 */
export function* columnGeneration(
  problem: Problem,
  search: BoardSearch,
  patterns: readonly Pattern[],
  penalty: number,
  out: () => boolean,
  enough: (bound: number, value: number) => boolean,
): Generator<void, Relaxed> {
  const { items, types } = problem;
  // A little more of every piece, each another amount: without it the many ties would make the simplex turn in circles.
  const { program, limited, add: put } = patternProgram(problem, (i) => 1e-5 * (1 + ((i * 37) % 61) / 61));
  items.forEach((_, i) => program.add([i], [1], { lower: 0, upper: Infinity, cost: penalty }));
  const columns: Pattern[] = [];
  const known = new Set<string>();
  const add = (pattern: Pattern): void => {
    const key = patternKey(pattern);
    if (known.has(key)) return;
    known.add(key);
    columns.push(pattern);
    put(pattern, types[pattern.type]!.cost);
  };
  patterns.forEach(add);
  const dearest = dearestOf(problem);
  const demands = items.map((item) => item.demand);
  const scarcity = new Float64Array(types.length);
  let before = 0;
  yield* program.dual(Infinity);
  for (let found = -1; found !== columns.length;) {
    found = columns.length;
    yield* program.primal();
    search.steps += program.steps - before;
    before = program.steps;
    limited.forEach((j, r) => (scarcity[j] = Math.max(0, -program.duals[items.length + r]!)));
    if (out()) break;
    const values = worthOfCopies(
      problem,
      program.duals.map((dual) => Math.max(0, dual)),
      demands,
    );
    const thresholds = Float64Array.from(types, (type, j) => type.cost + scarcity[j]! + SMALL * dearest);
    const answer = yield* search.ask({ values, thresholds });
    answer.patterns.forEach(add);
    const value = items.reduce((sum, item, i) => sum + item.demand * Math.max(0, program.duals[i]!), 0);
    const scarce = types.reduce((sum, type, j) => sum + (scarcity[j]! > 0 ? scarcity[j]! * type.count : 0), 0);
    let scale = 1;
    types.forEach((type, j) => (scale = Math.min(scale, (type.cost + scarcity[j]!) / answer.most[j]! || 0)));
    if (enough(value * scale - scarce, value - scarce)) break;
  }
  const start = items.length + limited.length;
  const value = (n: number): number => program.at[start + n]!;
  return {
    duals: program.duals.slice(0, items.length),
    scarcity,
    patterns: columns,
    short: items.some((_, i) => value(i) > 1e-4),
    cuts: columns.flatMap((pattern, n) => {
      const times = value(items.length + n);
      return times > 1e-6 ? [{ pattern, times }] : [];
    }),
  };
}
