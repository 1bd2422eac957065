import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { problemsOf } from "../../src/cutting/model/problemsOf.ts";
import { solveSize } from "../../src/cutting/search/solveSize.ts";
import { atOnce } from "../cutting/atOnce.ts";
import { planOf } from "../cutting/checkPlan.ts";
import type { Instance } from "../cutting/instances.ts";
import { planCutsNow } from "../cutting/planCutsNow.ts";
import { hashOf, writing } from "./kept.ts";

/** A list to plan, under its name. */
type Named = readonly [name: string, make: () => Instance];

/** So many seeds from one on. */
export const seeds = (count: number, first = 1): number[] => Array.from({ length: count }, (_, n) => first + n);

/** A list for each seed. */
export const named = (name: string, make: (seed: number) => Instance, ...all: readonly number[]): Named[] =>
  all.map((seed) => [`${name} ${seed}`, () => make(seed)]);

/** Orders that must take the work, to the plan, that they took when the file of that name was written. */
export function workAsTheyDid(file: string, lists: readonly Named[]): void {
  const place = join(import.meta.dirname, `${file}.json`);
  describe(`${lists.length} ${file} take the work that they took, to the plan that they came to`, () => {
    if (writing) {
      it("and are written", () => {
        const all = Object.fromEntries(lists.map(([name, list]) => [name, workOf(list())]));
        writeFileSync(place, `${JSON.stringify(all, null, 2)}\n`);
      }, 600_000);
      return;
    }
    const kept = existsSync(place) ? (JSON.parse(readFileSync(place, "utf8")) as Record<string, string>) : {};
    it("are all kept", () => expect(Object.keys(kept)).toEqual(lists.map(([name]) => name)));
    it.each(lists)("%s", (name, list) => expect(workOf(list())).toBe(kept[name]));
  });
}

/** Steps of the search, its cost and bound, its patterns, and the boards of the whole plan: what any change of the search changes. */
function workOf(list: Instance): string {
  const sizes = problemsOf(list.pieces, list.boards, list, "upright").map(({ problem }) => {
    let steps = 0;
    const solved = atOnce(solveSize(problem, (now) => (steps = now) > 300_000_000));
    return "cuts" in solved
      ? [steps, solved.cost.toFixed(4), solved.bound.toFixed(4), solved.proved, mark(solved.cuts)].join(" ")
      : [steps, solved.bound.toFixed(4), solved.impossible].join(" ");
  });
  return [...sizes, mark(planOf(planCutsNow(list.pieces, list.boards, list)).boards)].join(", ");
}

/** Eight signs that tell one value from another, numbers to the fourth digit. */
const mark = (value: unknown): string =>
  hashOf(JSON.stringify(value, (_, one) => (typeof one === "number" ? one.toFixed(4) : one))).slice(0, 8);
