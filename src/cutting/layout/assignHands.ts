import { grouped } from "../model/grouped.ts";
import type { Cut, Problem } from "../model/problem.ts";

/** Boards cut alike, with the hands of their pieces. */
export interface HandedCut {
  readonly type: number;
  readonly times: number;
  readonly parts: readonly HandedPart[];
}

export interface HandedPart {
  readonly item: number;
  readonly left: number;
  readonly right: number;
  readonly plain: number;
}

/**
 * Gives a hand to every piece of an item that is of either hand: as many lefts as rights of each length, and on each board at most one of a key without a partner.
 *
 * It can always be done. Boards cut alike are taken two and two: what is left on one is right on the other. Of each pattern at most one board remains; draw a line
 * between a board and a length for every piece of that length on it. Every length has an even number of lines, so the lines fall into trails that begin and end at
 * boards with an odd number, and closed ones; both have an even number of lines, since they go from boards to lengths and back. Hands by turns
 * along each trail are even wherever it passes.
 */
export function assignHands(problem: Problem, cuts: readonly Cut[]): HandedCut[] {
  const handed: HandedCut[] = [];
  const single: Cut[] = [];
  for (const cut of cuts) {
    const free = cut.pattern.items.some((i) => problem.items[i]!.either);
    if (!free)
      handed.push({
        type: cut.pattern.type,
        times: cut.times,
        parts: cut.pattern.items.map((item, n) => part(problem, item, cut.pattern.copies[n]!, 0)),
      });
    else {
      if (cut.times >= 2) handed.push(...mirrored(problem, cut));
      if (cut.times % 2 === 1) single.push({ pattern: cut.pattern, times: 1 });
    }
  }
  return [...handed, ...byTrails(problem, single)];
}

/** @param left how many of an item of either hand are lefts; of others the item says. */
function part(problem: Problem, item: number, count: number, left: number): HandedPart {
  return problem.items[item]!.either
    ? { item, left, right: count - left, plain: 0 }
    : { item, left: 0, right: 0, plain: count };
}

function mirrored(problem: Problem, cut: Cut): HandedCut[] {
  const { type, items, copies } = cut.pattern;
  // Within a key hands go by turns, so that a board is even, or one off.
  const turns = new Map<number, number>();
  const parts = items.map((item, n) => {
    const key = problem.items[item]!.key;
    const before = turns.get(key) ?? 0;
    turns.set(key, before + copies[n]!);
    return part(problem, item, copies[n]!, Math.floor((copies[n]! + 1 - (before % 2)) / 2));
  });
  const others = parts.map(({ item, left, right }, n) =>
    part(problem, item, copies[n]!, problem.items[item]!.either ? right : left),
  );
  const times = Math.floor(cut.times / 2);
  return [
    { type, times, parts },
    { type, times, parts: others },
  ];
}

interface Line {
  readonly board: number;
  readonly item: number;
  hand: 0 | 1 | -1;
}

function byTrails(problem: Problem, boards: readonly Cut[]): HandedCut[] {
  const lefts = boards.map(() => new Map<number, number>());
  const keys = new Set(
    boards.flatMap(({ pattern }) =>
      pattern.items.filter((i) => problem.items[i]!.either).map((i) => problem.items[i]!.key),
    ),
  );
  for (const key of keys) {
    const lines: Line[] = boards.flatMap(({ pattern }, board) =>
      pattern.items.flatMap((item, n) =>
        problem.items[item]!.key === key
          ? Array.from({ length: pattern.copies[n]! }, (): Line => ({ board, item, hand: 0 }))
          : [],
      ),
    );
    handLines(lines);
    for (const { board, item, hand } of lines)
      if (hand === 1) lefts[board]!.set(item, (lefts[board]!.get(item) ?? 0) + 1);
  }
  return boards.map(({ pattern }, board) => ({
    type: pattern.type,
    times: 1,
    parts: pattern.items.map((item, n) => part(problem, item, pattern.copies[n]!, lefts[board]!.get(item) ?? 0)),
  }));
}

function handLines(lines: readonly Line[]): void {
  const ofBoard = grouped(lines, (line) => line.board);
  const ofItem = grouped(lines, (line) => line.item);
  const next = (list: Line[] | undefined): Line | undefined => {
    while (list && list.length > 0 && list[list.length - 1]!.hand !== 0) list.pop();
    return list?.[list.length - 1];
  };
  const walk = (start: number): void => {
    let board = start;
    for (let line = next(ofBoard.get(board)); line; line = next(ofBoard.get(board))) {
      line.hand = 1;
      const back = next(ofItem.get(line.item))!;
      back.hand = -1;
      board = back.board;
    }
  };
  // Odd boards first: a trail that begins at one ends at another, and a trail ends only where all lines have hands.
  const odd = [...ofBoard].filter(([, list]) => list.length % 2 === 1).map(([board]) => board);
  for (const board of odd) walk(board);
  for (const board of ofBoard.keys()) walk(board);
}
