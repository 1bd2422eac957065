import { mergeLengths, refined } from "../model/mergeLengths.ts";
import { costGrid } from "../model/costGrid.ts";
import { consolidateOffcut } from "../layout/consolidateOffcut.ts";
import { greedyPlan } from "./greedyPlan.ts";
import { ColumnGeneration } from "./columnGeneration.ts";
import { mergeBoards } from "../layout/mergeBoards.ts";
import { roundedPlan } from "./roundedPlan.ts";
import { safeBound } from "./safeBound.ts";
import { tidyCuts } from "../layout/tidyCuts.ts";
import type { Cut, Problem } from "../model/problem.ts";
import type { Relaxed, Row } from "./simplex.ts";

/**
 * Beyond this many distinct pieces in one size neighboring lengths are counted as one, some COARSE in all (see coarsened): as the longer for a plan, as the shorter for the
 * bound. A gap of about one in a hundred may then remain.
 */
const MOST_DISTINCT = 300;
const COARSE = 120;
/** A plan of lengths that are not quite the true ones need not be the very least. */
const COARSE_STEPS = 10_000_000;

/** The best plan found for one size, and what no plan goes below. */
export interface Solved {
  readonly cuts: readonly Cut[];
  readonly cost: number;
  readonly bound: number;
  readonly proved: boolean;
}

/** Asked at every pause: is the work allowed done, after so many steps? */
export type Spent = (steps: number) => boolean;

/**
 * The least plan of one size, or the best that was found in the work allowed, with a bound that holds in any case.
 *
 * First a greedy plan. Then the linear program over patterns gives the bound, rounded up to the costs' grid; its rounded solution, filled up board by
 * board, is nearly always as good as the bound. If not, branch and bound: on the number of boards of a type, on the number with at least so many copies of
 * a piece, at last on single patterns, with new patterns found at every node, so that nothing is lost.
 *
 * @returns when no plan was found, which only limited stock can bring about, whether it is proved too little (`impossible`).
 */
export function* solveSize(problem: Problem, spent: Spent): Generator<void, Solved | { readonly impossible: boolean }> {
  const search = new SizeSearch(problem, spent);
  yield* search.run();
  return search.result();
}

class SizeSearch {
  private best: Cut[] | null = null;
  private cost = Infinity;
  private boards = Infinity;
  private bound = 0;
  private exhausted = false;
  private readonly problem: Problem;
  private readonly spent: Spent;
  private readonly grid: number;
  private readonly master: ColumnGeneration;
  private readonly limits: readonly Row[];

  constructor(problem: Problem, spent: Spent) {
    this.problem = problem;
    this.spent = spent;
    this.grid = costGrid(problem.types.map((type) => type.cost));
    this.master = new ColumnGeneration(problem);
    this.limits = problem.types.flatMap((type, j): Row[] =>
      type.count < Infinity ? [{ kind: "type", type: j, atLeast: false, limit: type.count }] : [],
    );
  }

  result(): Solved | { readonly impossible: boolean } {
    if (this.best === null) return { impossible: this.exhausted };
    this.keep(consolidateOffcut(this.problem, this.best), true);
    const proved = this.exhausted || this.bound >= this.cost * (1 - 1e-9);
    return { cuts: this.best, cost: this.cost, bound: proved ? this.cost : Math.min(this.bound, this.cost), proved };
  }

  *run(): Generator<void, void> {
    this.raise(this.material());
    this.keep(yield* greedyPlan(this.problem));
    if (this.closed()) return;
    if (this.problem.items.length > MOST_DISTINCT) yield* this.coarse();
    else yield* this.exact();
  }

  private *coarse(): Generator<void, void> {
    const longer = mergeLengths(this.problem, COARSE, true);
    if (longer.problem.items.length > MOST_DISTINCT) return;
    const shorter = new ColumnGeneration(mergeLengths(this.problem, COARSE, false).problem);
    const relaxed = yield* shorter.solve(this.limits, () => this.spent(shorter.search.steps));
    if (relaxed) this.raise(yield* this.boundFrom(shorter));
    const before = shorter.search.steps;
    const solved = yield* solveSize(longer.problem, (steps) => steps > COARSE_STEPS || this.spent(before + steps));
    if ("cuts" in solved) this.keep(refined(this.problem, longer, solved.cuts));
  }

  private *exact(): Generator<void, void> {
    for (const cut of this.best ?? []) this.master.add(cut.pattern);
    const root = yield* this.master.solve(this.limits, this.out);
    this.raise(yield* this.boundFrom(this.master));
    if (root === null) return;
    if (root.short && this.best === null) {
      this.exhausted = true;
      return;
    }
    for (let attempt = 0; attempt < 12 && !this.closed() && !this.out(); attempt++) yield* this.round(root, attempt);
    if (!this.closed()) yield* this.branch(root);
  }

  private readonly out = (): boolean => this.spent(this.master.search.steps);

  private closed(): boolean {
    return this.bound >= this.cost * (1 - 1e-9);
  }

  /** What material alone must cost: every piece its room, at the least price of a unit of room. */
  private material(): number {
    const rate = Math.min(...this.problem.types.map((type) => type.cost / type.room));
    return this.problem.items.reduce((sum, item) => sum + item.weight * item.demand, 0) * rate * (1 - 1e-12);
  }

  private raise(bound: number): void {
    this.bound = Math.max(this.bound, this.roundedUp(bound));
  }

  private boundFrom(master: ColumnGeneration): Generator<void, number> {
    const scarcity = new Float64Array(this.problem.types.length);
    const { items } = master.problem;
    this.limits.forEach((row, r) => (scarcity[row.type!] = Math.max(0, -(master.duals[items.length + r] ?? 0))));
    return safeBound(master.problem, master.search, master.duals, scarcity);
  }

  private roundedUp(bound: number): number {
    if (this.grid === 0) return bound;
    // A bound that misses a step of the grid by a millionth of it, or by its own last digits, has reached it.
    const steps = bound / this.grid;
    return Math.ceil(steps - Math.max(1e-6, 1e-9 * steps)) * this.grid;
  }

  /** @param last whether a plan that is as good is taken as well. @returns whether it is a plan at all. */
  private keep(found: Cut[] | null, last = false): boolean {
    if (found === null) return false;
    const cuts = mergeBoards(this.problem, tidyCuts(this.problem, found));
    if (!meetsDemand(this.problem, cuts)) return false;
    const cost = costOf(this.problem, cuts);
    const boards = cuts.reduce((sum, cut) => sum + cut.times, 0);
    const close = 1e-9 * cost;
    if (
      cost < this.cost - close ||
      (cost < this.cost + close && (boards < this.boards || (last && boards === this.boards)))
    ) {
      this.best = cuts;
      this.cost = cost;
      this.boards = boards;
    }
    return true;
  }

  private *round(relaxed: Relaxed, attempt: number): Generator<void, void> {
    const rounded = yield* roundedPlan(this.problem, this.master.search, relaxed, attempt);
    for (const cut of rounded ?? []) this.master.add(cut.pattern);
    this.keep(rounded);
  }

  private *branch(root: Relaxed): Generator<void, void> {
    let complete = true;
    const stack: { rows: Row[]; relaxed: Relaxed | null }[] = [{ rows: [], relaxed: root }];
    while (stack.length > 0) {
      const node = stack.pop()!;
      const relaxed = node.relaxed ?? (yield* this.master.solve([...this.limits, ...node.rows], this.out));
      if (relaxed === null) return;
      if (relaxed.short || this.hopeless(relaxed.value)) continue;
      const rows = branching(relaxed);
      if (rows === null) {
        // A whole plan is the least of its node only when the node's bound is known.
        const kept = this.keep(
          relaxed.cuts.map(({ column, times }) => ({ pattern: column.pattern, times: Math.round(times) })),
        );
        if (!kept || relaxed.value === -Infinity) complete = false;
      } else {
        if (node.rows.length > 0) yield* this.round(relaxed, 0);
        stack.push(
          { rows: [...node.rows, rows.later], relaxed: null },
          { rows: [...node.rows, rows.first], relaxed: null },
        );
      }
      if (this.closed()) return;
    }
    this.exhausted = complete;
  }

  /** Whether a node whose plans cost `value` or more can give none that is cheaper than the best. */
  private hopeless(value: number): boolean {
    return this.roundedUp(value) >= this.cost * (1 - 1e-9);
  }
}

function costOf(problem: Problem, cuts: readonly Cut[]): number {
  return cuts.reduce((sum, cut) => sum + problem.types[cut.pattern.type]!.cost * cut.times, 0);
}

function meetsDemand(problem: Problem, cuts: readonly Cut[]): boolean {
  const cut = problem.items.map(() => 0);
  const boards = problem.types.map(() => 0);
  for (const { pattern, times } of cuts) {
    pattern.items.forEach((item, n) => (cut[item]! += pattern.copies[n]! * times));
    boards[pattern.type]! += times;
  }
  return (
    problem.items.every((item, i) => item.demand === cut[i]) &&
    problem.types.every((type, j) => boards[j]! <= type.count)
  );
}

/** Two rows of which every whole plan meets one, and this fractional one neither; null when it is whole. */
function branching(relaxed: Relaxed): { first: Row; later: Row } | null {
  const sums = new Map<string, { row: Pick<Row, "kind" | "type" | "item" | "copies" | "key">; sum: number }>();
  const count = (id: string, row: Pick<Row, "kind" | "type" | "item" | "copies" | "key">, times: number): void => {
    const entry = sums.get(id);
    if (entry) entry.sum += times;
    else sums.set(id, { row, sum: times });
  };
  for (const kind of ["type", "copies", "pattern"] as const) {
    sums.clear();
    for (const { column, times } of relaxed.cuts) {
      const { type, items, copies } = column.pattern;
      if (kind === "type") count(`${type}`, { kind, type }, times);
      if (kind === "pattern") count(column.key, { kind, key: column.key }, times);
      if (kind === "copies")
        items.forEach((item, n) => {
          for (let k = 1; k <= copies[n]!; k++) count(`${item} ${k}`, { kind, item, copies: k }, times);
        });
    }
    let chosen: { row: Pick<Row, "kind" | "type" | "item" | "copies" | "key">; sum: number } | null = null;
    let worst = 1e-4;
    for (const entry of sums.values()) {
      const apart = Math.abs(entry.sum - Math.round(entry.sum));
      if (apart > worst + 1e-6) {
        worst = apart;
        chosen = entry;
      }
    }
    if (chosen === null) continue;
    const down: Row = { ...chosen.row, atLeast: false, limit: Math.floor(chosen.sum) };
    const up: Row = { ...chosen.row, atLeast: true, limit: Math.ceil(chosen.sum) };
    return chosen.sum - Math.floor(chosen.sum) < 0.5 ? { first: down, later: up } : { first: up, later: down };
  }
  return null;
}
