import { fits, usedLength } from "../model/usedLength.ts";
import type { Cut, Pattern } from "../model/problem.ts";
import type { SizeTask } from "../model/problemsOf.ts";
import { chance } from "../search/partPlan.ts";

/** More boards than this are not given sides one by one. */
const MOST_BOARDS = 2000;
/** More ways to give a board's pieces their sides are not tried. */
const MOST_WAYS = 400;
/** So often boards are taken in another order. */
const ATTEMPTS = 40;

/** How many of each item of a board go to the left. */
type Way = readonly number[];

/** Boards whose pieces have their sides, and what boards whose pieces found none would cost. */
export interface Sided {
  readonly cuts: readonly Cut[];
  readonly open: number;
}

/**
 * A plan with every piece as it is, from one in which a piece and its mirror image are one item.
 *
 * A board that holds its pieces with no cut shared takes any sides. The others are given theirs one after another, of the sides that hold those of which most are left; some may
 * find none.
 */
export function* assignSides(mirrored: SizeTask, upright: SizeTask, cuts: readonly Cut[]): Generator<void, Sided> {
  const own = new Map<number, number>();
  upright.sources.forEach(({ left, right, plain }, item) => {
    for (const piece of [...left, ...right, ...plain]) own.set(piece, item);
  });
  const sides = mirrored.sources.map(({ left, right, plain }) => ({
    left: own.get(left[0] ?? plain[0]!),
    right: own.get(right[0] ?? -1),
  }));
  const demandOf = (item: number | undefined): number => (item === undefined ? 0 : upright.problem.items[item]!.demand);
  const boards = cuts.flatMap(({ pattern, times }) =>
    Array.from({ length: Math.min(times, MOST_BOARDS) }, () => pattern),
  );
  const costOf = (patterns: readonly Pattern[]): number =>
    patterns.reduce((sum, { type }) => sum + upright.problem.types[type]!.cost, 0);
  if (boards.length > MOST_BOARDS) return { cuts: [], open: costOf(boards) };

  const sided = ({ type, items, copies }: Pattern, way: Way): Pattern => {
    const counts = new Map<number, number>();
    items.forEach((item, n) => {
      const { left, right } = sides[item]!;
      if (way[n]! > 0) counts.set(left!, (counts.get(left!) ?? 0) + way[n]!);
      if (copies[n]! > way[n]!) counts.set(right!, (counts.get(right!) ?? 0) + copies[n]! - way[n]!);
    });
    const all = [...counts.keys()].sort((a, b) => a - b);
    return { type, items: all, copies: all.map((item) => counts.get(item)!) };
  };
  const holds = ({ type, items, copies }: Pattern): boolean =>
    fits(upright.problem.types[type]!, usedLength(upright.problem, items, copies), items, copies);
  const held = new Map<Pattern, readonly Way[]>();
  for (const { pattern } of cuts) {
    const ways = waysFor(pattern, (item) => [demandOf(sides[item]!.left), demandOf(sides[item]!.right)]);
    held.set(
      pattern,
      ways.filter((way) => holds(sided(pattern, way))),
    );
    yield;
  }
  const waysOf = (pattern: Pattern): readonly Way[] => held.get(pattern)!;
  const tight = (pattern: Pattern): number => {
    const all = pattern.items.reduce((product, _, n) => product * (pattern.copies[n]! + 1), 1);
    return waysOf(pattern).length / Math.min(all, MOST_WAYS);
  };
  let best: Sided = { cuts: [], open: Infinity };
  for (let attempt = 0; attempt < ATTEMPTS && best.open > 0; attempt++) {
    yield;
    // Few ways first: what holds in any way comes last.
    const order = boards
      .map((pattern, n) => ({ pattern, place: tight(pattern) + (attempt === 0 ? 0 : chance(attempt, n) * 0.4) }))
      .sort((a, b) => a.place - b.place);
    const left = mirrored.sources.map(
      (_, item) => [demandOf(sides[item]!.left), demandOf(sides[item]!.right)] as [number, number],
    );
    const plan: Cut[] = [];
    const open: Pattern[] = [];
    for (const { pattern } of order) {
      const way = bestWay(pattern, waysOf(pattern), left);
      if (!way) {
        open.push(pattern);
        continue;
      }
      pattern.items.forEach((item, n) => {
        left[item]![0] -= way[n]!;
        left[item]![1] -= pattern.copies[n]! - way[n]!;
      });
      plan.push({ pattern: sided(pattern, way), times: 1 });
    }
    if (costOf(open) < best.open) best = { cuts: plan, open: costOf(open) };
  }
  return best;
}

/** Of the ways for which there are pieces left the one that takes them from the sides of which more are left. */
function bestWay(
  { items, copies }: Pattern,
  ways: readonly Way[],
  left: readonly (readonly [number, number])[],
): Way | null {
  let [best, most]: [Way | null, number] = [null, -Infinity];
  for (const way of ways) {
    let worth = 0;
    for (let n = 0; n < items.length; n++) {
      const [ours, others] = left[items[n]!]!;
      const right = copies[n]! - way[n]!;
      if (way[n]! > ours || right > others) {
        worth = -Infinity;
        break;
      }
      worth -= Math.abs(ours - way[n]! - (others - right)) / (ours + others);
    }
    if (worth > most) [best, most] = [way, worth];
  }
  return best;
}

/** Every way to give a board's pieces sides, up to so many. */
function waysFor({ items, copies }: Pattern, demands: (item: number) => readonly [number, number]): Way[] {
  let ways: Way[] = [[]];
  items.forEach((item, n) => {
    const [left, right] = demands(item);
    const [least, most] = [Math.max(0, copies[n]! - right), Math.min(copies[n]!, left)];
    const counts = Array.from({ length: Math.max(0, most - least + 1) }, (_, k) => least + k);
    ways = ways.flatMap((way) => counts.map((count) => [...way, count])).slice(0, MOST_WAYS);
  });
  return ways;
}
