import { partnerless } from "../model/usedLength.ts";
import { EITHER, type Item, type Problem } from "../model/problem.ts";

/** Pieces without a partner are counted up to so many of one hand at most. */
const MOST_ODDS = 12;

/**
 * What the items from one on can at most be worth in a given room.
 *
 * Tables made backwards, over rooms rounded down to cells: as every weight, setup and penalty is rounded down too, and sums of numbers rounded down are no more than the
 * sum rounded down, nothing that fits is missed. There is one row for each state of the item's group on the board: 0, no piece yet; 1, open; from 2 on, open with 1, -1, 2, -2 ...
 * handed pieces of the current key without a partner, lefts above zero; the last, open with more of them than are counted, which then cost nothing, so that the bound stays one.
 */
export class KnapsackBounds {
  readonly cells: number;
  /** Numbers in the tables: what it takes to fill them. */
  readonly entries: number;
  readonly #cell: number;
  readonly #problem: Problem;
  readonly #states: readonly number[];
  readonly #odds: number;
  readonly #tables: readonly Float64Array[];

  constructor(problem: Problem, cells: number) {
    this.#problem = problem;
    const room = problem.types[problem.types.length - 1]!.room;
    const handed = problem.items.filter(({ hand }) => hand !== 0 && hand !== EITHER);
    this.#odds = Math.min(MOST_ODDS, Math.max(1, ...handed.map((item) => Math.floor(room / item.weight))));
    this.#states = problem.groups.map((_, g) => {
      if (handed.some((item) => item.group === g)) return 3 + 2 * this.#odds;
      return problem.items.some((item) => item.group === g && item.hand === EITHER) ? 3 : 2;
    });
    const most = Math.max(...this.#states);
    this.cells = cells;
    this.#cell = room / cells;
    this.entries = problem.items.length * most * (cells + 1);
    this.#tables = Array.from({ length: problem.items.length + 1 }, () => new Float64Array(most * (this.cells + 1)));
  }

  /** @param odds handed pieces of the current key without a partner. */
  most(item: number, open: number, odds: number, room: number): number {
    return this.#tables[item]![this.#stateOf(open, odds) * (this.cells + 1) + Math.floor(room / this.#cell)]!;
  }

  /** @param values values[i][k]: what k copies of item i are worth. */
  *fill(values: readonly Float64Array[]): Generator<void, void> {
    const { items } = this.#problem;
    for (let i = items.length - 1; i >= 0; i--) {
      const states = this.#states[items[i]!.group]!;
      for (let state = 0; state < states; state++) this.#fillState(i, items[i]!, state, values[i]!);
      yield;
    }
  }

  #fillState(i: number, item: Item, state: number, values: Float64Array): void {
    const [cell, cells] = [this.#cell, this.cells];
    const width = cells + 1;
    const own = this.#tables[i]!.subarray(state * width, (state + 1) * width);
    const next = this.#tables[i + 1]!;
    const opening = state === 0 ? Math.floor(this.#problem.groups[item.group]!.setup / cell) : 0;
    const weight = Math.floor(item.weight / cell);
    own.fill(0);
    for (let k = 0; k < values.length; k++) {
      let taken = k > 0 ? k * weight + opening : 0;
      let after = k > 0 ? this.#grown(state, item, k) : state;
      if (item.endsKey && after > 1) {
        if (after !== this.#many) taken += Math.floor((item.half * (after >> 1)) / cell);
        after = 1;
      }
      if (item.endsGroup) after = 0;
      if (taken > cells) continue;
      const value = values[k]!;
      const base = after * width - taken;
      for (let r = Math.max(0, taken); r < width; r++) {
        const sum = value + next[base + r]!;
        if (sum > own[r]!) own[r] = sum;
      }
    }
  }

  /** The state in which the number of pieces without a partner is not known. */
  get #many(): number {
    return 2 + 2 * this.#odds;
  }

  #stateOf(open: number, odds: number): number {
    if (odds === 0) return open;
    if (odds > this.#odds || odds < -this.#odds) return this.#many;
    return odds > 0 ? 2 * odds : 1 - 2 * odds;
  }

  #grown(state: number, item: Item, count: number): number {
    if (state === this.#many) return state;
    const odds = state < 2 ? 0 : state % 2 === 0 ? state >> 1 : -(state >> 1);
    return this.#stateOf(1, partnerless(odds, item.hand, count));
  }
}
