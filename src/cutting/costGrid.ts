/** Costs are held to nine digits. */
const CLOSE = 1e-9;

/**
 * The largest step of which all costs are whole multiples, to nine digits, so that a bound can be rounded up to the next one; 0 when there is none worth the name.
 *
 * Boards of 8 to 20 ft by 2 ft cost multiples of 24 in, so a plan that must cost more than 1000 costs 1008. Euclid's rule with nearest remainders,
 * in the costs' own unit.
 *
 * @example
 * costGrid([96, 144, 240]) // => 48
 *
 * @example
 * costGrid([7.5, 10.25]) // => 0.25
 */
export function costGrid(costs: readonly number[]): number {
  const largest = Math.max(0, ...costs);
  const small = 1e-7 * largest;
  let step = 0;
  for (const cost of costs) {
    let rest = cost;
    while (rest > small) [step, rest] = [rest, Math.abs(step - Math.round(step / rest) * rest)];
  }
  if (step <= 0) return 0;
  // Remainders carry the costs' last bits; the smallest cost, divided by its whole number of steps, does not.
  const least = Math.min(...costs.filter((cost) => cost > 0));
  const exact = least / Math.round(least / step);
  const onGrid = costs.every((cost) => Math.abs(cost / exact - Math.round(cost / exact)) <= CLOSE * Math.max(1, cost / exact));
  return onGrid ? exact : 0;
}
