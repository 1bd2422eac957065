import { createHash } from "node:crypto";
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { problemsOf } from "../../src/cutting/model/problemsOf.ts";
import { solveSize } from "../../src/cutting/search/solveSize.ts";
import { atOnce } from "../cutting/atOnce.ts";
import { planOf } from "../cutting/checkPlan.ts";
import { triplets, uniform } from "../cutting/classics.ts";
import {
  hipRoof,
  randomInstance,
  slantedInstance,
  twoPitchRoof,
  village,
  type Instance,
} from "../cutting/instances.ts";
import { planCutsNow } from "../cutting/planCutsNow.ts";
import { realRoofs } from "../cutting/roofs.ts";
import { writing } from "./kept.ts";

const KEPT = join(import.meta.dirname, "orders.json");

/** Steps of the search, its cost and bound, its patterns, and the boards of the whole plan: what any change of the search changes. */
function workOf(list: Instance): string {
  const sizes = problemsOf(list.pieces, list.boards, list, "mirrored").map(({ problem }) => {
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
  createHash("sha256")
    .update(JSON.stringify(value, (_, one) => (typeof one === "number" ? one.toFixed(4) : one)))
    .digest("hex")
    .slice(0, 8);

const from1 = (count: number) => Array.from({ length: count }, (_, n) => n + 1);
const named = (
  name: string,
  make: (seed: number) => Instance,
  ...seeds: readonly number[]
): [string, () => Instance][] => seeds.map((seed) => [`${name} ${seed}`, () => make(seed)]);

const lists = [
  ...named("hip roof", (seed) => hipRoof(seed, seed % 2 === 0), ...from1(4)),
  ...named("two pitches", (seed) => twoPitchRoof(seed, seed % 2 === 0), ...from1(4)),
  ...named("village", (seed) => village(seed, seed % 2 === 0, 2), ...from1(2)),
  ...named("three roofs", (seed) => realRoofs(seed, 3), 5, 6, 23),
  ...named("at random", (seed) => randomInstance(seed), ...from1(30)),
  ...named("slanted", slantedInstance, ...from1(10)),
  ...named("triplets", (seed) => triplets(seed, 60), 1),
  ...named("Scholl", (seed) => uniform(seed, 200, 120, 20, 100), 1),
];

describe("orders take the work that they took, to the plan that they came to", () => {
  if (writing) {
    it("and are written", () => {
      const all = Object.fromEntries(lists.map(([name, list]) => [name, workOf(list())]));
      writeFileSync(KEPT, `${JSON.stringify(all, null, 2)}\n`);
    });
    return;
  }
  const kept = existsSync(KEPT) ? (JSON.parse(readFileSync(KEPT, "utf8")) as Record<string, string>) : {};
  it("are all kept", () => expect(Object.keys(kept)).toEqual(lists.map(([name]) => name)));
  it.each(lists)("%s", (name, list) => expect(workOf(list())).toBe(kept[name]));
});
