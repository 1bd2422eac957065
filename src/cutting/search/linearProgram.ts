import { SimplexBasis } from "./simplexBasis.ts";

/** How far a value may be beyond its bound, and a reduced cost below zero, before something is done about it. */
const LOOSE = 1e-7;
/** A pivot must be at least this large. */
const PIVOT = 1e-7;
/** Steps between two pauses: some 2 ms. */
const PAUSE = 1_000_000;

/**
 * A linear program: the least cost of columns and rows, both within bounds, where a row's value is the sum of its entries times the columns'.
 *
 * The simplex method with bounds on variables, started from wherever the last solve ended: `primal` goes on after columns were added, `dual` after bounds were changed.
 */
export class LinearProgram extends SimplexBasis {
  private candidates = new Int32Array(0);
  private ratios = new Float64Array(0);

  /** Down to the optimum, from values within their bounds. */
  *primal(): Generator<void, void> {
    const most = 60 * this.size + 2000;
    for (let n = 0, rest = this.steps; n < most; n++) {
      const entering = this.cheapest();
      if (entering < 0 || !this.enter(entering)) return;
      if (this.steps - rest > PAUSE) {
        rest = this.steps;
        yield;
      }
    }
  }

  /** The optimum at the true costs, from that at the uneven ones: `floor` is then as high as it can be. */
  *refine(): Generator<void, void> {
    this.even = true;
    this.renew();
    yield* this.primal();
    this.even = false;
  }

  private cheapest(): number {
    let [best, found] = [LOOSE * 1e-2, -1];
    for (let v = 0; v < this.at.length; v++) {
      if (this.place[v]! >= 0 || this.lower[v] === this.upper[v]) continue;
      const reduced = this.slope(v);
      const gain = this.at[v] === this.lower[v] ? -reduced : reduced;
      if (gain > best) [best, found] = [gain, v];
    }
    this.steps += this.rows.length;
    return found;
  }

  /** @returns false where it may grow without end. */
  private enter(entering: number): boolean {
    const up = this.at[entering] === this.lower[entering] ? 1 : -1;
    const { direction } = this;
    this.aim(entering);
    let [least, leaving] = [this.upper[entering]! - this.lower[entering]!, -1];
    for (let r = 0; r < this.size; r++) {
      const change = -up * direction[r]!;
      if (Math.abs(change) < PIVOT) continue;
      const v = this.basis[r]!;
      const limit = change < 0 ? this.lower[v]! : this.upper[v]!;
      if (limit === Infinity) continue;
      const ratio = Math.max(0, (limit - this.at[v]!) / change);
      if (
        ratio < least - 1e-12 ||
        (leaving >= 0 && ratio < least + 1e-12 && Math.abs(change) > Math.abs(direction[leaving]!))
      )
        [least, leaving] = [ratio, r];
    }
    if (least === Infinity) return false;
    if (leaving < 0) {
      this.move(entering, up * least);
      return true;
    }
    const out = this.basis[leaving]!;
    const bound = -up * direction[leaving]! < 0 ? this.lower[out]! : this.upper[out]!;
    this.pivot(entering, leaving, up * least, bound);
    return true;
  }

  /**
   * Back to values within their bounds, from an optimum that new bounds have put out of them.
   *
   * @returns "over" as soon as nothing costs less than `cutoff`, "optimal", or "stuck" where the numbers went astray.
   */
  *dual(cutoff: number): Generator<void, "optimal" | "over" | "stuck"> {
    this.settle();
    for (let n = 0, rest = this.steps; n < 20 * this.size + 2000; n++) {
      if (n % 8 === 0 && this.floor() >= cutoff) return "over";
      const leaving = this.furthest();
      if (leaving < 0) return "optimal";
      const out = this.basis[leaving]!;
      const low = this.at[out]! < this.lower[out]!;
      const bound = low ? this.lower[out]! : this.upper[out]!;
      const entering = this.tightest(leaving, low);
      if (entering < 0) {
        // Nothing brings the row within its bounds: along its duals the cost grows without end.
        const kept = this.duals.slice();
        this.shift(leaving, (low ? -1 : 1) * 1e3 * (1 + Math.abs(cutoff)));
        const over = this.floor() >= cutoff;
        this.duals.set(kept);
        if (over) return "over";
        if (this.pivots === 0) return "stuck";
        this.renew();
        continue;
      }
      this.aim(entering);
      if (Math.abs(this.direction[leaving]!) < PIVOT) {
        if (this.pivots === 0) return "stuck";
        this.renew();
        continue;
      }
      this.pivot(entering, leaving, (this.at[out]! - bound) / this.direction[leaving]!, bound);
      if (this.steps - rest > PAUSE) {
        rest = this.steps;
        yield;
      }
    }
    return "stuck";
  }

  /** Puts every variable outside the basis at the bound that its reduced cost asks for. */
  private settle(): void {
    for (let v = 0; v < this.at.length; v++) {
      if (this.place[v]! >= 0) continue;
      this.at[v] = this.slope(v) >= 0 || this.upper[v] === Infinity ? this.lower[v]! : this.upper[v]!;
    }
    this.steps += this.rows.length;
    this.values();
  }

  /** The row that is furthest beyond its bounds, measured along the edge that leads back (steepest edge): by far the fewest pivots. */
  private furthest(): number {
    const { size, inverse } = this;
    let [worst, found] = [0, -1];
    for (let r = 0; r < size; r++) {
      const v = this.basis[r]!;
      const beyond = Math.max(this.lower[v]! - this.at[v]!, this.at[v]! - this.upper[v]!);
      if (beyond <= LOOSE) continue;
      let length = 0;
      for (let c = r * size, end = c + size; c < end; c++) length += inverse[c]! * inverse[c]!;
      this.steps += size;
      if ((beyond * beyond) / length > worst) [worst, found] = [(beyond * beyond) / length, r];
    }
    return found;
  }

  /**
   * The variable that enters for a row's. Variables whose reduced cost reaches zero first, and whose whole range does not bring the row within its bounds, go to their other bound on
   * the way (the long step), which saves most of the pivots.
   */
  private tightest(leaving: number, low: boolean): number {
    const from = leaving * this.size;
    const out = this.basis[leaving]!;
    if (this.ratios.length < this.at.length) {
      this.candidates = new Int32Array(this.at.length);
      this.ratios = new Float64Array(this.at.length);
    }
    const { candidates, ratios } = this;
    let count = 0;
    for (let v = 0; v < this.at.length; v++) {
      if (this.place[v]! >= 0 || this.lower[v] === this.upper[v]) continue;
      const entry = this.times(this.inverse, from, v);
      if (Math.abs(entry) < PIVOT) continue;
      const lowered = this.at[v] === this.lower[v];
      if (entry < 0 === low ? !lowered : lowered) continue;
      const slope = this.slope(v);
      candidates[count] = v;
      ratios[count++] = Math.max(0, lowered ? slope : -slope) / Math.abs(entry);
    }
    this.steps += 2 * this.rows.length;
    let left = low ? this.lower[out]! - this.at[out]! : this.at[out]! - this.upper[out]!;
    for (let flipped = 0; count > 0; flipped++) {
      let best = 0;
      for (let n = 1; n < count; n++) if (ratios[n]! < ratios[best]!) best = n;
      this.steps += 2 * count;
      const v = candidates[best]!;
      left -= Math.abs(this.times(this.inverse, from, v)) * (this.upper[v]! - this.lower[v]!);
      if (left <= LOOSE || count === 1) {
        if (flipped > 0) this.values();
        return v;
      }
      this.flip(v);
      candidates[best] = candidates[--count]!;
      ratios[best] = ratios[count]!;
    }
    return -1;
  }

  private flip(v: number): void {
    this.at[v] = this.at[v] === this.lower[v] ? this.upper[v]! : this.lower[v]!;
  }
}
