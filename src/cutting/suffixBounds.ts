import type { Item, Problem } from "./problem.ts";

/**
 * What the items from one on can at most be worth in a given room.
 *
 * Tables made backwards, over rooms rounded down to cells: as every weight, setup and penalty is rounded down too, and sums of numbers rounded down are no more than the
 * sum rounded down, nothing that fits is missed. State 0: the item's group has no piece in the board yet; 1: it has; 2: and an odd number of handed ones.
 */
export class SuffixBounds {
  readonly cells: number;
  private readonly cell: number;
  private readonly problem: Problem;
  private readonly tables: readonly Float64Array[];

  constructor(problem: Problem) {
    this.problem = problem;
    this.cells = problem.items.length > 100 ? 512 : 1536;
    this.cell = problem.types[problem.types.length - 1]!.room / this.cells;
    this.tables = Array.from({ length: problem.items.length + 1 }, () => new Float64Array(3 * (this.cells + 1)));
  }

  most(item: number, state: number, room: number): number {
    return this.tables[item]![state * (this.cells + 1) + Math.floor(room / this.cell)]!;
  }

  /** @param values values[i][k]: what k copies of item i are worth. */
  *fill(values: readonly Float64Array[]): Generator<void, void> {
    const { items, groups } = this.problem;
    for (let i = items.length - 1; i >= 0; i--) {
      const states = groups[items[i]!.group]!.handed ? 3 : 2;
      for (let state = 0; state < states; state++) this.fillState(i, items[i]!, state, values[i]!);
      if (i % 50 === 49) yield;
    }
  }

  private fillState(i: number, item: Item, state: number, values: Float64Array): void {
    const { cell, cells } = this;
    const width = cells + 1;
    const own = this.tables[i]!.subarray(state * width, (state + 1) * width);
    const next = this.tables[i + 1]!;
    const opening = state === 0 ? Math.floor(this.problem.groups[item.group]!.setup / cell) : 0;
    const weight = Math.floor(item.weight / cell);
    const penalty = Math.floor(item.half / cell);
    own.fill(0);
    for (let k = 0; k < values.length; k++) {
      let taken = k > 0 ? k * weight + opening : 0;
      let after = state;
      if (k > 0) after = item.hand !== 0 && k % 2 === 1 ? (state === 2 ? 1 : 2) : Math.max(state, 1);
      if (item.endsKey && after === 2) {
        taken += penalty;
        after = 1;
      }
      if (item.endsGroup) after = 0;
      if (taken > cells) continue;
      const value = values[k]!;
      const base = after * width - taken;
      for (let r = taken; r < width; r++) {
        const sum = value + next[base + r]!;
        if (sum > own[r]!) own[r] = sum;
      }
    }
  }
}
