const LONGEST = 40;

/**
 * A typed text, cut to 40 characters for a message; what was cut shows as "…".
 *
 * Counts whole characters, so that an emoji is never cut in half. Looks at no more of a long text than it shows.
 *
 * @example
 * shortened("24'") // => "24'"
 */
export function shortened(text: string): string {
  const characters = Array.from(text.slice(0, 2 * LONGEST + 2));
  return characters.length > LONGEST ? `${characters.slice(0, LONGEST - 1).join("")}…` : text;
}
