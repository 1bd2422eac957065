import { looseEnds } from "./looseEnds.ts";
import type { BoardType, Problem } from "./problem.ts";

/**
 * The room that pieces take in one board: pieces and kerfs, a setup for each group, and what slanting ends without a partner lose.
 *
 * @param items rising indices into the problem's items; @param copies how often each.
 */
export function usedLength(problem: Problem, items: readonly number[], copies: readonly number[]): number {
  let total = 0;
  let group = -1;
  for (let n = 0; n < items.length; n++) {
    const item = problem.items[items[n]!]!;
    const count = copies[n]!;
    if (count === 0) continue;
    total += item.weight * count;
    if (item.group === group) continue;
    group = item.group;
    total += problem.groups[group]!.setup + looseEnds(problem, group, items, (k) => copies[k]!);
  }
  return total;
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
