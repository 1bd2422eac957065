import { describe, expect, it } from "vitest";
import { looseEnds } from "../../../src/cutting/model/looseEnds.ts";
import { problemsOf } from "../../../src/cutting/model/problemsOf.ts";
import type { Problem } from "../../../src/cutting/model/problem.ts";
import { EndStates } from "../../../src/cutting/search/endStates.ts";
import { chance } from "../../solids/chance.ts";
import { atOnce } from "../atOnce.ts";
import { slantedInstance, type Instance } from "../instances.ts";

/** A list of so many lengths of each shape of ends, so short that a board holds many: more than are counted one by one. Invented. */
function manyEnds(seed: number, lengths: number): Instance {
  const random = chance(seed);
  const pieces = [
    [0, 2],
    [2, 0],
    [0, -2],
    [-2, 0],
    [2, -2],
    [-2, 2],
    [2, 2],
  ].flatMap((slants, shape) =>
    Array.from({ length: lengths }, (_, n) => ({
      name: `${shape} ${n}`,
      size: "2x6",
      length: 9 + random() * 30,
      count: 1 + Math.floor(random() * 2),
      lean: 3,
      slant: "a",
      slants: slants as [number, number],
    })),
  );
  return { pieces, boards: [{ size: "2x6", length: 240 }], kerf: 0.125, trim: 0 };
}

/** The pieces of a board, taken by chance as long as they fit. */
function boardOf({ items, types }: Problem, random: () => number): number[] {
  const copies = items.map(() => 0);
  let room = types.at(-1)!.room;
  for (let n = 0; n < 3 * items.length; n++) {
    const i = Math.floor(random() * items.length);
    const { weight, demand } = items[i]!;
    if (copies[i]! === demand || weight > room) continue;
    copies[i]!++;
    room -= weight;
  }
  return copies;
}

/** What is lost of a board's room to ends without a partner, by the states, group by group. */
function lostBy(ends: EndStates, { items, groups }: Problem, copies: readonly number[]): number[] {
  const lost = groups.map(() => 0);
  let state = 0;
  items.forEach(({ group }, i) => {
    expect(state).toBeLessThan(ends.states[i]!);
    lost[group]! += ends.lost(i, state, copies[i]!);
    const next = ends.next(i, state, copies[i]!);
    if (copies[i] === 0 && ends.passes[i]) expect(next).toBe(state);
    state = next;
  });
  expect(state).toBe(0);
  return lost;
}

// Invented lists; what a board loses at best is looseEnds', which other tests hold against every order of its pieces.
describe("ends without a partner, while a board is chosen", () => {
  it.each(["upright", "turning"] as const)("lose what they lose in the end, never more: %s", (lie) => {
    let [exact, less] = [0, 0];
    const lists = [
      ...Array.from({ length: 60 }, (_, n) => slantedInstance(n + 1)),
      ...Array.from({ length: 6 }, (_, n) => manyEnds(n + 1, 1 + 2 * n)),
    ];
    lists.forEach((list, n) => {
      const random = chance(1000 + n);
      for (const { problem } of problemsOf(list.pieces, list.boards, list, lie)) {
        const ends = new EndStates(problem);
        atOnce(ends.fill());
        expect(Math.max(...ends.states)).toBeLessThanOrEqual(65);
        for (let times = 0; times < 60; times++) {
          const copies = boardOf(problem, random);
          lostBy(ends, problem, copies).forEach((lost, group) => {
            const atBest = looseEnds(problem, group, [...copies.keys()], (i) => copies[i]!);
            if (ends.inexact[group]) expect(lost).toBeLessThanOrEqual(atBest);
            else expect(lost).toBe(atBest);
            if (lost === atBest) exact++;
            else less++;
          });
        }
      }
    });
    expect(exact).toBeGreaterThan(2000);
    expect(less).toBeGreaterThan(50);
    expect(exact).toBeGreaterThan(less);
  });
});
