import { costOf } from "../model/costOf.ts";
import { LinearProgram } from "./linearProgram.ts";
import { roundingCuts, type RoundingCut } from "./roundingCuts.ts";
import type { Cut, Pattern, Problem } from "../model/problem.ts";

/** A plan in whole boards, or null where none was found, and what no plan cut in the patterns given costs less than. */
export interface Whole {
  readonly cuts: readonly Cut[] | null;
  readonly bound: number;
}

/** A value is whole when it is as close as this to a whole number. */
const WHOLE = 1e-5;
/** Rounds of cuts at most, and those in a row that may bring the bound no nearer to the target by this part of what is left, nor leave out this part of the columns. */
const ROUNDS = 30;
const STALLED = 4;
const NEARER = 0.02;
const FEWER = 0.05;
/** No cuts where the linear program's cost is as close to the target, as a part of it. */
const CLOSE = 1e-5;

/**
 * The cheapest plan, in whole numbers, that cuts boards in the patterns given: cuts that raise the linear program's bound and leave patterns out, then branch and bound,
 * first on the number of boards of a type, then on the boards of one pattern.
 *
 * @param target what a plan must cost less than. @param useful given a plan's cost, what a better one must cost less than. @param rounds of cuts; none where the patterns are but some of those that
 * could serve, for then little is gained by proving that no plan is among them.
 */
export function* wholePlan(
  problem: Problem,
  patterns: readonly Pattern[],
  target: number,
  useful: (cost: number) => number,
  spent: (steps: number) => boolean,
  rounds = ROUNDS,
): Generator<void, Whole> {
  const search = new WholeSearch(problem, patterns, target, useful, spent);
  return yield* search.run(rounds);
}

interface Node {
  readonly mark: number;
  readonly variable: number;
  readonly lower: number;
  readonly upper: number;
}

class WholeSearch {
  #program: LinearProgram;
  readonly #problem: Problem;
  /** Patterns that a useful plan may hold, and how often at most. */
  #columns: readonly { readonly pattern: Pattern; readonly most: number }[];
  #rounding: readonly RoundingCut[] = [];
  /** Where the rows of cuts begin. */
  readonly #first: number;
  readonly #useful: (cost: number) => number;
  readonly #spent: (steps: number) => boolean;
  readonly #trail: { variable: number; lower: number; upper: number }[] = [];
  #target: number;
  #cuts: readonly Cut[] | null = null;
  /** Work done on programs before this one. */
  #before = 0;

  constructor(
    problem: Problem,
    patterns: readonly Pattern[],
    target: number,
    useful: (cost: number) => number,
    spent: (steps: number) => boolean,
  ) {
    const { items, types } = problem;
    this.#problem = problem;
    this.#target = target;
    this.#useful = useful;
    this.#spent = spent;
    this.#first = items.length + types.length;
    this.#columns = patterns.map((pattern) => ({
      pattern,
      // More boards than that cut nothing that is wanted.
      most: Math.max(...pattern.items.map((item, n) => Math.ceil(items[item]!.demand / pattern.copies[n]!))),
    }));
    this.#program = this.#made();
  }

  #made(): LinearProgram {
    const { items, types } = this.#problem;
    const pieces = items.reduce((sum, item) => sum + item.demand, 0);
    const program = new LinearProgram([
      ...items.map((item) => ({ lower: item.demand, upper: Infinity, cost: 0 })),
      ...types.map((type) => ({ lower: 0, upper: Math.min(type.count, pieces), cost: 0 })),
      ...this.#rounding.map(({ least }) => ({ lower: least, upper: Infinity, cost: 0 })),
    ]);
    this.#columns.forEach(({ pattern: { type, items: own, copies }, most }, c) => {
      const rows = [...own, items.length + type];
      const entries = [...copies, 1];
      this.#rounding.forEach((cut, n) => {
        if (cut.entries[c] === 0) return;
        rows.push(this.#first + n);
        entries.push(cut.entries[c]!);
      });
      program.add(rows, entries, { lower: 0, upper: most, cost: types[type]!.cost });
    });
    program.steps += this.#columns.length * (this.#rounding.length + 10);
    return program;
  }

  *run(rounds: number): Generator<void, Whole> {
    if (yield* this.#cutOff(rounds)) return { cuts: null, bound: Infinity };
    const program = this.#program;
    const stack: Node[] = [{ mark: 0, variable: 0, lower: program.lower[0]!, upper: program.upper[0]! }];
    let bound = Infinity;
    for (let node = stack.pop(); node; node = stack.pop()) {
      this.#undo(node.mark);
      this.#bound(node.variable, node.lower, node.upper);
      const status = yield* program.dual(this.#target);
      if (this.#out) return { cuts: this.#cuts, bound: 0 };
      if (status === "over") continue;
      let floor = program.floor();
      if (floor >= this.#target) continue;
      this.#tighten(floor);
      const branch = status === "stuck" ? -1 : this.#fractional();
      if (branch >= 0) {
        this.#split(branch, stack);
        continue;
      }
      if (status === "optimal") this.#keep();
      yield* program.refine();
      floor = Math.max(floor, program.floor());
      bound = Math.min(bound, floor);
    }
    return { cuts: this.#cuts, bound };
  }

  get #out(): boolean {
    return this.#spent(this.#before + this.#program.steps);
  }

  /** Cuts round after round, as long as they help. @returns whether no plan costs less than the target. */
  *#cutOff(rounds: number): Generator<void, boolean> {
    let [best, width] = [-Infinity, Infinity];
    for (let round = 0, stalled = 0; round < rounds && stalled < STALLED; round++) {
      const program = this.#program;
      const status = yield* program.dual(this.#target);
      if (status === "over") return true;
      if (status === "stuck" || this.#out) return false;
      // From as close as this cuts have nothing to raise, and would but slow the search for a plan that wastes nothing.
      if (round === 0 && program.floor() > this.#target * (1 - CLOSE)) return false;
      yield* program.refine();
      const floor = program.floor();
      if (floor >= this.#target) return true;
      if (this.#fractional() < 0) return false;
      this.#tighten(floor);
      const helped = floor > best + NEARER * (this.#target - best) || this.#columns.length < (1 - FEWER) * width;
      stalled = helped ? 0 : stalled + 1;
      best = Math.max(best, floor);
      width = this.#columns.length;
      const fresh = yield* roundingCuts(program);
      if (fresh.length === 0) return false;
      this.#renew(fresh);
    }
    return false;
  }

  /** The program with fresh cuts, without patterns that are of no use any more and cuts that hold nothing back, started where it was. */
  #renew(fresh: readonly RoundingCut[]): void {
    const [first, old, rounding] = [this.#first, this.#program, this.#rounding];
    const held = [...rounding.keys()].filter((n) => !old.isBasic(first + n));
    const stay = [...this.#columns.keys()].filter((c) => old.upper[old.size + c]! > 0);
    this.#columns = stay.map((c) => ({ ...this.#columns[c]!, most: old.upper[old.size + c]! }));
    this.#rounding = [...held.map((n) => rounding[n]!), ...fresh].map(({ entries, least }) => ({
      least,
      entries: Float64Array.from(stay, (c) => entries[c]!),
    }));
    this.#before += old.steps;
    this.#trail.length = 0;
    this.#program = this.#made();
    const { size } = this.#program;
    this.#program.startFrom([
      ...[...Array(first).keys()].filter((r) => old.isBasic(r)),
      ...fresh.map((_, n) => first + held.length + n),
      ...stay.flatMap((c, n) => (old.isBasic(old.size + c) ? [size + n] : [])),
    ]);
  }

  #bound(variable: number, lower: number, upper: number): void {
    const program = this.#program;
    this.#trail.push({ variable, lower: program.lower[variable]!, upper: program.upper[variable]! });
    program.bound(variable, lower, upper);
  }

  #undo(mark: number): void {
    while (this.#trail.length > mark) {
      const { variable, lower, upper } = this.#trail.pop()!;
      this.#program.bound(variable, lower, upper);
    }
  }

  /** A column whose reduced cost is too large to be used so often within the target is used less often. */
  #tighten(floor: number): void {
    const program = this.#program;
    const gap = this.#target - floor;
    for (let v = program.size; v < program.at.length; v++) {
      const [lower, upper] = [program.lower[v]!, program.upper[v]!];
      if (lower === upper) continue;
      const reduced = program.reduced(v);
      if (reduced <= 0) continue;
      const most = lower + Math.floor(gap / reduced + 1e-6);
      if (most < upper) this.#bound(v, lower, most);
    }
    program.steps += program.at.length * 5;
  }

  #fractional(): number {
    const [program, first] = [this.#program, this.#first];
    const apart = (v: number): number => Math.abs(program.at[v]! - Math.round(program.at[v]!));
    let [worst, found] = [WHOLE, -1];
    for (let v = this.#problem.items.length; v < first; v++) if (apart(v) > worst) [worst, found] = [apart(v), v];
    if (found >= 0) return found;
    for (let v = program.size; v < program.at.length; v++) {
      const part = program.at[v]! - Math.floor(program.at[v]!);
      if (part > worst && part < 1 - WHOLE) [worst, found] = [part, v];
    }
    return found;
  }

  #split(variable: number, stack: Node[]): void {
    const program = this.#program;
    const value = program.at[variable]!;
    const mark = this.#trail.length;
    const down = { mark, variable, lower: program.lower[variable]!, upper: Math.floor(value) };
    const up = { mark, variable, lower: Math.ceil(value), upper: program.upper[variable]! };
    if (variable >= program.size || value - Math.floor(value) > 0.5) stack.push(down, up);
    else stack.push(up, down);
  }

  #keep(): void {
    const cuts = this.#columns.flatMap(({ pattern }, n): Cut[] => {
      const times = Math.round(this.#program.at[this.#program.size + n]!);
      return times > 0 ? [{ pattern, times }] : [];
    });
    // What the last bits of the program made whole may cut a piece too few.
    if (!enough(this.#problem, cuts)) return;
    this.#cuts = cuts;
    this.#target = Math.min(this.#target, this.#useful(costOf(this.#problem, cuts)));
  }
}

function enough(problem: Problem, cuts: readonly Cut[]): boolean {
  const open = problem.items.map((item) => item.demand);
  for (const { pattern, times } of cuts) pattern.items.forEach((i, n) => (open[i]! -= pattern.copies[n]! * times));
  return open.every((count) => count <= 0);
}
