import { looseEnds } from "./looseEnds.ts";
import { EITHER, type BoardType, type Problem } from "./problem.ts";

/**
 * The room that pieces take in one board: pieces and kerfs, a setup for each group, and what slanting ends without a partner lose.
 *
 * @param items rising indices into the problem's items; @param copies how often each.
 */
export function usedLength(problem: Problem, items: readonly number[], copies: readonly number[]): number {
  let total = 0;
  let group = -1;
  let key = -1;
  let half = 0;
  let odds = 0;
  for (let n = 0; n < items.length; n++) {
    const item = problem.items[items[n]!]!;
    const count = copies[n]!;
    if (count === 0) continue;
    const { setup, nodes } = problem.groups[item.group]!;
    if (item.group !== group) {
      group = item.group;
      total += setup;
      if (nodes) total += looseEnds(problem, group, items, (k) => copies[k]!);
    }
    if (item.key !== key) {
      total += half * Math.abs(odds);
      key = item.key;
      half = nodes ? 0 : item.half;
      odds = 0;
    }
    total += item.weight * count;
    odds = partnerless(odds, item.hand, count);
  }
  return total + half * Math.abs(odds);
}

/** Whether a board holds pieces, which take `used` of it: within its room, or one piece alone that is as long as the board. */
export function fits(
  { room, alone }: BoardType,
  used: number,
  items: readonly number[],
  copies: readonly number[],
): boolean {
  return used <= room || (items.length === 1 && copies[0] === 1 && alone.includes(items[0]!));
}

/** Ends of one way more than of the other after `count` more pieces, or, where hands are still free, one when their number is odd. */
export function partnerless(odds: number, hand: number, count: number): number {
  return hand === EITHER ? (odds + count) % 2 : odds + hand * count;
}
