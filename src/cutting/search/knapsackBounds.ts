import type { Problem } from "../model/problem.ts";
import type { EndStates } from "./endStates.ts";

/**
 * What the items from one on can at most be worth in a given room.
 *
 * Tables made backwards, over rooms rounded down to cells: as what every step takes is rounded down too, and sums of numbers rounded down are no more than the sum rounded down, nothing that
 * fits is missed. There is one row for each state that the ends on the board can be in.
 */
export class KnapsackBounds {
  readonly cells: number;
  /** Numbers in the tables: what it takes to fill them. */
  readonly entries: number;
  readonly #cell: number;
  readonly #problem: Problem;
  readonly #ends: EndStates;
  readonly #tables: readonly Float64Array[];
  /** The table of each item: its own, or where no copy of it is asked for the next one's. */
  readonly #used: Float64Array[];

  constructor(problem: Problem, ends: EndStates, cells: number) {
    this.#problem = problem;
    this.#ends = ends;
    this.cells = cells;
    this.#cell = problem.types[problem.types.length - 1]!.room / cells;
    this.entries = ends.states.reduce((sum, states) => sum + states, 0) * (cells + 1);
    this.#tables = [...ends.states, 1].map((states) => new Float64Array(states * (cells + 1)));
    this.#used = [...this.#tables];
  }

  most(item: number, state: number, room: number): number {
    return this.#used[item]![state * (this.cells + 1) + Math.floor(room / this.#cell)]!;
  }

  /** @param values values[i][k]: what k copies of item i are worth. */
  *fill(values: readonly Float64Array[]): Generator<void, number> {
    let steps = 0;
    const { items } = this.#problem;
    for (let i = items.length - 1; i >= 0; i--) {
      if (values[i]!.length === 1 && this.#ends.passes[i]) {
        this.#used[i] = this.#used[i + 1]!;
        continue;
      }
      this.#used[i] = this.#tables[i]!;
      const states = this.#ends.states[i]!;
      steps += states * (this.cells + 1) * Math.min(2, values[i]!.length);
      for (let state = 0; state < states; state++) this.#fillState(i, state, values[i]!);
      yield;
    }
    return steps;
  }

  #fillState(i: number, state: number, values: Float64Array): void {
    const [cell, cells, ends] = [this.#cell, this.cells, this.#ends];
    const width = cells + 1;
    const own = this.#tables[i]!.subarray(state * width, (state + 1) * width);
    const next = this.#used[i + 1]!;
    const { group, weight } = this.#problem.items[i]!;
    const opening = state === 0 ? this.#problem.groups[group]!.setup : 0;
    own.fill(0);
    for (let k = 0; k < values.length; k++) {
      const taken = Math.floor(((k > 0 ? k * weight + opening : 0) + ends.lost(i, state, k)) / cell);
      if (taken > cells) continue;
      const value = values[k]!;
      const base = ends.next(i, state, k) * width - taken;
      for (let r = taken; r < width; r++) {
        const sum = value + next[base + r]!;
        if (sum > own[r]!) own[r] = sum;
      }
    }
  }
}
