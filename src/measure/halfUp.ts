/**
 * The nearest whole number; a half goes up, towards positive infinity, on both sides of 0.
 *
 * The remainder of a double over its floor is exact wherever it is less than a half, so no sum is rounded on the way
 * (0.49999999999999994 is 0, where floor(x + 0.5) makes it 1). Not-a-number and infinities come back as they are.
 *
 * @example
 * halfUp(2.5) // => 3
 * halfUp(-2.5) // => -2
 */
export function halfUp(value: number): number {
  const floor = Math.floor(value);
  // Adding 0 turns a negative zero into 0.
  return (value - floor >= 0.5 ? floor + 1 : floor) + 0;
}
