import { mergeBoards } from "../layout/mergeBoards.ts";
import { costGrid } from "../model/costGrid.ts";
import { costOf } from "../model/costOf.ts";
import { tidyCuts } from "../layout/tidyCuts.ts";
import type { Cut, Problem } from "../model/problem.ts";

/** Costs as close as this are the same. */
const CLOSE = 1e-9;

/** The best plan so far and the bound so far, of one size. */
export class BestPlan {
  cuts: readonly Cut[] | null = null;
  cost: number;
  bound = 0;
  /** No sensible plan costs more: all limited boards, and for every piece the dearest of the others. */
  readonly most: number;
  #boards = Infinity;
  readonly #problem: Problem;
  readonly #grid: number;

  /** @param below only plans that cost less are of use. */
  constructor(problem: Problem, below: number) {
    this.#problem = problem;
    this.cost = below;
    this.#grid = costGrid(problem.types.map((type) => type.cost));
    const limited = problem.types.filter((type) => type.count < Infinity);
    const others = problem.types.filter((type) => type.count === Infinity);
    const pieces = problem.items.reduce((sum, item) => sum + item.demand, 0);
    this.most =
      limited.reduce((sum, type) => sum + type.cost * Math.min(type.count, pieces), 0) +
      pieces * Math.max(0, ...others.map((type) => type.cost));
  }

  /** No plan is cheaper than the best one, or than any of use. */
  get closed(): boolean {
    return this.bound >= Math.min(this.cost, Number.MAX_VALUE) * (1 - CLOSE) || this.impossible;
  }

  /** Every plan would cost more than all the boards. */
  get impossible(): boolean {
    return this.bound > this.most * (1 + 1e-6);
  }

  /** What a plan must cost less than to be of use. */
  get target(): number {
    return this.cost < Infinity ? this.targetOf(this.cost) : this.most * (1 + 1e-5) + this.#grid;
  }

  /** What a plan must cost less than to be cheaper than one of this cost: a step of the grid, less a little for the last digits. */
  readonly targetOf = (cost: number): number => {
    if (this.#grid === 0) return cost * (1 - CLOSE);
    const steps = cost / this.#grid;
    return (Math.ceil(steps - slack(steps)) - 1 + 2 * slack(steps)) * this.#grid;
  };

  /** A cost that no plan goes below: then none goes below the next step of the grid either. */
  raise(bound: number): void {
    this.bound = Math.max(this.bound, this.#roundedUp(bound));
  }

  /** Whether a bound proves the best plan, or as much as another bound would. */
  proves(bound: number, other = Infinity): boolean {
    return this.#roundedUp(bound) >= Math.min(this.#roundedUp(other) - CLOSE * this.#grid, this.cost * (1 - CLOSE));
  }

  /** Whether so few steps of the grid are left between the best plan and the bound. */
  within(steps: number): boolean {
    return this.#grid > 0 && this.cost - this.bound < (steps + 0.5) * this.#grid;
  }

  #roundedUp(bound: number): number {
    const steps = bound / this.#grid;
    return this.#grid === 0 ? bound : Math.ceil(steps - slack(steps)) * this.#grid;
  }

  /** Takes a plan that is cheaper, or has fewer boards for as much; with `last` also one that is as good. */
  offer(found: readonly Cut[] | null, last = false): void {
    if (found === null) return;
    const cuts = mergeBoards(this.#problem, tidyCuts(this.#problem, found));
    if (!this.#meetsDemand(cuts)) return;
    const cost = costOf(this.#problem, cuts);
    const boards = cuts.reduce((sum, cut) => sum + cut.times, 0);
    const close = CLOSE * cost;
    const asGood = cost < this.cost + close && (boards < this.#boards || (last && boards === this.#boards));
    if (cost >= this.cost - close && (!asGood || this.cuts === null)) return;
    this.cuts = cuts;
    this.cost = cost;
    this.#boards = boards;
  }

  #meetsDemand(cuts: readonly Cut[]): boolean {
    const { items, types } = this.#problem;
    const cut = items.map(() => 0);
    const boards = types.map(() => 0);
    for (const { pattern, times } of cuts) {
      pattern.items.forEach((item, n) => (cut[item]! += pattern.copies[n]! * times));
      boards[pattern.type]! += times;
    }
    return items.every((item, i) => item.demand === cut[i]) && types.every((type, j) => boards[j]! <= type.count);
  }
}

/** A number of steps that misses a whole one by a millionth, or by its own last digits, has reached it. */
function slack(steps: number): number {
  return Math.max(1e-6, 1e-9 * steps);
}
