/** A run of equal bays, from the first member's center to the last one's. */
export interface Bay {
  readonly from: number;
  readonly to: number;
  readonly count: number;
  readonly each: number;
}

/** Less than this is the same bay, in any unit. */
const SAME = 1e-6;

/**
 * Neighboring bays of one width, taken together, as they are written on a plan.
 *
 * @example
 * bays([0, 12, 36, 60]) // => [{ from: 0, to: 12, count: 1, each: 12 }, { from: 12, to: 60, count: 2, each: 24 }]
 */
export function bays(stations: readonly number[]): Bay[] {
  const sorted = [...stations].sort((a, b) => a - b).filter((at, i, all) => i === 0 || at - all[i - 1]! > SAME);
  const found: Bay[] = [];
  for (const [i, to] of sorted.slice(1).entries()) {
    const each = to - sorted[i]!;
    const last = found.at(-1);
    if (last && Math.abs(last.each - each) < SAME) found[found.length - 1] = { ...last, to, count: last.count + 1 };
    else found.push({ from: sorted[i]!, to, count: 1, each });
  }
  return found;
}
