import type { Cut, Pattern, Problem } from "../model/problem.ts";

/** A plan that is made board by board: what is cut so far, what is still wanted, and the boards that are left. */
export class PartPlan {
  readonly cuts: Cut[] = [];
  /** For each item; more may be cut than is wanted. */
  readonly wanted: number[];
  /** For each type of board. */
  readonly left: number[];

  constructor({ items, types }: Problem) {
    this.wanted = items.map((item) => item.demand);
    this.left = types.map((type) => type.count);
  }

  get done(): boolean {
    return this.wanted.every((count) => count === 0);
  }

  take(pattern: Pattern, times: number): void {
    const { items, copies } = pattern;
    items.forEach((i, k) => (this.wanted[i] = Math.max(0, this.wanted[i]! - copies[k]! * times)));
    this.left[pattern.type]! -= times;
    this.cuts.push({ pattern, times });
  }

  /** Takes a pattern as often as it cuts nothing that is not wanted, but once at least. */
  takeMost(pattern: Pattern): void {
    let most = this.left[pattern.type]!;
    pattern.items.forEach((i, k) => (most = Math.min(most, Math.floor(this.wanted[i]! / pattern.copies[k]!))));
    this.take(pattern, Math.max(1, most));
  }

  /**
   * Takes the whole boards of a fractional plan, of each pattern so many `fewer`.
   *
   * @param close as whole counts what misses it by no more. @returns whether there were any.
   */
  takeWhole({ cuts }: { readonly cuts: readonly Cut[] }, fewer: number, close: number): boolean {
    const before = this.cuts.length;
    for (const { pattern, times } of cuts) {
      const whole = Math.min(this.left[pattern.type]!, Math.max(0, Math.floor(times + close) - fewer));
      if (whole > 0) this.take(pattern, whole);
    }
    return this.cuts.length > before;
  }
}

/** A number in 0 to 1 that looks like chance and is the same every time. */
export function chance(attempt: number, n: number): number {
  const x = Math.sin(attempt * 127.1 + n * 311.7) * 43758.5453;
  return x - Math.floor(x);
}
