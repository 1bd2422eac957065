import type { Pattern, Problem } from "../model/problem.ts";

/** A pattern with its name, kept once for the whole search. */
export interface Column {
  readonly pattern: Pattern;
  readonly key: string;
}

/** A limit on how many boards are cut: of one type, with at least so many copies of an item, or in one pattern. */
export interface Row {
  readonly kind: "type" | "copies" | "pattern";
  readonly type?: number;
  readonly item?: number;
  readonly copies?: number;
  readonly key?: string;
  readonly atLeast: boolean;
  readonly limit: number;
}

/** A relaxed plan: boards may be cut in fractions. */
export interface Relaxed {
  /** No whole plan within the rows costs less; -Infinity where the search for patterns was cut short and this is not known. */
  readonly value: number;
  readonly cuts: readonly { readonly column: Column; readonly times: number }[];
  /** What one more of each item would cost; of each row after them. */
  readonly duals: Float64Array;
  /** Part of the demand is met by no board: the rows leave no room, or nearly. */
  readonly short: boolean;
}

/** Steps between two pauses: some 5 ms. */
const PAUSE = 100_000;

function inRow(row: Row, column: Column): number {
  if (row.kind === "type") return column.pattern.type === row.type ? 1 : 0;
  if (row.kind === "pattern") return column.key === row.key ? 1 : 0;
  const n = column.pattern.items.indexOf(row.item!);
  return n >= 0 && column.pattern.copies[n]! >= row.copies! ? 1 : 0;
}

/** One linear program: min cost, items at least their demand, rows within their limits; every at-least row may be left short for `penalty`. */
export class Simplex {
  readonly duals: Float64Array;
  private readonly size: number;
  private readonly inverse: Float64Array;
  private readonly amounts: Float64Array;
  /** Column in each place of the basis; below zero -1 - r is the slack or surplus of row r, -1 - size - r its shortfall. */
  private readonly basis: Int32Array;
  private readonly costs: Float64Array;
  private readonly atLeast: Uint8Array;
  private readonly limits: Float64Array;
  private readonly entries: { rows: number[]; values: number[]; cost: number }[] = [];
  private readonly problem: Problem;
  private readonly rows: readonly Row[];
  private readonly small: number;
  private steps = 0;

  constructor(problem: Problem, rows: readonly Row[], penalty: number, small: number) {
    const m = problem.items.length;
    const size = m + rows.length;
    this.problem = problem;
    this.rows = rows;
    this.size = size;
    this.small = small;
    this.inverse = new Float64Array(size * size);
    this.basis = new Int32Array(size);
    this.costs = new Float64Array(size);
    this.duals = new Float64Array(size);
    this.atLeast = new Uint8Array(size).fill(1, 0, m);
    rows.forEach((row, r) => (this.atLeast[m + r] = row.atLeast ? 1 : 0));
    this.limits = Float64Array.from({ length: size }, (_, r) =>
      r < m ? problem.items[r]!.demand : rows[r - m]!.limit,
    );
    // A little more or less in every row, each another amount: without it the many ties would make the simplex turn in circles.
    this.amounts = this.limits.map((limit, r) => limit + 1e-7 * (1 + ((r * 37) % 61) / 61));
    for (let r = 0; r < size; r++) {
      this.inverse[r * size + r] = 1;
      this.basis[r] = this.atLeast[r] ? -1 - size - r : -1 - r;
      this.costs[r] = this.atLeast[r] ? penalty : 0;
    }
  }

  append(column: Column): void {
    const { pattern } = column;
    const entry = {
      rows: [...pattern.items],
      values: [...pattern.copies],
      cost: this.problem.types[pattern.type]!.cost,
    };
    this.rows.forEach((row, r) => {
      if (inRow(row, column) === 0) return;
      entry.rows.push(this.problem.items.length + r);
      entry.values.push(1);
    });
    this.entries.push(entry);
  }

  takeSteps(): number {
    const taken = this.steps;
    this.steps = 0;
    return taken;
  }

  /** @returns whether the optimum was reached; numbers gone astray could keep it from that. */
  *optimize(): Generator<void, boolean> {
    let paused = this.steps;
    for (let n = 0; n < 50 * this.size + 1000; n++) {
      this.price();
      const entering = this.choose();
      if (entering === null) return true;
      this.pivot(entering);
      if (this.steps - paused > PAUSE) {
        paused = this.steps;
        yield;
      }
    }
    return false;
  }

  private price(): void {
    const { size, inverse, duals } = this;
    duals.fill(0);
    for (let r = 0; r < size; r++) {
      const cost = this.costs[r]!;
      if (cost === 0) continue;
      const base = r * size;
      for (let c = 0; c < size; c++) duals[c]! += cost * inverse[base + c]!;
    }
    this.steps += (size * size) / 4;
  }

  private choose(): number | null {
    let entering: number | null = null;
    let best = -this.small;
    for (let r = 0; r < this.size; r++) {
      const reduced = this.atLeast[r] ? this.duals[r]! : -this.duals[r]!;
      if (reduced < best) {
        best = reduced;
        entering = -1 - r;
      }
    }
    for (let n = 0; n < this.entries.length; n++) {
      const { rows, values, cost } = this.entries[n]!;
      let reduced = cost;
      for (let e = 0; e < rows.length; e++) reduced -= this.duals[rows[e]!]! * values[e]!;
      if (reduced < best) {
        best = reduced;
        entering = n;
      }
    }
    this.steps += this.entries.length;
    return entering;
  }

  private pivot(entering: number): void {
    const { size, inverse, amounts } = this;
    const direction = new Float64Array(size);
    const rows = entering >= 0 ? this.entries[entering]!.rows : [-1 - entering];
    const values = entering >= 0 ? this.entries[entering]!.values : [this.atLeast[-1 - entering] ? -1 : 1];
    for (let r = 0; r < size; r++) {
      let sum = 0;
      for (let e = 0; e < rows.length; e++) sum += inverse[r * size + rows[e]!]! * values[e]!;
      direction[r] = sum;
    }
    let leaving = -1;
    let least = Infinity;
    for (let r = 0; r < size; r++) {
      if (direction[r]! <= 1e-9) continue;
      const ratio = Math.max(0, amounts[r]!) / direction[r]!;
      if (ratio < least - 1e-12 || (ratio < least + 1e-12 && direction[r]! > direction[leaving]!)) {
        least = ratio;
        leaving = r;
      }
    }
    if (leaving < 0) return;
    const base = leaving * size;
    const scale = 1 / direction[leaving]!;
    for (let c = 0; c < size; c++) inverse[base + c]! *= scale;
    amounts[leaving] = least;
    for (let r = 0; r < size; r++) {
      const factor = direction[r]!;
      if (r === leaving || factor === 0) continue;
      amounts[r]! -= factor * least;
      const to = r * size;
      for (let c = 0; c < size; c++) inverse[to + c]! -= factor * inverse[base + c]!;
    }
    this.basis[leaving] = entering;
    this.costs[leaving] = entering >= 0 ? this.entries[entering]!.cost : 0;
    this.steps += (size * size) / 4;
  }

  /** The plan without the little amounts that broke ties. */
  relaxed(columns: readonly Column[], complete: boolean): Relaxed {
    const { size, basis } = this;
    const cuts: { column: Column; times: number }[] = [];
    let short = false;
    let value = 0;
    for (let c = 0; c < size; c++) value += this.duals[c]! * this.limits[c]!;
    for (let r = 0; r < size; r++) {
      let times = 0;
      for (let c = 0; c < size; c++) times += this.inverse[r * size + c]! * this.limits[c]!;
      if (times < 1e-6) continue;
      if (basis[r]! >= 0) cuts.push({ column: columns[basis[r]!]!, times });
      else if (basis[r]! < -size) short = true;
    }
    return { value: complete ? value : -Infinity, cuts, duals: this.duals.slice(), short };
  }
}
