import type { Cut, Item, Problem } from "./problem.ts";

/** A problem in which neighboring lengths count as one, and which of the finer items each coarse one stands for. */
export interface Coarse {
  readonly problem: Problem;
  readonly members: readonly (readonly number[])[];
}

/**
 * A long list made short: items of one group, key and ends whose lengths lie close together count as one, as the longest of them (`up`) or as the shortest.
 *
 * A plan of the longer pieces holds the true ones too; a bound of the shorter ones holds for the true ones too. At most `most` items remain, more only where
 * there are more groups and ends; what lies together is as close as can be. A piece as long as a board stays by itself.
 */
export function mergeLengths(problem: Problem, most: number, up: boolean): Coarse {
  let [low, high] = [0, Math.max(...problem.items.map((item) => item.weight))];
  for (let n = 0; n < 40; n++) {
    const middle = (low + high) / 2;
    if (within(problem, middle).length > most) low = middle;
    else high = middle;
  }
  const members = within(problem, high);
  const items = members.map((own): Item => {
    const weights = own.map((i) => problem.items[i]!.weight);
    const last = problem.items[own.at(-1)!]!;
    return {
      ...last,
      weight: up ? Math.max(...weights) : Math.min(...weights),
      demand: own.reduce((sum, i) => sum + problem.items[i]!.demand, 0),
    };
  });
  const types = problem.types.map((type) => ({
    ...type,
    alone: type.alone.map((i) => members.findIndex((own) => own[0] === i)),
  }));
  return { problem: { ...problem, items, types }, members };
}

/** Items, longest first, that follow each other and differ by no more than so much. */
function within({ items, types }: Problem, spread: number): number[][] {
  const members: number[][] = [];
  const alone = new Set(types.flatMap((type) => type.alone));
  items.forEach((item, i) => {
    const last = members.at(-1);
    const first = last && items[last[0]!]!;
    const joins =
      first?.group === item.group &&
      first.key === item.key &&
      first.ends.every(({ node, way }, n) => item.ends[n]?.node === node && item.ends[n].way === way) &&
      first.weight - item.weight <= spread &&
      !alone.has(i) &&
      !alone.has(last![0]!);
    if (joins) last!.push(i);
    else members.push([i]);
  });
  return members;
}

/** A plan for the true items from one for the coarse ones, as long as that cuts no more than is wanted. */
export function refined(problem: Problem, { members }: Coarse, cuts: readonly Cut[]): Cut[] {
  const queues = members.map((own) => own.map((item) => ({ item, left: problem.items[item]!.demand })).reverse());
  const fine: Cut[] = [];
  for (const { pattern, times } of cuts) {
    for (let open = times; open > 0;) {
      let repeat = open;
      pattern.items.forEach(
        (coarse, n) =>
          (repeat = Math.min(repeat, Math.max(1, Math.floor(queues[coarse]!.at(-1)!.left / pattern.copies[n]!)))),
      );
      const counts = new Map<number, number>();
      pattern.items.forEach((coarse, n) => {
        for (let k = 0; k < pattern.copies[n]!; k++) {
          const next = queues[coarse]!.at(-1)!;
          counts.set(next.item, (counts.get(next.item) ?? 0) + 1);
          next.left -= repeat;
          if (next.left === 0) queues[coarse]!.pop();
        }
      });
      const items = [...counts.keys()].sort((a, b) => a - b);
      fine.push({ pattern: { type: pattern.type, items, copies: items.map((i) => counts.get(i)!) }, times: repeat });
      open -= repeat;
    }
  }
  return fine;
}
