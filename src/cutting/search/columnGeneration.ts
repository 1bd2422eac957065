import { BoardSearch, patternKey } from "./boardSearch.ts";
import { Simplex } from "./simplex.ts";
import { worthOfCopies } from "./worthOfCopies.ts";
import type { Pattern, Problem } from "../model/problem.ts";
import type { Column, Relaxed, Row } from "./simplex.ts";

/** A reduced cost counts from here, as a part of the dearest board. */
const SMALL = 1e-9;

/**
 * The linear program over cutting patterns, whose columns are found when they are wanted (Gilmore and Gomory 1961): revised simplex with a dense inverse.
 *
 * The inverse is as wide as there are items and rows, some fifty for a roof, so it is simply kept and made anew for every node of the search; columns found
 * once stay.
 */
export class ColumnGeneration {
  readonly columns: Column[] = [];
  readonly search: BoardSearch;
  /** The latest, whether or not a solve came to its end. */
  duals: Float64Array = new Float64Array(0);
  private readonly known = new Map<string, number>();
  readonly problem: Problem;
  private readonly dearest: number;

  constructor(problem: Problem) {
    this.problem = problem;
    this.search = new BoardSearch(problem);
    this.dearest = Math.max(...problem.types.map((type) => type.cost)) || 1;
  }

  add(pattern: Pattern): void {
    const key = patternKey(pattern.type, pattern.items, pattern.copies);
    if (this.known.has(key)) return;
    this.known.set(key, this.columns.length);
    this.columns.push({ pattern, key });
  }

  /** @param spent says when to stop: the answer is then null. */
  *solve(rows: readonly Row[], spent: () => boolean): Generator<void, Relaxed | null> {
    for (let penalty = 10 * this.dearest; ; penalty *= 1000) {
      const simplex = new Simplex(this.problem, rows, penalty, this.dearest * SMALL);
      const relaxed = yield* this.generate(simplex, rows, spent);
      if (relaxed === null || !relaxed.short || penalty > 1e6 * this.dearest) return relaxed;
    }
  }

  private *generate(simplex: Simplex, rows: readonly Row[], spent: () => boolean): Generator<void, Relaxed | null> {
    const forbidden = new Set(rows.filter((row) => row.kind === "pattern").map((row) => row.key!));
    for (let n = 0; ;) {
      while (n < this.columns.length) simplex.append(this.columns[n++]!);
      const optimal = yield* simplex.optimize();
      this.search.steps += simplex.takeSteps();
      this.duals = simplex.duals;
      if (spent()) return null;
      const prices = pricesOf(this.problem, rows, simplex.duals);
      const answer = yield* this.search.ask({ ...prices, forbidden });
      const before = this.columns.length;
      for (const pattern of answer.patterns) if (pattern) this.add(pattern);
      if (this.columns.length > before) continue;
      // A pattern that is known and yet worth more than it costs: the numbers went astray, and the duals bound nothing.
      const known = answer.patterns.some(
        (pattern, j) => pattern !== null && answer.most[j]! > prices.thresholds[j]! + 1e-6 * this.dearest,
      );
      return simplex.relaxed(this.columns, optimal && answer.complete && !known);
    }
  }
}

/** The duals as worth of copies, and what a board must beat. */
function pricesOf(
  problem: Problem,
  rows: readonly Row[],
  duals: Float64Array,
): { values: Float64Array[]; thresholds: Float64Array } {
  const { items, types } = problem;
  const values = worthOfCopies(
    problem,
    duals.map((dual) => Math.max(0, dual)),
    items.map((item) => item.demand),
  );
  const thresholds = Float64Array.from(types, (type) => type.cost * (1 + SMALL / 10));
  rows.forEach((row, r) => {
    const dual = duals[items.length + r]!;
    if (row.kind === "type") thresholds[row.type!]! -= dual;
    if (row.kind === "copies")
      for (let k = row.copies!; k < values[row.item!]!.length; k++) values[row.item!]![k]! += dual;
  });
  return { values, thresholds };
}
