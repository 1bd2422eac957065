/**
 * A figure on the framing square, to the hundredth.
 *
 * @example
 * figure(4.242640687) // => "4.24"
 */
export function figure(value: number): string {
  return String(Number(value.toFixed(2)));
}
