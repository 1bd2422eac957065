import { describe, expect, it } from "vitest";
import { LinearProgram } from "../../../src/cutting/search/linearProgram.ts";
import type { Range } from "../../../src/cutting/search/simplexBasis.ts";
import { chance } from "../../solids/chance.ts";
import { atOnce } from "../atOnce.ts";
import { optimum } from "../otherSolver.ts";

interface Column extends Range {
  readonly entries: readonly number[];
}

/** A small program by chance: rows and columns with bounds of every kind, entries that are small whole numbers, so that many bases are degenerate. Invented. */
class Small {
  readonly rows: Range[];
  readonly columns: Column[] = [];
  readonly program: LinearProgram;
  readonly #upTo: (n: number) => number;

  constructor(seed: number) {
    const random = chance(seed);
    this.#upTo = (n) => Math.floor(random() * n);
    this.rows = Array.from({ length: 1 + this.#upTo(6) }, () => {
      const lower = this.#upTo(7);
      return {
        lower,
        upper: this.#upTo(3) === 0 ? lower + this.#upTo(4) : Infinity,
        cost: this.#upTo(4) === 0 ? 1 : 0,
      };
    });
    this.program = new LinearProgram(this.rows);
    this.add(2 + this.#upTo(9));
  }

  add(count: number): void {
    for (let n = 0; n < count; n++) {
      const lower = this.#upTo(3) === 0 ? 1 : 0;
      const column = {
        lower,
        // A floor needs one of every column.
        upper: lower + this.#upTo(5),
        cost: this.#upTo(8),
        entries: this.rows.map(() => Math.max(0, this.#upTo(5) - 1)),
      };
      this.columns.push(column);
      const own = [...this.rows.keys()].filter((r) => column.entries[r] !== 0);
      this.program.add(
        own,
        own.map((r) => column.entries[r]!),
        column,
      );
    }
  }

  /** Other bounds for a column. */
  move(): void {
    const at = this.#upTo(this.columns.length);
    const lower = this.#upTo(3);
    const upper = lower + this.#upTo(3);
    this.columns[at] = { ...this.columns[at]!, lower, upper };
    this.program.bound(this.rows.length + at, lower, upper);
  }

  /** The least cost, by HiGHS. */
  least(): Promise<number | null> {
    const bounds = ({ lower, upper }: Range, name: string) =>
      `${lower} <= ${name} <= ${upper === Infinity ? "inf" : upper}`;
    const costs = [
      ...this.rows.map(({ cost }, r) => `${cost} r${r}`),
      ...this.columns.map(({ cost }, c) => `${cost} x${c}`),
    ];
    const sums = this.rows.map(
      (_, r) => `s${r}: ${this.columns.map(({ entries }, c) => `${entries[r]} x${c}`).join(" + ")} - r${r} = 0`,
    );
    const all = [
      ...this.rows.map((row, r) => bounds(row, `r${r}`)),
      ...this.columns.map((one, c) => bounds(one, `x${c}`)),
    ];
    return optimum(
      `Minimize\n c: ${costs.join(" + ")}\nSubject To\n ${sums.join("\n ")}\nBounds\n ${all.join("\n ")}\nEnd`,
    );
  }

  /** What its values cost, each within its bounds and each row the sum that it is. */
  cost(): number {
    const { at, size } = this.program;
    [...this.rows, ...this.columns].forEach(({ lower, upper }, v) => {
      expect(at[v]).toBeGreaterThanOrEqual(lower - 1e-6);
      expect(at[v]).toBeLessThanOrEqual(upper + 1e-6);
    });
    const sums = this.rows.map((_, r) =>
      this.columns.reduce((sum, { entries }, c) => sum + entries[r]! * at[size + c]!, 0),
    );
    sums.forEach((sum, r) => expect(sum).toBeCloseTo(at[r]!, 6));
    return [...this.rows, ...this.columns].reduce((sum, { cost }, v) => sum + cost * at[v]!, 0);
  }

  /** That the program has come to what HiGHS comes to, and proves it. */
  async isAtLeast(least: number): Promise<void> {
    expect(this.cost()).toBeCloseTo(least, 3);
    atOnce(this.program.refine());
    expect(this.cost()).toBeCloseTo(least, 6);
    expect(this.program.floor()).toBeCloseTo(least, 6);
  }
}

/** Above the cost of any of these programs. */
const BEYOND = 1e4;

const seeds = Array.from({ length: 12 }, (_, n) => n * 25 + 1);
const many = (from: number) => Array.from({ length: 25 }, (_, n) => from + n);

// Invented programs; the least costs are HiGHS's (an open-source solver of the University of Edinburgh).
describe("a linear program comes to the least cost of HiGHS", () => {
  it.each(seeds)("from nothing, after bounds have changed, and after columns came, seeds from %d", async (from) => {
    for (const seed of many(from)) {
      const small = new Small(seed);
      const { program } = small;
      for (let round = 0; round < 6; round++) {
        const least = await small.least();
        const end = atOnce(program.dual(BEYOND));
        if (least === null) {
          expect([seed, round, end]).toEqual([seed, round, "over"]);
          break;
        }
        expect([seed, round, end]).toEqual([seed, round, "optimal"]);
        await small.isAtLeast(least);
        if (round % 2 === 0) {
          // Columns at their least value, from which the program goes on where that leaves all within bounds.
          small.add(1);
          program.bound(program.at.length - 1, 0, 3);
          small.columns.push({ ...small.columns.pop()!, lower: 0, upper: 3 });
          program.at[program.at.length - 1] = 0;
          atOnce(program.primal());
          await small.isAtLeast((await small.least())!);
        }
        small.move();
      }
    }
  });

  it.each(seeds)("and is not over where something is below a limit, seeds from %d", async (from) => {
    for (const seed of many(from)) {
      const small = new Small(seed);
      const least = await small.least();
      if (least === null || least === 0) continue;
      expect([seed, atOnce(small.program.dual(least * (1 + 1e-3)))]).toEqual([seed, "optimal"]);
    }
  });

  it.each(seeds)("from any basis, whatever of it depends on the rest or is missing, seeds from %d", async (from) => {
    for (const seed of many(from)) {
      const small = new Small(seed);
      const { program } = small;
      const least = await small.least();
      const next = chance(seed + 1_000);
      const wanted = [...program.at.keys()].filter(() => next() < 0.5).slice(0, program.size);
      program.startFrom(wanted);
      const basic = [...program.at.keys()].filter((v) => program.isBasic(v));
      expect(basic).toHaveLength(program.size);
      for (const v of wanted) if (v < program.size) expect(program.isBasic(v)).toBe(true);
      const end = atOnce(program.dual(BEYOND));
      expect([seed, end]).toEqual([seed, least === null ? "over" : "optimal"]);
      if (least === null) continue;
      // Rows that may grow without end may stand at the wrong bound still: what is within all bounds goes on from there.
      atOnce(program.primal());
      await small.isAtLeast(least);
    }
  });
});
