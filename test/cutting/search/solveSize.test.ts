import { expect, it } from "vitest";
import { costOf } from "../../../src/cutting/model/costOf.ts";
import { problemsOf } from "../../../src/cutting/model/problemsOf.ts";
import { greedyPlan } from "../../../src/cutting/search/greedyPlan.ts";
import { chance } from "../../solids/chance.ts";
import { atOnce } from "../atOnce.ts";
import { planOf } from "../checkPlan.ts";
import type { Instance } from "../instances.ts";
import { planCutsNow } from "../planCutsNow.ts";

/** Some lengths, and so many pieces that are as long as a board and take it untrimmed. Invented. */
function listOf(seed: number, whole: number): Instance {
  const random = chance(seed);
  const pieces = Array.from({ length: 6 }, (_, n) => ({
    name: `${n}`,
    size: "2x6",
    length: 25 + random() * 60,
    count: 1 + Math.floor(random() * 4),
  }));
  const long = { name: "whole", size: "2x6", length: 144, count: whole };
  return {
    pieces: whole > 0 ? [long, ...pieces] : pieces,
    boards: [{ size: "2x6", length: 144 }],
    kerf: 0.125,
    trim: 0.5,
  };
}

const least = (list: Instance) => planOf(planCutsNow(list.pieces, list.boards, list));

// No board holds anything beside a piece as long as it is, so such pieces cost a board each. By their length alone they would take more than their boards hold.
it("pieces that take their boards untrimmed prove nothing of the others", () => {
  let bettered = 0;
  for (let seed = 1; seed <= 40; seed++) {
    const list = listOf(seed, 1000);
    const { problem } = problemsOf(list.pieces, list.boards, list, "upright")[0]!;
    const first = costOf(problem, atOnce(greedyPlan(problem))!);
    const alone = least(listOf(seed, 0));
    const plan = least(list);
    expect([seed, plan.cost, plan.proved, alone.proved]).toEqual([seed, alone.cost + 144_000, true, true]);
    if (plan.cost < first) bettered++;
  }
  expect(bettered).toBeGreaterThan(2);
});
