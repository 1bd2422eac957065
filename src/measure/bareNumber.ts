/**
 * A number as typed without a unit: whole or decimal, with a sign or an exponent where wanted; null for any other text.
 *
 * @example
 * bareNumber("-1.5") // => -1.5
 * bareNumber("6/12") // => null
 */
export function bareNumber(text: string): number | null {
  if (!/^[-+]?(?:\d+\.?\d*|\.\d+)(?:e[-+]?\d+)?$/i.test(text)) return null;
  const value = Number(text);
  return Number.isFinite(value) ? value : null;
}
