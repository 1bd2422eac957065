import { costOf } from "../model/costOf.ts";
import { LinearProgram } from "./linearProgram.ts";
import type { Cut, Pattern, Problem } from "../model/problem.ts";

/** A plan in whole boards, or null where none was found, and what no plan cut in the patterns given costs less than. */
export interface Whole {
  readonly cuts: readonly Cut[] | null;
  readonly bound: number;
}

/** A value is whole when it is as close as this to a whole number. */
const WHOLE = 1e-5;

/**
 * The cheapest plan, in whole numbers, that cuts boards in the patterns given: branch and bound on a linear program, first on the number of boards of a type, then
 * on the boards of one pattern.
 *
 * @param target what a plan must cost less than. @param useful given a plan's cost, what a better one must cost less than.
 */
export function* wholePlan(
  problem: Problem,
  patterns: readonly Pattern[],
  target: number,
  useful: (cost: number) => number,
  spent: (steps: number) => boolean,
): Generator<void, Whole> {
  const search = new WholeSearch(problem, patterns, target, useful, spent);
  return yield* search.run();
}

interface Node {
  readonly mark: number;
  readonly variable: number;
  readonly lower: number;
  readonly upper: number;
}

class WholeSearch {
  readonly program: LinearProgram;
  private readonly problem: Problem;
  private readonly patterns: readonly Pattern[];
  private readonly first: number;
  private readonly useful: (cost: number) => number;
  private readonly spent: (steps: number) => boolean;
  private readonly trail: { variable: number; lower: number; upper: number }[] = [];
  private target: number;
  private cuts: readonly Cut[] | null = null;
  private cost = Infinity;

  constructor(
    problem: Problem,
    patterns: readonly Pattern[],
    target: number,
    useful: (cost: number) => number,
    spent: (steps: number) => boolean,
  ) {
    this.problem = problem;
    this.patterns = patterns;
    this.target = target;
    this.useful = useful;
    this.spent = spent;
    const { items, types } = problem;
    const pieces = items.reduce((sum, item) => sum + item.demand, 0);
    this.program = new LinearProgram([
      ...items.map((item) => ({ lower: item.demand, upper: Infinity, cost: 0 })),
      ...types.map((type) => ({ lower: 0, upper: Math.min(type.count, pieces), cost: 0 })),
    ]);
    this.first = items.length + types.length;
    for (const { type, items: own, copies } of patterns) {
      // More boards than that cut nothing that is wanted.
      const upper = Math.max(...own.map((item, n) => Math.ceil(items[item]!.demand / copies[n]!)));
      this.program.add([...own, items.length + type], [...copies, 1], { lower: 0, upper, cost: types[type]!.cost });
    }
  }

  *run(): Generator<void, Whole> {
    const { program } = this;
    const stack: Node[] = [{ mark: 0, variable: 0, lower: program.lower[0]!, upper: program.upper[0]! }];
    let bound = Infinity;
    for (let node = stack.pop(); node; node = stack.pop()) {
      this.undo(node.mark);
      this.bound(node.variable, node.lower, node.upper);
      const status = yield* program.dual(this.target);
      if (this.spent(program.steps)) return { cuts: this.cuts, bound: 0 };
      if (status === "over") continue;
      let floor = program.floor();
      if (floor >= this.target) continue;
      this.tighten(floor);
      const branch = status === "stuck" ? -1 : this.fractional();
      if (branch >= 0) {
        this.split(branch, stack);
        continue;
      }
      if (status === "optimal") this.keep();
      yield* program.refine();
      floor = Math.max(floor, program.floor());
      bound = Math.min(bound, floor);
    }
    return { cuts: this.cuts, bound };
  }

  private bound(variable: number, lower: number, upper: number): void {
    const { program } = this;
    this.trail.push({ variable, lower: program.lower[variable]!, upper: program.upper[variable]! });
    program.bound(variable, lower, upper);
  }

  private undo(mark: number): void {
    while (this.trail.length > mark) {
      const { variable, lower, upper } = this.trail.pop()!;
      this.program.bound(variable, lower, upper);
    }
  }

  /** A column whose reduced cost is too large to be used so often within the target is used less often. */
  private tighten(floor: number): void {
    const { program } = this;
    const gap = this.target - floor;
    for (let v = this.first; v < program.at.length; v++) {
      const [lower, upper] = [program.lower[v]!, program.upper[v]!];
      if (lower === upper) continue;
      const reduced = program.reduced(v);
      if (reduced > 0 && lower + gap / reduced < upper - 1)
        this.bound(v, lower, lower + Math.floor(gap / reduced + 1e-6));
    }
    program.steps += program.at.length * 5;
  }

  private fractional(): number {
    const { program, first } = this;
    const apart = (v: number): number => Math.abs(program.at[v]! - Math.round(program.at[v]!));
    let [worst, found] = [WHOLE, -1];
    for (let v = this.problem.items.length; v < first; v++) if (apart(v) > worst) [worst, found] = [apart(v), v];
    if (found >= 0) return found;
    for (let v = first; v < program.at.length; v++) {
      const part = program.at[v]! - Math.floor(program.at[v]!);
      if (part > worst && part < 1 - WHOLE) [worst, found] = [part, v];
    }
    return found;
  }

  private split(variable: number, stack: Node[]): void {
    const { program } = this;
    const value = program.at[variable]!;
    const mark = this.trail.length;
    const down = { mark, variable, lower: program.lower[variable]!, upper: Math.floor(value) };
    const up = { mark, variable, lower: Math.ceil(value), upper: program.upper[variable]! };
    if (variable >= this.first || value - Math.floor(value) > 0.5) stack.push(down, up);
    else stack.push(up, down);
  }

  private keep(): void {
    const cuts = this.patterns.flatMap((pattern, n): Cut[] => {
      const times = Math.round(this.program.at[this.first + n]!);
      return times > 0 ? [{ pattern, times }] : [];
    });
    const cost = costOf(this.problem, cuts);
    if (cost >= this.cost || !enough(this.problem, cuts)) return;
    this.cuts = cuts;
    this.cost = cost;
    this.target = Math.min(this.target, this.useful(cost));
  }
}

function enough(problem: Problem, cuts: readonly Cut[]): boolean {
  const open = problem.items.map((item) => item.demand);
  for (const { pattern, times } of cuts) pattern.items.forEach((i, n) => (open[i]! -= pattern.copies[n]! * times));
  return open.every((count) => count <= 0);
}
