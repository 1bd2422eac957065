/** A variable's least and greatest value, and what one of it costs. */
export interface Range {
  readonly lower: number;
  readonly upper: number;
  readonly cost: number;
}

/** The inverse is made anew after so many pivots, or its errors would grow. */
const RENEW = 120;
/** By how much of itself a cost is raised at most to break ties. */
const UNEVEN = 1e-6;

/**
 * The variables, columns and basis of a linear program, with a dense inverse of the basis (most of whose entries are zero, and passed over), and the exchange of one variable in it for
 * another. Variables are numbered rows first, then columns in the order in which they were added; a row's variable is its value.
 */
export class SimplexBasis {
  /** Work done so far. */
  steps = 0;
  readonly size: number;
  readonly lower: number[] = [];
  readonly upper: number[] = [];
  readonly cost: number[] = [];
  /** The costs that the simplex goes by: each a little more, so that there are no ties to go round in. */
  private readonly uneven: number[] = [];
  /** The value of every variable. */
  readonly at: number[] = [];
  /** What one more of each row would cost. */
  readonly duals: Float64Array;
  /** The variable in each place of the basis, and the place of each variable; -1 where it is at a bound. */
  protected readonly basis: Int32Array;
  protected readonly place: number[] = [];
  protected readonly inverse: Float64Array;
  protected readonly direction: Float64Array;
  private readonly filled: Int32Array;
  private readonly starts: number[] = [0];
  /** The row of every entry, column by column. */
  readonly rows: number[] = [];
  private readonly entries: number[] = [];
  protected pivots = 0;
  protected even = false;

  constructor(rows: readonly Range[]) {
    this.size = rows.length;
    this.duals = new Float64Array(this.size);
    this.basis = Int32Array.from(rows, (_, r) => r);
    this.inverse = new Float64Array(this.size * this.size);
    this.direction = new Float64Array(this.size);
    this.filled = new Int32Array(this.size);
    rows.forEach((range, r) => {
      this.variable(range);
      this.place[r] = r;
    });
    this.renew();
  }

  private variable({ lower, upper, cost }: Range): void {
    this.lower.push(lower);
    this.upper.push(upper);
    this.cost.push(cost);
    this.uneven.push(cost * (1 + UNEVEN * ((this.at.length * 0.618034) % 1)));
    this.at.push(lower);
    this.place.push(-1);
  }

  add(rows: readonly number[], entries: readonly number[], range: Range): void {
    for (let e = 0; e < rows.length; e++) {
      this.rows.push(rows[e]!);
      this.entries.push(entries[e]!);
    }
    this.starts.push(this.rows.length);
    this.variable(range);
  }

  /** Starts from a basis of these variables, none of them twice; where one depends on the others, or some are missing, rows' own variables stand in. */
  startFrom(variables: readonly number[]): void {
    this.place.fill(-1);
    this.basis.fill(-1);
    variables.forEach((v, r) => (this.basis[r] = v));
    for (let v = 0; v < this.at.length; v++) this.at[v] = this.lower[v]!;
    this.renew();
  }

  /** Whether a variable is in the basis. */
  isBasic(variable: number): boolean {
    return this.place[variable]! >= 0;
  }

  /** New bounds for a variable; `dual` then finds the way back to the optimum. */
  bound(variable: number, lower: number, upper: number): void {
    this.lower[variable] = lower;
    this.upper[variable] = upper;
  }

  /** The cost of one more of a variable, after what that changes elsewhere. */
  reduced(variable: number): number {
    return this.cost[variable]! - this.times(this.duals, 0, variable);
  }

  protected slope(variable: number): number {
    return this.costOf(variable) - this.times(this.duals, 0, variable);
  }

  private costOf(variable: number): number {
    return this.even ? this.cost[variable]! : this.uneven[variable]!;
  }

  /**
   * A cost that nothing within the bounds goes below: for every variable its reduced cost at the better bound. It holds for any duals, however far the arithmetic went
   * astray, as long as every variable with an upper bound missing has a reduced cost of zero or more; a row's dual is raised to that.
   */
  floor(): number {
    for (let r = 0; r < this.size; r++)
      if (this.upper[r] === Infinity) this.duals[r] = Math.max(this.duals[r]!, -this.cost[r]!);
    let sum = 0;
    for (let v = 0; v < this.at.length; v++) {
      const reduced = this.reduced(v);
      const bound = reduced >= 0 ? this.lower[v]! : this.upper[v]!;
      if (bound !== 0) sum += reduced * bound;
    }
    this.steps += this.rows.length;
    return sum;
  }

  /** A vector from `from` on times a variable's column. */
  times(vector: Float64Array, from: number, variable: number): number {
    const column = variable - this.size;
    if (column < 0) return -vector[from + variable]!;
    let sum = 0;
    for (let e = this.starts[column]!, end = this.starts[column + 1]!; e < end; e++)
      sum += vector[from + this.rows[e]!]! * this.entries[e]!;
    return sum;
  }

  /** The row of the inverse of a variable in the basis. */
  inverseRow(variable: number): Float64Array {
    const from = this.place[variable]! * this.size;
    return this.inverse.slice(from, from + this.size);
  }

  /** The inverse times a variable's column. */
  protected aim(variable: number): void {
    for (let r = 0; r < this.size; r++) this.direction[r] = this.times(this.inverse, r * this.size, variable);
    this.steps += this.size * 4;
  }

  protected move(variable: number, by: number): void {
    for (let r = 0; r < this.size; r++) this.at[this.basis[r]!]! -= by * this.direction[r]!;
    this.at[variable]! += by;
  }

  protected shift(row: number, by: number): void {
    const from = row * this.size;
    for (let c = 0; c < this.size; c++) this.duals[c]! += by * this.inverse[from + c]!;
  }

  protected pivot(entering: number, leaving: number, by: number, bound: number): void {
    const { direction, basis } = this;
    this.shift(leaving, this.slope(entering) / direction[leaving]!);
    this.move(entering, by);
    const out = basis[leaving]!;
    this.at[out] = bound;
    this.place[out] = -1;
    basis[leaving] = entering;
    this.place[entering] = leaving;
    this.eliminate(leaving);
    if (++this.pivots >= RENEW) this.renew();
  }

  /** Takes the leaving row out of all others; most of its entries are zero as a rule. */
  private eliminate(leaving: number): void {
    const { size, inverse, direction, filled } = this;
    const base = leaving * size;
    const scale = 1 / direction[leaving]!;
    let count = 0;
    for (let c = 0; c < size; c++) {
      if (inverse[base + c] === 0) continue;
      inverse[base + c]! *= scale;
      filled[count++] = c;
    }
    for (let r = 0; r < size; r++) {
      const factor = direction[r]!;
      if (r === leaving || factor === 0) continue;
      const to = r * size;
      for (let n = 0; n < count; n++) {
        const c = filled[n]!;
        inverse[to + c]! -= factor * inverse[base + c]!;
      }
      this.steps += count;
    }
    this.steps += size;
  }

  /** Makes the inverse anew from the basis: rows' own variables first, then the others wherever their entry is largest. */
  protected renew(): void {
    const { size, inverse, basis, direction } = this;
    inverse.fill(0);
    const free = new Set<number>();
    for (let r = 0; r < size; r++) {
      inverse[r * size + r] = -1;
      free.add(r);
    }
    const wanted = [...basis].filter((v) => v >= size);
    for (const v of basis) free.delete(v);
    for (let r = 0; r < size; r++) {
      if (!free.has(r)) {
        basis[r] = r;
        this.place[r] = r;
      }
    }
    for (const v of wanted) {
      this.aim(v);
      let best = -1;
      for (const r of free) if (best < 0 || Math.abs(direction[r]!) > Math.abs(direction[best]!)) best = r;
      if (Math.abs(direction[best]!) < 1e-11) {
        // The column depends on the others: it leaves the basis.
        this.place[v] = -1;
        this.at[v] = this.lower[v]!;
        continue;
      }
      free.delete(best);
      this.eliminate(best);
      basis[best] = v;
      this.place[v] = best;
    }
    for (const r of free) {
      basis[r] = r;
      this.place[r] = r;
    }
    this.pivots = 0;
    this.duals.fill(0);
    for (let r = 0; r < size; r++) {
      const cost = this.costOf(basis[r]!);
      if (cost !== 0) this.shift(r, cost);
    }
    this.values();
  }

  /** The values of the basis from those outside it. */
  protected values(): void {
    const { size, inverse, basis } = this;
    const sums = new Float64Array(size);
    for (let v = 0; v < this.at.length; v++) {
      const value = this.at[v]!;
      if (value === 0 || this.place[v]! >= 0) continue;
      if (v < size) sums[v]! -= value;
      else
        for (let e = this.starts[v - size]!, end = this.starts[v - size + 1]!; e < end; e++)
          sums[this.rows[e]!]! += value * this.entries[e]!;
    }
    for (let r = 0; r < size; r++) {
      let value = 0;
      for (let c = 0; c < size; c++) value -= inverse[r * size + c]! * sums[c]!;
      this.at[basis[r]!] = value;
    }
    this.steps += size * size;
  }
}
