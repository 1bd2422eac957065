import { describe, expect, it } from "vitest";
import { LinearProgram } from "../../../src/cutting/search/linearProgram.ts";
import { roundingCuts, type RoundingCut } from "../../../src/cutting/search/roundingCuts.ts";
import { chance } from "../../solids/chance.ts";
import { atOnce } from "../atOnce.ts";

interface Row {
  readonly entries: readonly number[];
  readonly lower: number;
  readonly upper: number;
}
interface Program {
  readonly costs: readonly number[];
  readonly most: readonly number[];
  readonly rows: readonly Row[];
}

/** Three to five columns and two to four rows of small whole numbers; some rows with both bounds. */
function programOf(seed: number): Program {
  const random = chance(seed);
  const upTo = (n: number): number => Math.floor(random() * n);
  const columns = 3 + upTo(3);
  const list = <T>(count: number, of: () => T): T[] => Array.from({ length: count }, of);
  return {
    costs: list(columns, () => 1 + upTo(9)),
    most: list(columns, () => 2 + upTo(4)),
    rows: list(2 + upTo(3), () => {
      const lower = upTo(9);
      return { entries: list(columns, () => upTo(4)), lower, upper: upTo(3) === 0 ? lower + 2 + upTo(6) : Infinity };
    }),
  };
}

const dot = (entries: ArrayLike<number>, point: readonly number[]): number =>
  point.reduce((sum, count, c) => sum + entries[c]! * count, 0);

/** Every whole point within all bounds, tried one by one. */
function pointsOf({ most, rows }: Program): number[][] {
  let points: number[][] = [[]];
  for (const count of most)
    points = points.flatMap((point) => Array.from({ length: count + 1 }, (_, n) => [...point, n]));
  return points.filter((point) =>
    rows.every(({ entries, lower, upper }) => dot(entries, point) >= lower && dot(entries, point) <= upper),
  );
}

/** The cuts at the optimum with those of earlier rounds as rows, and the fractional point; null where there is none. */
function cutsAt(
  { costs, most, rows }: Program,
  before: readonly RoundingCut[],
): { cuts: RoundingCut[]; point: number[] } | null {
  const all = [...rows, ...before.map(({ entries, least }) => ({ entries, lower: least, upper: Infinity }))];
  const program = new LinearProgram(all.map(({ lower, upper }) => ({ lower, upper, cost: 0 })));
  costs.forEach((cost, c) =>
    program.add(
      all.map((_, r) => r),
      all.map(({ entries }) => entries[c]!),
      { lower: 0, upper: most[c]!, cost },
    ),
  );
  if (atOnce(program.dual(Infinity)) !== "optimal") return null;
  return { cuts: atOnce(roundingCuts(program)), point: program.at.slice(all.length) };
}

describe("roundingCuts", () => {
  it("cuts off the fractional point and no whole one, of 100 small programs, cuts made from cuts as well", () => {
    let [cuts, tight] = [0, 0];
    for (let seed = 1; seed <= 100; seed++) {
      const program = programOf(seed);
      const points = pointsOf(program);
      const known: RoundingCut[] = [];
      for (let round = 0; round < 4; round++) {
        const found = cutsAt(program, known);
        if (found === null) break;
        for (const cut of found.cuts) {
          cuts++;
          expect(dot(cut.entries, found.point), `program ${seed}`).toBeLessThan(cut.least - 1e-4);
          const values = points.map((point) => dot(cut.entries, point));
          expect(Math.min(Infinity, ...values), `program ${seed}, round ${round}`).toBeGreaterThanOrEqual(cut.least);
          if (values.includes(cut.least)) tight++;
        }
        known.push(...found.cuts.slice(0, 5));
      }
    }
    // Not for want of cuts, nor because they are weak.
    expect(cuts).toBeGreaterThan(500);
    expect(tight).toBeGreaterThan(100);
  });

  it("rounds 3 x >= 10 up to x >= 4", () => {
    const found = cutsAt({ costs: [1], most: [9], rows: [{ entries: [3], lower: 10, upper: Infinity }] }, [])!;
    expect(found.point[0]).toBeCloseTo(10 / 3, 9);
    const reached = found.cuts.map(({ entries, least }) => Math.ceil(least / entries[0]!));
    expect(Math.max(...reached)).toBe(4);
  });
});
