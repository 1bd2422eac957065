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
  const [least, ...others] = costs.filter((cost) => cost > 0).sort((a, b) => a - b);
  if (least === undefined) return 0;
  const small = 1e-7 * Math.max(least, ...others);
  let step = least;
  for (const cost of others) {
    let divisor = step;
    for (let rest = Math.abs(cost - Math.round(cost / step) * step); rest > small;)
      [divisor, rest] = [rest, Math.abs(divisor - Math.round(divisor / rest) * rest)];
    // Remainders carry the last bits of larger numbers; the least cost, divided by its whole number of steps, does not.
    step = least / Math.round(least / divisor);
  }
  const onGrid = others.every((cost) => Math.abs(cost / step - Math.round(cost / step)) <= CLOSE * (cost / step));
  return onGrid ? step : 0;
}
