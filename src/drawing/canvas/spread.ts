/**
 * Moves places along a line apart until each has a gap to the next, as little as that takes, within bounds.
 *
 * @returns null where they have no room at all.
 *
 * @example
 * spread([10, 12, 40], 10, 0, 100) // => [6, 16, 40]
 * spread([0, 1, 2], 10, 0, 15) // => null
 */
export function spread(places: readonly number[], gap: number, least: number, most: number): number[] | null {
  if ((places.length - 1) * gap > most - least) return null;
  // Places that touch move as one group about their own middle (pool adjacent violators).
  const groups: { sum: number; count: number }[] = [];
  const start = ({ sum, count }: { sum: number; count: number }) =>
    Math.min(Math.max(sum / count, least), most - (count - 1) * gap);
  for (const place of places) {
    let group = { sum: place, count: 1 };
    for (let last = groups.at(-1); last && start(last) + last.count * gap > start(group); last = groups.at(-1)) {
      groups.pop();
      group = { sum: last.sum + group.sum - group.count * last.count * gap, count: last.count + group.count };
    }
    groups.push(group);
  }
  return groups.flatMap((group) => Array.from({ length: group.count }, (_, i) => start(group) + i * gap));
}
