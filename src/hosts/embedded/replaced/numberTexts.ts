import { parseNumber as original } from "numfmt-original";

export * from "numfmt-original";

/**
 * Stands in for the sheet's own reader of typed numbers, in every bundle that holds the sheet.
 *
 * That one takes an apostrophe for a mark of thousands, so that 24' typed or pasted became 24; here, as in Excel, it stays a text.
 */
export function parseNumber(...[text, options]: Parameters<typeof original>): ReturnType<typeof original> {
  return text.includes("'") ? null : original(text, options);
}
