/**
 * A text without what a terminal takes for an order: control characters, and those that turn the line around, become blanks.
 *
 * @example
 * printable("\u001b[2J12") // => " [2J12"
 */
export function printable(text: string): string {
  return text.replace(/[\u0000-\u001f\u007f-\u009f\u2028\u2029\u202a-\u202e\u2066-\u2069]/g, " ");
}
