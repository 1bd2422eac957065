import { dearestOf } from "../model/costOf.ts";
import type { BoardSearch } from "./boardSearch.ts";
import { patternKey } from "./boardSearch.ts";
import { PartPlan } from "./partPlan.ts";
import { patternProgram } from "./patternProgram.ts";
import { worthOfCopies } from "./worthOfCopies.ts";
import type { Open } from "../model/restOf.ts";
import type { Cut, Pattern, Problem } from "../model/problem.ts";

/** A reduced cost counts from here, as a part of the dearest board. */
const SMALL = 1e-9;

/** A plan in which boards may be cut in fractions. */
export interface Relaxed {
  readonly cuts: readonly Cut[];
  /** What one more of each item would cost. */
  readonly duals: Float64Array;
  /** What one more board of each type would save; 0 where there are enough. */
  readonly scarcity: Float64Array;
  /** Part of the demand is met by no board. */
  readonly short: boolean;
}

/** When a fractional plan is good enough, though it may not be the cheapest. */
export interface Enough {
  /** Asked at every turn. */
  readonly out: () => boolean;
  /** Asked with what no fractional plan costs less than, and what the best so far costs. */
  readonly proves?: (bound: number, value: number) => boolean;
  /** A cost as low as this. */
  readonly cheap?: number;
}

/**
 * The linear program over cutting patterns, whose columns are found when they are wanted (Gilmore and Gomory 1961). It is solved for what is wanted, and again for what is left of that,
 * each time from where it was, with all patterns found so far.
 */
export class ColumnGeneration {
  readonly patterns: Pattern[] = [];
  readonly #problem: Problem;
  readonly #search: BoardSearch;
  readonly #made: ReturnType<typeof patternProgram>;
  readonly #known = new Set<string>();
  /** Where the columns begin that stand for pieces not cut, and those of patterns. */
  readonly #missing: number;
  readonly #first: number;
  #before = 0;

  /** @param patterns those of a first plan. @param penalty what a piece that is not cut costs. */
  constructor(problem: Problem, search: BoardSearch, patterns: readonly Pattern[], penalty: number) {
    this.#problem = problem;
    this.#search = search;
    this.#made = patternProgram(problem);
    const { program } = this.#made;
    this.#missing = program.at.length;
    problem.items.forEach((_, i) => program.add([i], [1], { lower: 0, upper: Infinity, cost: penalty }));
    this.#first = program.at.length;
    patterns.forEach((pattern) => this.#add(pattern));
  }

  #add(pattern: Pattern): void {
    const key = patternKey(pattern);
    if (this.#known.has(key)) return;
    this.#known.add(key);
    this.patterns.push(pattern);
    this.#made.add(pattern, this.#problem.types[pattern.type]!.cost);
  }

  /** @param open what is left of the problem; all of it, if left out. */
  *solve(
    { out, proves, cheap = -Infinity }: Enough,
    { wanted, left }: Open = new PartPlan(this.#problem),
  ): Generator<void, Relaxed> {
    const { items, types } = this.#problem;
    const { program, limited } = this.#made;
    // A little more of every piece, each another amount: without it the many ties would make the simplex turn in circles.
    wanted.forEach((count, i) => program.bound(i, count && count + 1e-5 * (1 + ((i * 37) % 61) / 61), Infinity));
    limited.forEach((j, r) => program.bound(items.length + r, 0, left[j]!));
    this.patterns.forEach(({ items: own, copies }, n) =>
      program.bound(this.#first + n, 0, own.every((i, k) => copies[k]! <= wanted[i]!) ? Infinity : 0),
    );
    const small = SMALL * dearestOf(this.#problem);
    const scarcity = new Float64Array(types.length);
    yield* program.dual(Infinity);
    for (let found = -1; found !== this.patterns.length;) {
      found = this.patterns.length;
      yield* program.primal();
      this.#search.steps += program.steps - this.#before;
      this.#before = program.steps;
      limited.forEach((j, r) => (scarcity[j] = Math.max(0, -program.duals[items.length + r]!)));
      if (out()) break;
      const worths = program.duals.map((dual) => Math.max(0, dual));
      const scarce = limited.reduce((sum, j) => sum + scarcity[j]! * left[j]!, 0);
      const value = items.reduce((sum, _, i) => sum + wanted[i]! * worths[i]!, 0);
      if (value - scarce <= cheap) break;
      const thresholds = Float64Array.from(types, (type, j) => type.cost + scarcity[j]! + small);
      const answer = yield* this.#search.ask({ values: worthOfCopies(this.#problem, worths, wanted), thresholds });
      answer.patterns.forEach((pattern) => this.#add(pattern));
      let scale = 1;
      types.forEach((type, j) => (scale = Math.min(scale, (type.cost + scarcity[j]!) / answer.most[j]! || 0)));
      if (proves?.(value * scale - scarce, value - scarce)) break;
    }
    return {
      duals: program.duals.slice(0, items.length),
      scarcity,
      short: items.some((_, i) => program.at[this.#missing + i]! > 1e-4),
      cuts: this.patterns.flatMap((pattern, n) => {
        const times = program.at[this.#first + n]!;
        return times > 1e-6 ? [{ pattern, times }] : [];
      }),
    };
  }
}
